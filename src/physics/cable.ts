import { within } from './out-of-range.ts';
import {
  type Ampere,
  ampere,
  fromCelsius,
  type Kelvin,
  type Metre,
  type Ohm,
  ohm,
  type Second,
  type SquareMetre,
  second,
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

/**
 * Current one copper cable in PVC bears for long, free in air of 30 °C, 70 °C in the copper: square millimetre, ampere.
 * DIN VDE 0298-4, single cables in air, from memory; 0.5 mm² from makers' tables, from memory.
 */
const BEARS: readonly (readonly [squareMillimetre: number, ampere: number])[] = [
  [0.5, 11],
  [0.75, 14],
  [1, 19],
  [1.5, 24],
  [2.5, 32],
  [4, 42],
  [6, 54],
  [10, 73],
  [16, 98],
  [25, 129],
  [35, 158],
  [50, 198],
  [70, 245],
  [95, 292],
  [120, 344],
];

/**
 * Current a single PVC cable bears for long, free in air; in a loom or by a hot engine less.
 *
 * Between the rows, and past them, straight on ratio scales.
 * @param area 0.1 to 200 mm2, in m2
 * @throws OutOfRange on the area
 */
export function cableBears(area: SquareMetre): Ampere {
  const size = within('cable area', area, 0.1e-6, 200e-6, 'm2') * 1e6;
  const after = BEARS.findIndex(([each]) => each >= size);
  const at = after < 0 ? BEARS.length - 1 : Math.max(1, after);
  const [smaller, less] = BEARS[at - 1] ?? [1, 19];
  const [larger, more] = BEARS[at] ?? [1.5, 24];
  const along = Math.log(size / smaller) / Math.log(larger / smaller);
  return ampere(less * (more / less) ** along);
}

/** Heat copper takes up, J/(m3 K): 8,930 kg/m3 times 385 J/(kg K), handbook values from memory. */
const COPPER_HEAT = 8930 * 385;

/**
 * Time in which a current heats a cable by 60 K when no heat leaves it, s.
 *
 * I²ρ/A against the heat of the copper, from 20 °C; insulation and air make it longer.
 * @param current above 0 to 2,000 A
 * @param area 0.1 to 200 mm2, in m2
 * @throws OutOfRange on either
 */
export function heatsCableIn(current: Ampere, area: SquareMetre): Second {
  const i = within('current', current, 1e-3, 2000, 'A');
  const a = within('cable area', area, 0.1e-6, 200e-6, 'm2');
  return second((60 * COPPER_HEAT * a * a) / (i * i * RESISTIVITY));
}

/** Voltage lost over a resistance. Ohm's law. @param current 0 to 2,000 A @param resistance 0 to 1 Mohm @throws OutOfRange */
export function voltageDrop(current: Ampere, resistance: Ohm): Volt {
  const i = within('current', current, 0, 2000, 'A');
  return volt(i * within('resistance', resistance, 0, 1e6, 'ohm'));
}
