/** One vehicle's figures as a classic script: it loads from a server, from the offline store and from file:// alike. */
import type { APIRoute } from 'astro';
import type { Entry } from '../../../../library/shelf.ts';
import { recordPaths } from '../../../record-pages.ts';
import { sheetOf } from '../../../vehicle-sheet.ts';

export const getStaticPaths = () => recordPaths('vehicle');

export const GET: APIRoute<{ entry: Entry<'vehicle'> }> = ({ props }) =>
  new Response(`headertank.receiveVehicle(${JSON.stringify(sheetOf(props.entry))});\n`, {
    headers: { 'content-type': 'text/javascript; charset=utf-8' },
  });
