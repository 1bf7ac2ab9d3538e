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
  | 'angle'
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
/** Kilogram-force, N: standard gravity, exact. */
const KGF = 9.80665;
/** Julian year, 365.25 days. */
const YEAR = 365.25 * 86_400;
/** US gallon, 231 cubic inches; and the imperial one, exact by law. */
const GALLON = 231 * INCH ** 3;
const IMPERIAL_GALLON = 4.54609e-3;
const FLUID_OUNCE = GALLON / 128;
/** Avoirdupois, exact. */
const POUND = 0.45359237;

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
  { symbol: 'MPa', dimension: 'pressure', factor: 1e6 },
  {
    symbol: 'psi',
    dimension: 'pressure',
    factor: PSI,
    spellings: ['PSI', 'psig', 'lb', 'lbs', 'lbf/in²', 'lb/in²', 'lbs/in²'],
  },
  {
    symbol: 'kgf/cm²',
    dimension: 'pressure',
    factor: KGF / 1e-4,
    spellings: ['kgf/cm2', 'kg/cm²', 'kg/cm2'],
  },
  { symbol: 'inHg', dimension: 'pressure', factor: 3386.389, spellings: ['in Hg', '"Hg'] },
  {
    symbol: 'N·m',
    dimension: 'torque',
    factor: 1,
    spellings: ['Nm', 'newton metre', 'newton metres', 'newton meters'],
  },
  {
    symbol: 'lbf·ft',
    dimension: 'torque',
    factor: LBF * FOOT,
    spellings: ['lbft', 'ftlb', 'lbfft', 'ftlbf', 'foot pound', 'pound foot', 'foot pounds', 'pound feet'],
  },
  {
    symbol: 'lbf·in',
    dimension: 'torque',
    factor: LBF * INCH,
    spellings: ['lbin', 'inlb', 'lbfin', 'inlbf', 'inch pound', 'pound inch', 'inch pounds', 'pound inches'],
  },
  {
    symbol: 'kgf·m',
    dimension: 'torque',
    factor: KGF,
    spellings: ['kgm', 'mkg', 'mkgf', 'kpm', 'mkp'],
  },
  {
    symbol: 'kgf·cm',
    dimension: 'torque',
    factor: KGF / 100,
    spellings: ['kgcm', 'cmkg', 'kpcm'],
  },
  { symbol: 'N·cm', dimension: 'torque', factor: 0.01, spellings: ['Ncm'] },
  {
    symbol: 'l',
    dimension: 'volume',
    factor: 1e-3,
    spellings: ['L', 'litre', 'litres', 'liter', 'liters', 'ltr', 'lt'],
  },
  {
    symbol: 'ml',
    dimension: 'volume',
    factor: 1e-6,
    spellings: ['mL', 'millilitre', 'milliliter'],
  },
  { symbol: 'cc', dimension: 'volume', factor: 1e-6, spellings: ['cm³', 'cm3', 'ccm'] },
  { symbol: 'cl', dimension: 'volume', factor: 1e-5, spellings: ['cL'] },
  { symbol: 'dl', dimension: 'volume', factor: 1e-4, spellings: ['dL'] },
  {
    symbol: 'US qt',
    dimension: 'volume',
    factor: 0.946352946e-3,
    spellings: ['qt', 'qts', 'quart', 'quarts', 'US quart', 'US quarts'],
  },
  { symbol: 'fl oz', dimension: 'volume', factor: FLUID_OUNCE, spellings: ['US fl oz', 'fluid ounce'] },
  { symbol: 'US pt', dimension: 'volume', factor: GALLON / 8, spellings: ['pt', 'pint', 'US pint'] },
  {
    symbol: 'US gal',
    dimension: 'volume',
    factor: GALLON,
    spellings: ['gal', 'gallon', 'US gallon'],
  },
  {
    symbol: 'imp gal',
    dimension: 'volume',
    factor: IMPERIAL_GALLON,
    spellings: ['imperial gallon', 'UK gal', 'UK gallon'],
  },
  { symbol: 'm', dimension: 'length', factor: 1 },
  { symbol: 'mm', dimension: 'length', factor: 1e-3 },
  { symbol: 'cm', dimension: 'length', factor: 1e-2 },
  { symbol: 'km', dimension: 'length', factor: 1e3 },
  { symbol: 'mi', dimension: 'length', factor: 1609.344, spellings: ['mile'] },
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
  { symbol: 'in²', dimension: 'area', factor: INCH * INCH, spellings: ['in2', 'sq in'] },
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
    spellings: ['kohm', 'kOhm', 'k', 'kR'],
  },
  { symbol: 'MΩ', dimension: 'resistance', factor: 1e6, spellings: ['Mohm', 'MOhm', 'megohm', 'M'] },
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
  { symbol: 'BTU/h', dimension: 'power', factor: 1055.05585262 / 3600, spellings: ['BTU/hr', 'BTUh'] },
  { symbol: 's', dimension: 'time', factor: 1, spellings: ['sec', 'seconds'] },
  {
    symbol: 'min',
    dimension: 'time',
    factor: 60,
    spellings: ['minute', 'minutes', 'mins'],
  },
  {
    symbol: 'h',
    dimension: 'time',
    factor: 3600,
    spellings: ['hour', 'hours', 'hr', 'hrs'],
  },
  { symbol: 'days', dimension: 'time', factor: 86_400, spellings: ['day', 'd'] },
  // A twelfth of the Julian year, and the year itself: intervals of service, no calendar.
  { symbol: 'months', dimension: 'time', factor: YEAR / 12, spellings: ['month'] },
  { symbol: 'years', dimension: 'time', factor: YEAR, spellings: ['year', 'yr', 'yrs'] },
  { symbol: '°', dimension: 'angle', factor: Math.PI / 180, spellings: ['deg', 'degree', 'degrees'] },
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
    symbol: 'US gal/min',
    dimension: 'flow',
    factor: GALLON / 60,
    spellings: ['gpm', 'gal/min', 'US gpm'],
  },
  { symbol: 'fl oz/min', dimension: 'flow', factor: FLUID_OUNCE / 60 },
  { symbol: 'l/h', dimension: 'flow', factor: 1e-3 / 3600, spellings: ['lph'] },
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
  {
    // Parts of a million: what a gas analyser reads.
    symbol: 'ppm',
    dimension: 'share',
    factor: 1e-6,
  },
  { symbol: 'kg', dimension: 'mass', factor: 1 },
  { symbol: 'g', dimension: 'mass', factor: 1e-3 },
  // In full: "lb" on a gauge is a pressure.
  { symbol: 'pounds', dimension: 'mass', factor: POUND, spellings: ['pound'] },
  { symbol: '', dimension: 'plain', factor: 1 },
];

/** As written, and as a hurried hand writes it: without dots, strokes and spaces, in small letters. */
const BY_NAME = new Map<string, Unit>();
const BY_LOOSE_NAME = new Map<string, Unit | 'two'>();
for (const unit of UNITS)
  for (const name of [unit.symbol, ...(unit.spellings ?? [])]) {
    BY_NAME.set(name, unit);
    const loose = loosely(name);
    const other = BY_LOOSE_NAME.get(loose);
    BY_LOOSE_NAME.set(loose, other === undefined || other === unit ? unit : 'two');
  }

function loosely(name: string): string {
  return name.replace(/[\s.·*‧⋅\-‑–]/g, '').toLowerCase();
}

/**
 * The unit a person meant by a spelling, or undefined. Exact spelling first, so that `mΩ` and `MΩ` stay apart; then
 * whatever the capitals, dots and strokes, and with the s of a plural, where only one unit can be meant.
 */
export function findUnit(name: string): Unit | undefined {
  const exact = BY_NAME.get(name.trim());
  if (exact) return exact;
  const loose = loosely(name);
  const found =
    BY_LOOSE_NAME.get(loose) ?? (/\w{3,}s$/.test(loose) ? BY_LOOSE_NAME.get(loose.slice(0, -1)) : undefined);
  return found === 'two' ? undefined : found;
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
