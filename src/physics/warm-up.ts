import { within } from './out-of-range.ts';
import { type Kelvin, kelvin, type Second, second, type Watt } from './units.ts';

/**
 * An engine with its coolant as one lump of heat, the crudest model that warms up and cools down as real ones do.
 *
 * C dT/dt = Q - G (T - surroundings), in closed form.
 */
export interface Lump {
  /** Heat per kelvin of metal and coolant together, 1 kJ/K to 10 MJ/K, J/K. */
  readonly capacity: number;
  /** Heat lost per kelvin above the surroundings, 0.1 to 100,000 W/K. */
  readonly loss: number;
  /** Heat going in all the time, 0 to 1 MW; 0 when the engine is off. */
  readonly heat: Watt;
  readonly surroundings: Kelvin;
}

/** Temperature it settles at, K. @throws OutOfRange on the lump */
export function settlesAt(lump: Lump): Kelvin {
  const { loss, heat, surroundings } = checkLump(lump);
  return kelvin(surroundings + heat / loss);
}

/**
 * Temperature after a time.
 *
 * @param start temperature at the beginning, 200 to 500 K
 * @param after 0 to 10 days
 * @throws OutOfRange on any of them
 */
export function lumpTemperature(lump: Lump, start: Kelvin, after: Second): Kelvin {
  const end = settlesAt(lump);
  const from = within('start temperature', start, 200, 500, 'K');
  const t = within('time', after, 0, 864000, 's');
  return kelvin(end + (from - end) * Math.exp((-t * lump.loss) / lump.capacity));
}

/** When a lump reaches a temperature, if it does. */
export type WarmUpResult =
  | { readonly reaches: true; readonly after: Second }
  /** It settles short of it, or moves away from it. */
  | { readonly reaches: false; readonly settlesAt: Kelvin };

/** Time to reach a temperature. @throws OutOfRange on any of the figures */
export function timeToReach(lump: Lump, start: Kelvin, wanted: Kelvin): WarmUpResult {
  const end = settlesAt(lump);
  const from = within('start temperature', start, 200, 500, 'K');
  const to = within('temperature to reach', wanted, 200, 500, 'K');
  if (from === to) return { reaches: true, after: second(0) };
  const share = (end - to) / (end - from);
  if (!(share > 0 && share < 1)) return { reaches: false, settlesAt: end };
  return { reaches: true, after: second((-lump.capacity / lump.loss) * Math.log(share)) };
}

function checkLump(lump: Lump): Lump {
  within('heat capacity', lump.capacity, 1e3, 1e7, 'J/K');
  within('heat loss', lump.loss, 0.1, 1e5, 'W/K');
  within('heat going in', lump.heat, 0, 1e6, 'W');
  within('temperature of the surroundings', lump.surroundings, 200, 350, 'K');
  return lump;
}
