/**
 * Figures of a vehicle that a job measured, for the shelf's counts. Only what stood on a car that was sound at the end goes along: the
 * rows of a proof run after the repair that passed as a whole, and typed readings of parts; what the proven fault itself bends is
 * left out when it is taken in.
 */
import { FIGURE_PATHS, FIGURES, type FigurePath } from './figures.ts';
import type { Job } from './job.ts';
import { type Quantity, readQuantity } from './quantity.ts';
import { quantityText } from './show-quantity.ts';
import { findUnit, fromSI } from './units.ts';

/** A figure and its reading as written. */
export interface MeasuredFigure {
  figure: FigurePath;
  is: string;
}

/** What the card and the proof run call a figure of the record. */
const NAMES: Readonly<Record<string, FigurePath>> = {
  'fan in at': 'fan.on',
  'fan starts at': 'fan.on',
  'fan out at': 'fan.off',
  'fan stops at': 'fan.off',
  'thermostat starts at': 'thermostat.opens',
  'holds at steady speed': 'running.cruise',
  'coolant at steady cruise': 'running.cruise',
};

/** A car with the fault holds another temperature and warms up otherwise: these count from the proof run after the repair alone. */
const OF_THE_WHOLE_CAR: readonly FigurePath[] = ['running.cruise', 'running.low-limit', 'warm-up.time'];

/** What a finished job measured, each figure once; the proof run's before a typed reading. */
export function measuredOnJob({ readings, litres, proofs = [] }: Job): MeasuredFigure[] {
  const found = new Map<FigurePath, string>();
  const take = (figure: FigurePath | undefined, value: string): void => {
    const is = figure === undefined ? undefined : single(value, figure);
    if (figure !== undefined && is !== undefined) found.set(figure, is);
  };
  for (const { what, value } of readings) {
    const figure = figureCalled(what);
    if (figure !== undefined && !OF_THE_WHOLE_CAR.includes(figure)) take(figure, value);
  }
  const drained = litres.filter(({ way }) => way === 'drained').reduce((sum, each) => sum + each.litres, 0);
  if (drained > 0) take('coolant.drain', `${Math.round(drained * 100) / 100} l`);
  const proof = proofs.filter(({ when }) => when === 'after').at(-1);
  if (proof?.rows.every(({ passed }) => passed === 'pass'))
    for (const { what, value } of proof.rows) take(figureCalled(what), value);
  return [...found].map(([figure, is]) => ({ figure, is }));
}

function figureCalled(what: string): FigurePath | undefined {
  const name = what.trim().toLowerCase();
  return NAMES[name] ?? FIGURE_PATHS.find((path) => FIGURES[path].label.toLowerCase() === name);
}

/** The reading as the shelf writes it; undefined for a range, another unit, or what cannot be meant. */
function single(value: string, figure: FigurePath): string | undefined {
  const quantity = readMeasured(value, figure);
  return quantity && quantityText(quantity).replace(/\u00a0/g, ' ');
}

/** @returns one plausible value of the figure, or undefined */
export function readMeasured(value: string, figure: FigurePath): Quantity | undefined {
  const { dimension, plausible } = FIGURES[figure];
  const read = readQuantity(value, dimension);
  const [lowest, highest] = plausible.map((each) => readQuantity(each, dimension));
  if (!read.ok || !lowest?.ok || !highest?.ok || read.quantity.low !== read.quantity.high) return undefined;
  const { low } = read.quantity;
  return low >= lowest.quantity.low && low <= highest.quantity.high ? read.quantity : undefined;
}

/** Readings of one figure together. */
export interface MeasuredTogether {
  count: number;
  /** Their mean as the shelf writes it, `97 °C`. */
  mean: string;
  /** In words, as `98 °C` or `97 °C on average of 3, ±0.8 K`. */
  says: string;
  /** Every reading lies more than one written step outside what the record says. */
  isOutside: boolean;
}

/**
 * Mean and spread (sample standard deviation) of readings, beside what the record says.
 * @param values as written; what cannot be read is passed over
 * @returns undefined without a reading
 */
export function measuredTogether(
  values: readonly string[],
  figure: FigurePath,
  stands: Quantity | undefined,
): MeasuredTogether | undefined {
  const quantities = values.flatMap((value) => readMeasured(value, figure) ?? []);
  const [first] = quantities;
  const unit = findUnit(first?.unit ?? '');
  if (!first || !unit) return undefined;
  const numbers = quantities.map(({ low }) => fromSI(low, unit));
  const mean = numbers.reduce((sum, each) => sum + each, 0) / numbers.length;
  const spread = Math.sqrt(
    numbers.reduce((sum, each) => sum + (each - mean) ** 2, 0) / Math.max(1, numbers.length - 1),
  );
  const decimals = Math.max(...quantities.map((each) => each.decimals));
  const step = 10 ** -(stands?.decimals ?? 0) * (findUnit(stands?.unit ?? '')?.factor ?? 1);
  const isOutside =
    stands !== undefined &&
    (quantities.every(({ high }) => high < stands.low - step * 1.001) ||
      quantities.every(({ low }) => low > stands.high + step * 1.001));
  const difference = unit.dimension === 'temperature' ? 'K' : unit.symbol;
  // A degree Fahrenheit is no kelvin; its spread is told in kelvin all the same.
  const scale = unit.dimension === 'temperature' ? unit.factor : 1;
  const says =
    quantities.length === 1
      ? `${mean.toFixed(decimals)} ${unit.symbol}, once`
      : `${mean.toFixed(decimals)} ${unit.symbol} on average of ${quantities.length}, ±${(spread * scale).toFixed(decimals + 1)} ${difference}`;
  return { count: quantities.length, mean: `${mean.toFixed(decimals)} ${unit.symbol}`, says, isOutside };
}

/**
 * Whether a cause names what a figure is of: measured on a car with that fault, it is no figure of the vehicle.
 * @param cause its title: a card knows no more of it
 */
export function isOfFaultyPart(figure: FigurePath, cause: string): boolean {
  return cause.toLowerCase().includes((figure.split('.')[0] ?? '').replace(/^second-/, ''));
}
