import { within } from './out-of-range.ts';
import { type Kelvin, kelvin } from './units.ts';

/** Emissivity of bare aluminium, from and to. Handbook range, from memory; the state of the surface decides. */
export const BARE_ALUMINIUM = [0.05, 0.25] as const;

/** A spot that an infrared thermometer looks at. */
export interface Spot {
  /** Of the surface, 0.05 to 1. */
  readonly emissivity: number;
  /** That the thermometer is set to, 0.1 to 1; 0.95 when it cannot be set. */
  readonly set: number;
  /** Temperature of what the surface mirrors, usually the room. */
  readonly surroundings: Kelvin;
}

/**
 * What an infrared thermometer shows for a surface.
 *
 * Total radiation, e T^4 + (1 - e) Ta^4 = es Tr^4 + (1 - es) Ta^4; instruments see a band only and differ by up to 5 K.
 * @param surface true temperature, 200 to 800 K
 * @throws OutOfRange on any figure, and when the thermometer could not show anything (colder than all radiation)
 */
export function infraredReading(spot: Spot, surface: Kelvin): Kelvin {
  const { emissivity, set, surroundings } = checkSpot(spot);
  const t = within('surface temperature', surface, 200, 800, 'K');
  return fourthRoot(surroundings ** 4 + (emissivity / set) * (t ** 4 - surroundings ** 4));
}

function fourthRoot(radiation: number): Kelvin {
  return kelvin(within('radiation', radiation, 1, Infinity, 'K4') ** 0.25);
}

function checkSpot(spot: Spot): Spot {
  within('emissivity', spot.emissivity, 0.05, 1, '1');
  within('emissivity set', spot.set, 0.1, 1, '1');
  within('temperature of the surroundings', spot.surroundings, 200, 350, 'K');
  return spot;
}
