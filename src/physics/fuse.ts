import { within } from './out-of-range.ts';
import { type Ampere, ampere, type Ohm, type Volt } from './units.ts';

/**
 * Typical cold resistance of a regular blade fuse by rating in ampere, ohm. A maker's data sheet, from memory: good to about 20 %,
 * types and makers differ, and a warm fuse has more.
 */
export const BLADE_FUSE_RESISTANCE: Readonly<Record<string, Ohm>> = {
  '5': 17.8e-3 as Ohm,
  '7.5': 10.9e-3 as Ohm,
  '10': 7.7e-3 as Ohm,
  '15': 4.8e-3 as Ohm,
  '20': 3.38e-3 as Ohm,
  '25': 2.52e-3 as Ohm,
  '30': 1.97e-3 as Ohm,
};

/**
 * Current through a fuse from the voltage lost over its two test points.
 *
 * Ohm's law; as good as the resistance, about 20 % with `BLADE_FUSE_RESISTANCE`.
 * @param drop 0 to 0.5 V; more means the fuse is open or the probes sit on the holder
 * @param resistance 0.1 to 100 milliohm
 * @throws OutOfRange on either
 */
export function currentFromFuseDrop(drop: Volt, resistance: Ohm): Ampere {
  const v = within('drop over the fuse', drop, 0, 0.5, 'V');
  return ampere(v / within('fuse resistance', resistance, 0.1e-3, 0.1, 'ohm'));
}
