/** Quantities shown in the reader's units. */
import { type Habit, habitualUnit, METRIC } from './habit.ts';
import type { Quantity } from './quantity.ts';
import { findUnit, fromSI } from './units.ts';

/** The number and the unit apart, so that the page can set them in different sizes. */
export interface ShownQuantity {
  number: string;
  unit: string;
}

/**
 * Show a quantity. In the unit it was written in, the decimals are kept as written; in another unit it is rounded
 * so that the step is no finer than the original's.
 * @throws Error when its unit is none of ours; a quantity that was read has one that is
 */
export function showQuantity(quantity: Quantity, habit: Habit = METRIC): ShownQuantity {
  const written = findUnit(quantity.unit);
  const { unit: symbol, dimension, high: largest } = quantity;
  // What is already in the reader's own unit stays as its maker wrote it.
  const wanted = findUnit(
    symbol === habit[dimension] ? symbol : (habitualUnit(habit, dimension, largest) ?? symbol),
  );
  const unit = wanted && wanted.dimension === quantity.dimension ? wanted : written;
  if (!unit || !written) throw new Error(`No unit is called ${quantity.unit}`);
  // One written step, seen in the unit shown, decides the decimals.
  const step = (10 ** -quantity.decimals * written.factor) / unit.factor;
  const decimals = unit === written ? quantity.decimals : Math.max(0, Math.round(-Math.log10(step)));
  const show = (si: number) => showNumber(fromSI(si, unit), decimals);
  const low = show(quantity.low);
  const high = show(quantity.high);
  return {
    number: low === high ? low : `${low}\u2009–\u2009${high}`,
    unit: unit.symbol,
  };
}

/** A number with a true minus sign and never `-0`. */
export function showNumber(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  const zero = Number(text) === 0 ? text.replace('-', '') : text;
  return zero.replace('-', '\u2212');
}

/** Number, no-break space, unit. */
export function quantityText(quantity: Quantity, habit: Habit = METRIC): string {
  const { number, unit } = showQuantity(quantity, habit);
  return unit === '' ? number : `${number}\u00a0${unit}`;
}
