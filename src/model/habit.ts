/** Which units a reader wants to see. Apart from the table of units, which most pages need not carry. */
import type { Dimension } from './units.ts';

/** A reader's habit: which unit to show for a dimension. Dimensions not named keep the unit as written. */
export type Habit = Partial<Record<Dimension, string>>;

export const METRIC: Habit = {};

export const US: Habit = {
  temperature: '°F',
  pressure: 'psi',
  volume: 'US qt',
  torque: 'lbf·ft',
  speed: 'mph',
  length: 'in',
};
