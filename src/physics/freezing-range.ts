import {
  ASHRAE_BY_MASS,
  ASHRAE_BY_VOLUME,
  MELINDER_PROPYLENE_TABLE,
  STRONG_ETHYLENE,
  STRONG_PROPYLENE,
} from './freezing-tables.ts';
import { CORRELATION_ENDS, checkStrength, type Glycol, type Mixture } from './glycol.ts';
import { interpolate } from './interpolate.ts';
import { freezingPoint } from './mixture-properties.ts';
import { within } from './out-of-range.ts';
import { findWhere } from './root.ts';
import { toMassFraction } from './strength.ts';
import {
  fromCelsius,
  type Kelvin,
  type MassFraction,
  massFraction,
  toCelsius,
  type VolumeFraction,
  ZERO_CELSIUS,
} from './units.ts';

/** Why the freezing point is a range. */
export type FreezingBasis =
  /** Up to 0.6 by mass: handbooks differ by up to 3 K. */
  | 'handbooks differ'
  /** Ethylene above 0.6 by mass: no correlation reaches there, and sources disagree. Whole degrees only. */
  | 'beyond the correlation'
  /** Propylene above 0.6 by mass: no ice, it thickens and sets like glass. Whole degrees only. */
  | 'sets without ice';

/** Freezing point between two sources. */
export interface FreezingRange {
  readonly lowest: Kelvin;
  readonly highest: Kelvin;
  readonly basis: FreezingBasis;
}

/**
 * Range of published freezing points for a strength, water to undiluted.
 *
 * Up to 0.6 by mass the span of Melinder (polynomial and table) and ASHRAE. Above it an estimate in whole degrees with its
 * reason; never print decimals of it. Undiluted ethylene glycol freezes near -13 °C, a third-strength mixture near -20 °C.
 * @param mixture 0 to 1 glycol by mass
 * @throws OutOfRange on strength
 */
export function freezingRange(mixture: Mixture): FreezingRange {
  const w = checkStrength(mixture);
  if (w <= CORRELATION_ENDS) return spanOf('handbooks differ', handbooks(mixture));
  if (mixture.glycol === 'propylene')
    return spanOf('sets without ice', [STRONG_PROPYLENE.coldest, STRONG_PROPYLENE.warmest]);
  const coldest = interpolate(STRONG_ETHYLENE.coldest, w) ?? Number.NaN;
  const warmest = interpolate(STRONG_ETHYLENE.warmest, w) ?? Number.NaN;
  return spanOf('beyond the correlation', [Math.floor(coldest), Math.ceil(warmest)]);
}

/**
 * Range of published freezing points for a strength by volume.
 *
 * As `freezingRange`, widened by ASHRAE's own column by volume, whose base differs from volumes before mixing.
 * @param fraction 0 to 1 by volume before mixing at 20 °C
 * @throws OutOfRange on strength
 */
export function freezingRangeByVolume(glycol: Glycol, fraction: VolumeFraction): FreezingRange {
  const mixture = { glycol, fraction: toMassFraction(glycol, fraction) };
  const range = freezingRange(mixture);
  const ashrae = interpolate(ASHRAE_BY_VOLUME[glycol], fraction);
  if (range.basis !== 'handbooks differ' || ashrae === undefined) return range;
  return spanOf(range.basis, [toCelsius(range.lowest), toCelsius(range.highest), ashrae]);
}

/**
 * Strength from a measured freezing point, on the weak side of the curve.
 *
 * Inverse of `freezingPoint` (Melinder). Above about 0.7 by mass ethylene glycol freezes at the same temperatures again: a
 * mixture that was never diluted can read -20 °C too.
 * @param freezes 273.15 K down to the freezing point at 0.6 by mass
 * @throws OutOfRange on temperature
 */
export function strengthForFreezing(glycol: Glycol, freezes: Kelvin): MassFraction {
  const curve = (w: number): number => freezingPoint({ glycol, fraction: w as MassFraction });
  const t = within('freezing point', freezes, curve(CORRELATION_ENDS), ZERO_CELSIUS, 'K');
  return strengthAt(curve, t);
}

/** Strength by mass that sources give for a measured freezing point. */
export interface StrengthRange {
  readonly lowest: MassFraction;
  readonly highest: MassFraction;
}

/**
 * Span of strengths that the handbooks give for a measured freezing point, on the weak side of the curve.
 *
 * @param freezes 273.15 K down to the warmest freezing point published for 0.6 by mass
 * @throws OutOfRange on temperature
 */
export function strengthRangeForFreezing(glycol: Glycol, freezes: Kelvin): StrengthRange {
  const at = (w: number): FreezingRange => freezingRange({ glycol, fraction: w as MassFraction });
  const t = within('freezing point', freezes, at(CORRELATION_ENDS).highest, ZERO_CELSIUS, 'K');
  return {
    lowest: strengthAt((w) => at(w).lowest, t),
    highest: strengthAt((w) => at(w).highest, t),
  };
}

/** The correlation's own water freezes up to 0.03 K below 0 °C; a reading in that gap is water. */
function strengthAt(curve: (w: number) => number, t: number): MassFraction {
  if (t >= curve(0)) return massFraction(0);
  return massFraction(findWhere(curve, t, 0, CORRELATION_ENDS));
}

function handbooks(mixture: Mixture): number[] {
  const { glycol, fraction } = mixture;
  const tables = [ASHRAE_BY_MASS[glycol], ...(glycol === 'propylene' ? [MELINDER_PROPYLENE_TABLE] : [])];
  const readings = tables.map((table) => interpolate(table, fraction));
  return [toCelsius(freezingPoint(mixture)), ...readings.filter((reading) => reading !== undefined)];
}

function spanOf(basis: FreezingBasis, celsius: readonly number[]): FreezingRange {
  return { lowest: fromCelsius(Math.min(...celsius)), highest: fromCelsius(Math.max(...celsius)), basis };
}
