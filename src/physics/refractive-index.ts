import { strengthForFreezing } from './freezing-range.ts';
import { checkCorrelated, type Glycol, type Mixture } from './glycol.ts';
import { mixtureDensity } from './mixture-properties.ts';
import { within } from './out-of-range.ts';
import { findWhere } from './root.ts';
import { DENSITY_AT_20 } from './strength.ts';
import { fromCelsius, type Kelvin, type MassFraction, massFraction, ZERO_CELSIUS } from './units.ts';

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
  return indexAt(mixture, READ_AT);
}

function indexAt(mixture: Mixture, temperature: Kelvin): number {
  const w = checkCorrelated(mixture);
  const specific = w * specificRefraction(mixture.glycol) + (1 - w) * specificRefraction('water');
  const refraction = specific * mixtureDensity(mixture, temperature);
  return Math.sqrt((1 + 2 * refraction) / (1 - refraction));
}

/** How an instrument that does not correct for temperature was set to nought. */
export type ZeroSetting = 'at 20 °C' | 'with water at the sample’s temperature';

/**
 * Strength from a refractive index read at another temperature than 20 °C, on an instrument that does not correct for it.
 *
 * Lorentz-Lorenz with the density at that temperature: within 0.0004 of the CRC table of water from 10 to 40 °C, which is half a
 * per cent of glycol.
 * @param index as read, the instrument's own scale at 20 °C
 * @param sample temperature of sample and prism, 273.15 to 323.15 K
 * @throws OutOfRange on index and temperature; less than water's counts as none
 */
export function strengthForIndexAt(
  glycol: Glycol,
  index: number,
  sample: Kelvin,
  zeroed: ZeroSetting,
): MassFraction {
  const t = within('sample temperature', sample, ZERO_CELSIUS, ZERO_CELSIUS + 50, 'K') as Kelvin;
  const water = { glycol, fraction: massFraction(0) };
  const offset = zeroed === 'at 20 °C' ? 0 : refractiveIndex(water) - indexAt(water, t);
  const curve = (w: number): number => indexAt({ glycol, fraction: w as MassFraction }, t) + offset;
  const n = within('refractive index', index, 1.32, curve(0.6), '1');
  return massFraction(n <= curve(0) ? 0 : findWhere(curve, n, 0, 0.6));
}

/** Index of a refractometer marked in degrees Brix, 20 °C and 589 nm, by fives from 0 to 45: ICUMSA (1974), from memory. */
const INDEX_OF_BRIX = [
  1.33299, 1.34026, 1.34782, 1.35568, 1.36384, 1.37233, 1.38115, 1.39032, 1.39986, 1.40978,
];

/** Index that a scale of degrees Brix stands for. @param brix 0 to 45 @throws OutOfRange */
export function indexOfBrix(brix: number): number {
  const degrees = within('degrees Brix', brix, 0, 45, '1');
  const step = Math.min(INDEX_OF_BRIX.length - 2, Math.floor(degrees / 5));
  const [low = 0, high = 0] = INDEX_OF_BRIX.slice(step);
  return low + ((high - low) * (degrees - 5 * step)) / 5;
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
