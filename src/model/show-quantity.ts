/** Quantities shown in the reader's units. */
import { type Habit, METRIC } from './habit.ts';
import type { Quantity } from './quantity.ts';
import { decimalsIn, readersUnit } from './readers-unit.ts';
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
  const { unit: symbol, dimension } = quantity;
  if (!written) throw new Error(`No unit is called ${quantity.unit}`);
  // What is already in the reader's own unit stays as its maker wrote it.
  const unit = symbol === habit[dimension] ? written : readersUnit(symbol, habit, quantity.high);
  const decimals = decimalsIn(unit, written, quantity.decimals, [quantity.low, quantity.high]);
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
