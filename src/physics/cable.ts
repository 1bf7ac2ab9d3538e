import { within } from './out-of-range.ts';
import {
  type Ampere,
  fromCelsius,
  type Kelvin,
  type Metre,
  type Ohm,
  ohm,
  type SquareMetre,
  squareMetre,
  type Volt,
  volt,
} from './units.ts';

/** Annealed copper at 20 °C, ohm·m and 1/K: IEC 60028. */
const RESISTIVITY = 0.017241e-6;
const TEMPERATURE_COEFFICIENT = 0.00393;
const REFERENCE = fromCelsius(20);

/** Resistance of copper as a multiple of that at 20 °C. IEC 60028. @param temperature 220 to 480 K @throws OutOfRange */
export function copperFactor(temperature: Kelvin): number {
  const t = within('cable temperature', temperature, 220, 480, 'K');
  return 1 + TEMPERATURE_COEFFICIENT * (t - REFERENCE);
}

/**
 * Resistance of a copper conductor of solid section.
 *
 * IEC 60028. Stranded vehicle cable of the same nominal area has 6 to 14 % more.
 * @param length one way, 0 to 100 m
 * @param area 0.1 to 200 mm2, in m2
 * @param temperature 220 to 480 K
 * @throws OutOfRange on any of them
 */
export function cableResistance(length: Metre, area: SquareMetre, temperature: Kelvin): Ohm {
  const l = within('cable length', length, 0, 100, 'm');
  const a = within('cable area', area, 0.1e-6, 200e-6, 'm2');
  return ohm(((RESISTIVITY * l) / a) * copperFactor(temperature));
}

/** Area of a solid wire by American gauge, 0 to 40. ASTM B258: d = 0.127 mm 92^((36-n)/39). @throws OutOfRange */
export function wireGaugeArea(gauge: number): SquareMetre {
  const n = within('wire gauge', gauge, 0, 40, '1');
  const diameter = 0.127e-3 * 92 ** ((36 - n) / 39);
  return squareMetre((Math.PI / 4) * diameter ** 2);
}

/** Voltage lost over a resistance. Ohm's law. @param current 0 to 2,000 A @param resistance 0 to 1 Mohm @throws OutOfRange */
export function voltageDrop(current: Ampere, resistance: Ohm): Volt {
  const i = within('current', current, 0, 2000, 'A');
  return volt(i * within('resistance', resistance, 0, 1e6, 'ohm'));
}
