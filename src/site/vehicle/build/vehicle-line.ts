/** One line that tells a vehicle from its neighbours. */

import { quantityText } from '../../../model/show-quantity.ts';
import type { Vehicle } from '../../../model/vehicle.ts';

/** A vehicle in one line: years, body, size, fuel, engine code. */
export function vehicleLine({ body, years, engine }: Vehicle): string {
  const size = engine.size ? `${quantityText(engine.size)} ` : '';
  return `${years.replace('-', '–')}, ${body}, ${size}${engine.fuel === 'none' ? 'battery electric' : engine.fuel}, engine ${engine.code}`;
}
