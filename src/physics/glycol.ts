import { within } from './out-of-range.ts';
import type { MassFraction } from './units.ts';

/** Base of an engine coolant. */
export type Glycol = 'ethylene' | 'propylene';

/** Neat glycol and water; inhibitors and the 3 to 7 % water in a concentrate are left out. */
export interface Mixture {
  readonly glycol: Glycol;
  /** Glycol by mass, not volume. */
  readonly fraction: MassFraction;
}

/** Strength, by mass, up to which the published correlation for freezing, density and heat runs. */
export const CORRELATION_ENDS = 0.6 as MassFraction;

/** Molar mass, g/mol. */
export const MOLAR_MASS: Readonly<Record<Glycol | 'water', number>> = {
  ethylene: 62.0678,
  propylene: 76.094,
  water: 18.0153,
};

/** @throws OutOfRange above the end of the correlation, 0.6 by mass */
export function checkCorrelated({ fraction }: Mixture): MassFraction {
  return within('glycol by mass', fraction, 0, CORRELATION_ENDS, '1') as MassFraction;
}

/** @throws OutOfRange outside 0 to 1 by mass */
export function checkStrength({ fraction }: Mixture): MassFraction {
  return within('glycol by mass', fraction, 0, 1, '1') as MassFraction;
}
