import type { Glycol } from './glycol.ts';
import { within } from './out-of-range.ts';
import { type MassFraction, massFraction, type VolumeFraction, volumeFraction } from './units.ts';

/**
 * Density of the pure liquids at 20 °C, kg/m3: ethylene glycol 1113.5 to 1113.7 in three handbooks, propylene glycol by
 * the equation of state of Eisenbach et al. (2021), water by IAPWS.
 */
export const DENSITY_AT_20: Readonly<Record<Glycol | 'water', number>> = {
  ethylene: 1113.6,
  propylene: 1036.35,
  water: 998.21,
};

/**
 * Glycol by mass from glycol by volume.
 *
 * Convention: both volumes measured before mixing, at 20 °C, as in a workshop. ASHRAE tabulates another base (nearer to
 * the volume of the finished mixture); the two differ by up to 0.006 by mass for ethylene and 0.009 for propylene.
 * @throws OutOfRange outside 0 to 1
 */
export function toMassFraction(glycol: Glycol, fraction: VolumeFraction): MassFraction {
  const part = within('glycol by volume', fraction, 0, 1, '1');
  const heavy = part * DENSITY_AT_20[glycol];
  return massFraction(heavy / (heavy + (1 - part) * DENSITY_AT_20.water));
}

/** Glycol by volume from glycol by mass; convention as `toMassFraction`. @throws OutOfRange outside 0 to 1 */
export function toVolumeFraction(glycol: Glycol, fraction: MassFraction): VolumeFraction {
  const part = within('glycol by mass', fraction, 0, 1, '1');
  const volume = part / DENSITY_AT_20[glycol];
  return volumeFraction(volume / (volume + (1 - part) / DENSITY_AT_20.water));
}
