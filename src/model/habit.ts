/** Which units a reader wants to see. Apart from the table of units, which most pages need not carry. */
import type { Dimension } from './units.ts';

/** A reader's habit: which unit to show for a dimension. Dimensions not named keep the unit as written. */
export type Habit = Partial<Record<Dimension, string>>;

/** Under this a wrench is marked in pound-force inches, and whole feet would be up to a tenth off; N·m. Common practice. */
const BY_THE_INCH = 20;

/** A length from here on is driven, not measured; m. */
const A_DRIVE = 10_000;

/**
 * Unit in which a reader wants a quantity, undefined for the one it was written in.
 * @param largest the larger end, SI
 */
export function habitualUnit(habit: Habit, dimension: Dimension, largest: number): string | undefined {
  const unit = habit[dimension];
  // A service interval is a distance on the road. Where nothing is known of a length yet, it is a size.
  if (unit === 'in' && largest >= A_DRIVE && Number.isFinite(largest)) return 'mi';
  return unit === 'lbf·ft' && Math.abs(largest) < BY_THE_INCH ? 'lbf·in' : unit;
}

export const METRIC: Habit = {};

export const US: Habit = {
  temperature: '°F',
  pressure: 'psi',
  volume: 'US qt',
  torque: 'lbf·ft',
  speed: 'mph',
  length: 'in',
  area: 'in²',
  flow: 'US gal/min',
  mass: 'pounds',
};
