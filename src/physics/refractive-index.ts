import { strengthForFreezing } from './freezing-range.ts';
import { checkCorrelated, type Glycol, type Mixture } from './glycol.ts';
import { mixtureDensity } from './mixture-properties.ts';
import { within } from './out-of-range.ts';
import { findWhere } from './root.ts';
import { DENSITY_AT_20 } from './strength.ts';
import { fromCelsius, type Kelvin, type MassFraction, massFraction } from './units.ts';

/** At 20 °C and 589 nm: handbooks; propylene from memory. */
const PURE_INDEX: Readonly<Record<Glycol | 'water', number>> = {
  ethylene: 1.4318,
  propylene: 1.4324,
  water: 1.333,
};

const READ_AT = fromCelsius(20);

/**
 * Refractive index of a mixture at 20 °C, what a refractometer measures before its scale makes it a freezing point.
 *
 * Lorentz-Lorenz with Melinder's density; within 0.0011 of the CRC table for ethylene.
 * @param mixture 0 to 0.6 glycol by mass
 * @throws OutOfRange on strength
 */
export function refractiveIndex(mixture: Mixture): number {
  const w = checkCorrelated(mixture);
  const specific = w * specificRefraction(mixture.glycol) + (1 - w) * specificRefraction('water');
  const refraction = specific * mixtureDensity(mixture, READ_AT);
  return Math.sqrt((1 + 2 * refraction) / (1 - refraction));
}

/**
 * Strength from a refractive index at 20 °C.
 *
 * @param index water's to that of the 0.6 mixture, about 1.332 to 1.394 (ethylene) or 1.401 (propylene)
 * @throws OutOfRange on index
 */
export function strengthForIndex(glycol: Glycol, index: number): MassFraction {
  const curve = (w: number): number => refractiveIndex({ glycol, fraction: w as MassFraction });
  const n = within('refractive index', index, curve(0), curve(0.6), '1');
  return massFraction(findWhere(curve, n, 0, 0.6));
}

/**
 * Strength of a coolant that was read on the scale of the other glycol.
 *
 * @param shown freezing point read, K, limits as `strengthForFreezing`
 * @param scale glycol the scale is drawn for
 * @param actual glycol that is in the system
 * @throws OutOfRange on the reading, and when no mixture of the actual glycol has that index
 */
export function strengthReadOnScaleOf(scale: Glycol, actual: Glycol, shown: Kelvin): MassFraction {
  const index = refractiveIndex({ glycol: scale, fraction: strengthForFreezing(scale, shown) });
  return strengthForIndex(actual, index);
}

function specificRefraction(liquid: Glycol | 'water'): number {
  const square = PURE_INDEX[liquid] ** 2;
  return (square - 1) / (square + 2) / DENSITY_AT_20[liquid];
}
