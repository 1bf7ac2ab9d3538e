import { OutOfRange, within } from './out-of-range.ts';
import { NO_CAP_HOLDS, type PressurisedSystem, tightReading } from './pressure-decay.ts';
import { cubicMetre, type GaugePascal, gaugePascal, type Kelvin, kelvin } from './units.ts';

/** Share by which the air inside may be less or more than thought. Common practice, no source. */
const AIR_BETWEEN = [0.7, 1.4] as const;
/** Coolant of a warming engine is not at one temperature: so far the mean may be off what is read, K. Common practice, no source. */
const UNEVEN = 3;
/** A workshop tester is read to this, twice, Pa. Common practice, no source. */
const READING = 3e3;
/** So much more than a sound system can have is no question of air or reading, Pa. Common practice, no source. */
const CLEARLY = 15e3;

/** A cap lets off so far under its stamp and is sound, Pa. The record of the cap's test goes by the same. Common practice, no source. */
export const CAP_EARLY = 15e3;

/** What a closed system that was cold at nothing may show now. */
export interface PressureRise {
  readonly verdict: 'as a sound one' | 'somewhat above' | 'gas gets in' | 'below';
  /** Lowest and highest a sound one may show, Pa gauge. */
  readonly lowest: GaugePascal;
  readonly highest: GaugePascal;
}

/**
 * Judges the pressure of a system closed cold, without pressure, and warmed.
 *
 * The air of the cold system squeezed by the growing coolant and warmed, and the vapour over it, as `tightReading`, for 0.7 to 1.4 of
 * the air thought to be inside and 3 K either way; hoses taken for rigid. Neither end above what a cap
 * holds, nor the lower one above where this one lets off.
 * @param cold temperature at which it was closed
 * @param now temperature of the coolant, at least 5 K above that
 * @param found reading now
 * @param cap pressure that lets off, cap or tester; left out where nothing does
 * @throws OutOfRange on any figure
 */
export function judgePressureRise(
  system: PressurisedSystem,
  cold: Kelvin,
  now: Kelvin,
  found: GaugePascal,
  cap?: GaugePascal,
): PressureRise {
  within('warming difference', now - cold, 5, 150, 'K');
  const [leastAir, mostAir] = AIR_BETWEEN;
  const letsOff =
    cap === undefined ? NO_CAP_HOLDS : within('cap pressure', cap, 20e3, 300e3, 'Pa') - CAP_EARLY;
  const lowest = Math.min(NO_CAP_HOLDS, letsOff, soundReading(system, cold, kelvin(now - UNEVEN), mostAir));
  const highest = Math.min(NO_CAP_HOLDS, soundReading(system, cold, kelvin(now + UNEVEN), leastAir));
  const verdict =
    found > highest + READING + CLEARLY
      ? 'gas gets in'
      : found > highest + READING
        ? 'somewhat above'
        : found < lowest - READING
          ? 'below'
          : 'as a sound one';
  return { verdict, lowest: gaugePascal(lowest), highest: gaugePascal(highest) };
}

/** Infinite where the coolant would leave no air: then nothing is too high. */
function soundReading(system: PressurisedSystem, cold: Kelvin, now: Kelvin, share: number): number {
  try {
    const air = cubicMetre(system.air * share);
    return tightReading({ ...system, air }, { gauge: gaugePascal(0), temperature: cold }, now);
  } catch (fault) {
    if (fault instanceof OutOfRange && fault.quantity === 'air left at the end')
      return Number.POSITIVE_INFINITY;
    throw fault;
  }
}
