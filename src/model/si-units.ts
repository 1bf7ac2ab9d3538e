/** The coherent SI unit of each dimension, for those who read our numbers without our table of units. */
import { type Dimension, findUnit } from './units.ts';

/** Symbols as in the SI Brochure (BIPM, 9th edition), chapter 2; 1 where a number has no unit. */
export const SI_SYMBOLS: Readonly<Record<Dimension, string>> = {
  temperature: 'K',
  'temperature difference': 'K',
  pressure: 'Pa',
  torque: 'N·m',
  volume: 'm³',
  length: 'm',
  area: 'm²',
  resistance: 'Ω',
  voltage: 'V',
  current: 'A',
  power: 'W',
  time: 's',
  angle: 'rad',
  flow: 'm³/s',
  speed: 'm/s',
  rotation: 'rad/s',
  share: '1',
  mass: 'kg',
  plain: '1',
};

/** A revolution a minute, rad/s. */
const RPM = (2 * Math.PI) / 60;

/** A value as it is kept inside, in the coherent SI unit: only revolutions a minute are kept as they are written. */
export function coherent(inside: number, dimension: Dimension): number {
  return dimension === 'rotation' ? inside * RPM : inside;
}

/** What a unit's symbol measures; a plain number where there is none. */
export function dimensionOf(symbol: string | undefined): Dimension {
  return findUnit(symbol ?? '')?.dimension ?? 'plain';
}
