/** One vehicle's figures as a classic script: it loads from a server, from the offline store and from file:// alike. */
import type { APIRoute } from 'astro';
import type { Entry } from '../../../../library/shelf.ts';
import { repairMinutesOf } from '../../../job/build/repair-minutes.ts';
import { dataPaths } from '../../../shelf/record-pages.ts';
import { shelf } from '../../../shelf/shelf.ts';
import { sheetOf } from '../../../vehicle/build/make-vehicle-sheet.ts';
import type { ShelfSheet } from '../../../vehicle/vehicle-sheet.ts';
import { bookingsOf } from '../../../walk/build/booking.ts';

export const getStaticPaths = () => dataPaths('vehicle');

export const GET: APIRoute<{ entry: Entry<'vehicle'> }> = ({ props }) =>
  new Response(`headertank.receiveVehicle(${JSON.stringify(vehicleSheet(props.entry))});\n`, {
    headers: { 'content-type': 'text/javascript; charset=utf-8' },
  });

function vehicleSheet(entry: Entry<'vehicle'>): ShelfSheet {
  return {
    ...sheetOf(entry),
    bookings: bookingsOf(entry.id, [...shelf.records.symptom.keys()]),
    repairs: repairMinutesOf([...shelf.records.cause.keys()], entry.data.layout),
  };
}
