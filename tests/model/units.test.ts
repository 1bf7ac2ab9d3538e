/** Every unit against an outside library, js-quantities 1.8.0 (MIT), which has its factors from its own tables. */
import Qty from 'js-quantities';
import { describe, expect, test } from 'vitest';
import { findUnit, fromSI, toSI, UNITS, type Unit } from '../../src/model/units.ts';

/** Our symbol: how js-quantities writes it, and its SI unit for that dimension. */
const OUTSIDE: Record<string, [unit: string, si: string]> = {
  '°C': ['tempC', 'tempK'],
  '°F': ['tempF', 'tempK'],
  K: ['degK', 'degK'],
  bar: ['bar', 'Pa'],
  mbar: ['mbar', 'Pa'],
  kPa: ['kPa', 'Pa'],
  Pa: ['Pa', 'Pa'],
  MPa: ['MPa', 'Pa'],
  'kgf/cm²': ['gee*kg/cm2', 'Pa'],
  inHg: ['inHg', 'Pa'],
  psi: ['psi', 'Pa'],
  N·m: ['N*m', 'N*m'],
  lbf·ft: ['lbf*ft', 'N*m'],
  lbf·in: ['lbf*in', 'N*m'],
  kgf·m: ['gee*kg*m', 'N*m'],
  kgf·cm: ['gee*kg*cm', 'N*m'],
  N·cm: ['N*cm', 'N*m'],
  l: ['l', 'm3'],
  cl: ['cl', 'm3'],
  dl: ['dl', 'm3'],
  'US pt': ['pt', 'm3'],
  'US gal': ['gal', 'm3'],
  'imp gal': ['galimp', 'm3'],
  ml: ['ml', 'm3'],
  cc: ['ml', 'm3'],
  'US qt': ['qt', 'm3'],
  m: ['m', 'm'],
  mm: ['mm', 'm'],
  cm: ['cm', 'm'],
  km: ['km', 'm'],
  mi: ['mi', 'm'],
  ft: ['ft', 'm'],
  in: ['in', 'm'],
  'mm²': ['mm2', 'm2'],
  'cm²': ['cm2', 'm2'],
  'in²': ['in2', 'm2'],
  MΩ: ['Mohm', 'ohm'],
  Ω: ['ohm', 'ohm'],
  kΩ: ['kohm', 'ohm'],
  mΩ: ['mohm', 'ohm'],
  V: ['V', 'V'],
  mV: ['mV', 'V'],
  A: ['A', 'A'],
  mA: ['mA', 'A'],
  W: ['W', 'W'],
  kW: ['kW', 'W'],
  'BTU/h': ['BTU/h', 'W'],
  s: ['s', 's'],
  min: ['min', 's'],
  h: ['h', 's'],
  days: ['day', 's'],
  'l/min': ['l/min', 'm3/s'],
  'ml/min': ['ml/min', 'm3/s'],
  'l/h': ['l/h', 'm3/s'],
  'US gal/min': ['gal/min', 'm3/s'],
  'fl oz': ['floz', 'm3'],
  'fl oz/min': ['floz/min', 'm3/s'],
  pounds: ['lb', 'kg'],
  'km/h': ['km/h', 'm/s'],
  mph: ['mph', 'm/s'],
  kg: ['kg', 'kg'],
  g: ['g', 'kg'],
  '%': ['%', ''],
  ppm: ['ppm', ''],
  '°': ['deg', 'rad'],
};

/** Seconds; IAU Style Manual (1989), table 5: a Julian year is 365.25 days of 86,400 s, exactly. js-quantities has the tropical one. */
const BY_DEFINITION: Readonly<Record<string, number>> = { years: 31_557_600, months: 2_629_800 };

/** Nothing to convert: revolutions a minute are kept as they are, and a plain number has no unit. */
const KEPT_AS_WRITTEN = ['rpm', ''];

/** js-quantities carries the pound-force per square inch with six digits only, 6894.76 Pa: 4e-7 off. */
const RELATIVE = 4e-7;

test('no unit goes without an outside value', () => {
  const known = [...Object.keys(OUTSIDE), ...Object.keys(BY_DEFINITION), ...KEPT_AS_WRITTEN].sort();
  expect(UNITS.map((unit) => unit.symbol).sort()).toEqual(known);
});

test.each(Object.entries(BY_DEFINITION))('%s as it is defined', (symbol, seconds) => {
  expect(findUnit(symbol)?.factor).toBe(seconds);
});

describe.each(UNITS.filter(({ symbol }) => symbol in OUTSIDE))('$symbol', (unit: Unit) => {
  const [name, si] = OUTSIDE[unit.symbol] ?? ['', ''];
  test.each([0.37, 1, 12, 250])('%d of it', (value) => {
    const outside = si === '' ? Qty(value, name).toBase().scalar : Qty(value, name).to(si).scalar;
    const ours = toSI(value, unit);
    expect(Math.abs(ours - outside)).toBeLessThanOrEqual(RELATIVE * Math.abs(outside));
    expect(fromSI(ours, unit)).toBeCloseTo(value, 9);
  });
});

/** NIST SP 811 (2008), appendix B.8, as printed to seven digits; from memory. */
test.each([
  ['psi', 6894.757],
  ['lbf·ft', 1.355818],
  ['lbf·in', 0.1129848],
  ['US qt', 9.463529e-4],
  ['mph', 0.44704],
  ['ft', 0.3048],
  ['in', 0.0254],
])('%s as the table of factors has it', (symbol, factor) => {
  const ours = findUnit(symbol)?.factor ?? Number.NaN;
  // Half a unit of the seventh digit.
  expect(Math.abs(ours - factor)).toBeLessThanOrEqual(5e-7 * factor);
});

test('a spelling means one unit', () => {
  const seen = new Map<string, string>();
  for (const { symbol, spellings = [] } of UNITS)
    for (const name of [symbol, ...spellings]) {
      expect(seen.get(name), name).toBeUndefined();
      seen.set(name, symbol);
      expect(findUnit(name)?.symbol).toBe(symbol);
    }
});

test('a unit is found with a full stop or spaces round it, and not by its inherited names', () => {
  expect(findUnit(' min. ')?.symbol).toBe('min');
  expect(findUnit('constructor')).toBeUndefined();
  expect(findUnit('furlong')).toBeUndefined();
});

test.each([
  ['ft lbs', 'lbf·ft'],
  ['ft-lbs', 'lbf·ft'],
  ['ft.lbs', 'lbf·ft'],
  ['FT-LB', 'lbf·ft'],
  ['Lb-Ft', 'lbf·ft'],
  ['in-lbs', 'lbf·in'],
  ['in lbs', 'lbf·in'],
  ['N-m', 'N·m'],
  ['N.m', 'N·m'],
  ['Ncm', 'N·cm'],
  ['kgf·cm', 'kgf·cm'],
  ['kgf cm', 'kgf·cm'],
  ['kgf-m', 'kgf·m'],
  ['kg·m', 'kgf·m'],
  ['gal', 'US gal'],
  ['Gallons', 'US gal'],
  ['ltr', 'l'],
  ['ltrs', 'l'],
  ['cl', 'cl'],
  ['gpm', 'US gal/min'],
  ['GPM', 'US gal/min'],
  ['MPa', 'MPa'],
  ['mpa', 'MPa'],
  ['BAR', 'bar'],
  ['kg/cm2', 'kgf/cm²'],
  ['MΩ', 'MΩ'],
  ['Mohm', 'MΩ'],
  ['mΩ', 'mΩ'],
  ['mohm', 'mΩ'],
  ['hrs', 'h'],
  ['AMPS', 'A'],
  ['BTU/hr', 'BTU/h'],
])('%s is read as %s', (typed, symbol) => {
  expect(findUnit(typed)?.symbol).toBe(symbol);
});

test('a milli and a mega that only their capital tells apart are asked back about, not guessed', () => {
  expect(findUnit('MOHM')).toBeUndefined();
  expect(findUnit('ms')).toBeUndefined();
});
