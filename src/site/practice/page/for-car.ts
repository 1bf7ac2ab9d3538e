/** What the simulated car takes over of a vehicle. */
import { asMostAre } from '../../../model/layout.ts';
import type { ShelfSheet } from '../../vehicle/vehicle-sheet.ts';
import type { ForCar } from '../simulated.ts';

/** Layout and the stamp of the thermostat, the middle where a range is given. */
export function forCar({ layout, figures }: ShelfSheet, diesel: boolean): ForCar {
  const opens = figures['thermostat.opens']?.quantity;
  return { layout: asMostAre(layout), stamp: opens && (opens.low + opens.high) / 2, diesel };
}
