import { within } from './out-of-range.ts';
import { type Ampere, type Ohm, ohm, type Volt, type Watt, watt } from './units.ts';

/** Place in a 12 V circuit that a drop is measured over. */
export type DropPlace =
  | 'connection'
  | 'switch or run of cable'
  | 'earth side'
  | 'supply side'
  | 'whole circuit'
  | 'module earth';

/** Most that may be lost under the working current, V. Common practice, no source. */
export const DROP_LIMITS: Readonly<Record<DropPlace, Volt>> = {
  connection: 0.1 as Volt,
  'switch or run of cable': 0.2 as Volt,
  'earth side': 0.1 as Volt,
  'supply side': 0.4 as Volt,
  'whole circuit': 0.5 as Volt,
  'module earth': 0.05 as Volt,
};

/** A hand meter and its two probes are good to this, V: what is no further over a limit is read again. Common practice, no source. */
export const METER = 0.02;

/** What a voltage drop under load means. */
export interface Joint {
  readonly resistance: Ohm;
  /** Heat made in the place itself. */
  readonly heat: Watt;
  readonly limit: Volt;
  readonly withinLimit: boolean;
}

/**
 * Resistance and heat of a joint from the voltage lost over it under load.
 *
 * R = V/I, P = V I. A few milliohm, which no hand meter shows with the circuit off, melt a fuse holder.
 * @param drop 0 to 30 V
 * @param current 0.1 to 2,000 A; with no load there is no drop and nothing is proved
 * @throws OutOfRange on either
 */
export function joint(drop: Volt, current: Ampere, place: DropPlace): Joint {
  const v = within('voltage drop', drop, 0, 30, 'V');
  const i = within('current', current, 0.1, 2000, 'A');
  const limit = DROP_LIMITS[place];
  return { resistance: ohm(v / i), heat: watt(v * i), limit, withinLimit: v <= limit };
}
