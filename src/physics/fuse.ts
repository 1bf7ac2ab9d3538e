import { within } from './out-of-range.ts';
import { type Ampere, ampere, type Ohm, ohm, type Volt } from './units.ts';

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

/** Builds of fuse that a cooling fan is fed through: flat blades of any size, the big blade, and cartridge or bolted strip. */
export type FuseType = 'blade' | 'maxi' | 'cartridge';

/**
 * What a fuse loses at its own rating, cold, V: larger ones of every type lie close to this. From memory of makers' sheets, good to
 * about 30 %.
 */
const DROP_AT_RATING = 58e-3;

/** A fuse's cold resistance and the share by which it may be out. */
export interface FuseResistance {
  readonly resistance: Ohm;
  readonly doubt: number;
}

/**
 * Typical cold resistance of a fuse by type and rating.
 *
 * Blades to 30 A by `BLADE_FUSE_RESISTANCE`, others by the drop at their rating; both from memory.
 * @param rating 1 to 120 A
 * @throws OutOfRange on rating
 */
export function fuseResistance(type: FuseType, rating: Ampere): FuseResistance {
  const amps = within('fuse rating', rating, 1, 120, 'A');
  const listed = type === 'blade' ? BLADE_FUSE_RESISTANCE[String(amps)] : undefined;
  if (listed !== undefined) return { resistance: listed, doubt: 0.2 };
  return { resistance: ohm(DROP_AT_RATING / amps), doubt: 0.3 };
}

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
