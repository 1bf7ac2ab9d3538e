/**
 * Units a person may write, with their exact factor to SI.
 *
 * Factors: NIST SP 811 (2008), appendix B; exact where derived from the foot, pound-force and inch.
 * A library was weighed (js-quantities, 42 kB) and left out of the pages for its size; it checks this table in
 * tests/model/units.test.ts instead.
 */
export type Dimension =
  | 'temperature'
  | 'temperature difference'
  | 'pressure'
  | 'torque'
  | 'volume'
  | 'length'
  | 'area'
  | 'resistance'
  | 'voltage'
  | 'current'
  | 'power'
  | 'time'
  | 'flow'
  | 'speed'
  | 'rotation'
  | 'share'
  | 'mass'
  | 'plain';

export interface Unit {
  /** As shown to the reader. */
  symbol: string;
  dimension: Dimension;
  /** SI = value × factor + offset. */
  factor: number;
  offset?: number;
  /** Other spellings understood in typed input. */
  spellings?: string[];
}

const LBF = 4.4482216152605;
const FOOT = 0.3048;
const INCH = 0.0254;
const PSI = LBF / (INCH * INCH);

export const UNITS: readonly Unit[] = [
  {
    symbol: '°C',
    dimension: 'temperature',
    factor: 1,
    offset: 273.15,
    spellings: ['C', 'degC', 'deg C', '° C', 'ºC'],
  },
  {
    symbol: '°F',
    dimension: 'temperature',
    factor: 5 / 9,
    offset: 273.15 - 160 / 9,
    spellings: ['F', 'degF', 'deg F', '° F', 'ºF'],
  },
  {
    symbol: 'K',
    dimension: 'temperature difference',
    factor: 1,
    spellings: ['kelvin'],
  },
  { symbol: 'bar', dimension: 'pressure', factor: 1e5 },
  { symbol: 'mbar', dimension: 'pressure', factor: 100, spellings: ['hPa'] },
  { symbol: 'kPa', dimension: 'pressure', factor: 1e3, spellings: ['kpa'] },
  { symbol: 'Pa', dimension: 'pressure', factor: 1 },
  {
    symbol: 'psi',
    dimension: 'pressure',
    factor: PSI,
    spellings: ['PSI', 'lb', 'lbs', 'lbf/in²'],
  },
  {
    symbol: 'N·m',
    dimension: 'torque',
    factor: 1,
    spellings: ['Nm', 'N.m', 'N m', 'nm', 'NM'],
  },
  {
    symbol: 'lbf·ft',
    dimension: 'torque',
    factor: LBF * FOOT,
    spellings: ['lbft', 'lb ft', 'lb-ft', 'ft lb', 'ft-lb', 'ftlb', 'lbf ft', 'ft·lbf'],
  },
  {
    symbol: 'lbf·in',
    dimension: 'torque',
    factor: LBF * INCH,
    spellings: ['lbin', 'lb in', 'lb-in', 'in lb', 'in-lb', 'inlb', 'lbf in', 'in·lbf'],
  },
  {
    symbol: 'l',
    dimension: 'volume',
    factor: 1e-3,
    spellings: ['L', 'litre', 'litres', 'liter', 'liters'],
  },
  {
    symbol: 'ml',
    dimension: 'volume',
    factor: 1e-6,
    spellings: ['mL', 'cc', 'cm³'],
  },
  {
    symbol: 'US qt',
    dimension: 'volume',
    factor: 0.946352946e-3,
    spellings: ['qt', 'quart', 'quarts', 'US quart', 'US quarts'],
  },
  { symbol: 'm', dimension: 'length', factor: 1 },
  { symbol: 'mm', dimension: 'length', factor: 1e-3 },
  { symbol: 'cm', dimension: 'length', factor: 1e-2 },
  {
    symbol: 'ft',
    dimension: 'length',
    factor: FOOT,
    spellings: ['foot', 'feet'],
  },
  {
    symbol: 'in',
    dimension: 'length',
    factor: INCH,
    spellings: ['inch', 'inches', '"'],
  },
  {
    symbol: 'mm²',
    dimension: 'area',
    factor: 1e-6,
    spellings: ['mm2', 'sq mm'],
  },
  {
    symbol: 'cm²',
    dimension: 'area',
    factor: 1e-4,
    spellings: ['cm2', 'sq cm'],
  },
  {
    symbol: 'Ω',
    dimension: 'resistance',
    factor: 1,
    spellings: ['ohm', 'ohms', 'Ohm', 'R'],
  },
  {
    symbol: 'kΩ',
    dimension: 'resistance',
    factor: 1e3,
    spellings: ['kohm', 'kOhm', 'k'],
  },
  {
    symbol: 'mΩ',
    dimension: 'resistance',
    factor: 1e-3,
    spellings: ['mohm', 'mOhm'],
  },
  {
    symbol: 'V',
    dimension: 'voltage',
    factor: 1,
    spellings: ['v', 'volt', 'volts'],
  },
  { symbol: 'mV', dimension: 'voltage', factor: 1e-3, spellings: ['mv'] },
  {
    symbol: 'A',
    dimension: 'current',
    factor: 1,
    spellings: ['amp', 'amps', 'a'],
  },
  { symbol: 'mA', dimension: 'current', factor: 1e-3 },
  { symbol: 'W', dimension: 'power', factor: 1, spellings: ['watt', 'watts'] },
  { symbol: 'kW', dimension: 'power', factor: 1e3, spellings: ['kw'] },
  { symbol: 's', dimension: 'time', factor: 1, spellings: ['sec', 'seconds'] },
  {
    symbol: 'min',
    dimension: 'time',
    factor: 60,
    spellings: ['minute', 'minutes'],
  },
  {
    symbol: 'h',
    dimension: 'time',
    factor: 3600,
    spellings: ['hour', 'hours'],
  },
  {
    symbol: 'l/min',
    dimension: 'flow',
    factor: 1e-3 / 60,
    spellings: ['lpm', 'L/min'],
  },
  {
    symbol: 'ml/min',
    dimension: 'flow',
    factor: 1e-6 / 60,
    spellings: ['mL/min'],
  },
  {
    symbol: 'km/h',
    dimension: 'speed',
    factor: 1 / 3.6,
    spellings: ['kmh', 'kph'],
  },
  { symbol: 'mph', dimension: 'speed', factor: 1609.344 / 3600 },
  {
    symbol: 'rpm',
    dimension: 'rotation',
    factor: 1,
    spellings: ['1/min', 'r/min'],
  },
  {
    symbol: '%',
    dimension: 'share',
    factor: 0.01,
    spellings: ['percent', 'per cent'],
  },
  { symbol: 'kg', dimension: 'mass', factor: 1 },
  { symbol: 'g', dimension: 'mass', factor: 1e-3 },
  { symbol: '', dimension: 'plain', factor: 1 },
];

const BY_NAME = new Map<string, Unit>();
for (const unit of UNITS)
  for (const name of [unit.symbol, ...(unit.spellings ?? [])]) BY_NAME.set(name, unit);

/** The unit a person meant by a spelling, or undefined. Exact spelling first, so that `mΩ` and `MΩ` stay apart. */
export function findUnit(name: string): Unit | undefined {
  const trimmed = name.trim();
  return BY_NAME.get(trimmed) ?? BY_NAME.get(trimmed.replace(/\.$/, ''));
}

/** All symbols of a dimension, the usual one first. */
export function unitsOf(dimension: Dimension): Unit[] {
  return UNITS.filter((unit) => unit.dimension === dimension);
}

/** A value in a unit as SI; a temperature becomes kelvin. */
export function toSI(value: number, unit: Unit): number {
  return value * unit.factor + (unit.offset ?? 0);
}

/** An SI value in a unit; the way back of `toSI`. */
export function fromSI(si: number, unit: Unit): number {
  return (si - (unit.offset ?? 0)) / unit.factor;
}
