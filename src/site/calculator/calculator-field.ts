/** A field of a calculator as number and unit apart, the unit beside it to pick; typed together or apart it means the same. */
import type { Input, QuantityInput } from '../../calculators/declaration.ts';
import { unitsOffered } from '../../calculators/reader-units.ts';
import type { Habit } from '../../model/habit.ts';
import { readQuantity } from '../../model/quantity.ts';
import { decimalsIn, readersUnit } from '../../model/readers-unit.ts';
import { showNumber } from '../../model/show-quantity.ts';
import { findUnit, fromSI, type Unit } from '../../model/units.ts';

export interface FieldText {
  text: string;
  /** Symbol picked beside it; '' when the text carries its own. */
  unit: string;
}

/** A number or two ends of a range, without a unit. */
const BARE = /^[-+−]?[\d.,\s]+(?:(?:-|–|to)\s*[\d.,]+\s*)?$/;
const NUMBER_AND_UNIT = /^([-+−]?[\d.,]+)\s*([^\d.,\s].*)$/;

/** What stands in a field as one text, as `workOut` reads it. */
export function joinField({ text, unit }: FieldText): string {
  const trimmed = text.trim();
  return unit !== '' && BARE.test(trimmed) ? `${trimmed} ${unit}` : trimmed;
}

/** A text with a unit that is offered beside the field, taken apart; any other stays whole. */
export function splitField(whole: string, input: QuantityInput, unit: string): FieldText {
  const parts = NUMBER_AND_UNIT.exec(whole.trim());
  const symbol = findUnit(parts?.[2] ?? '')?.symbol;
  if (parts?.[1] === undefined || symbol === undefined || !unitsOffered(input).includes(symbol))
    return { text: whole, unit };
  return { text: parts[1], unit: symbol };
}

/**
 * A value in the unit this reader types; a step no finer than it was written with.
 * @param si in SI
 * @throws Error when the unit it was written in is none of ours
 */
export function writeField(
  si: number,
  written: { unit: string; decimals: number },
  input: QuantityInput,
  habit: Habit,
): FieldText {
  const from = findUnit(written.unit);
  // Whatever stands in it, a torque field takes pound-force feet: inches would be taken for a twelfth of what is typed for the next bolt.
  const habitual = readersUnit(input.unit, habit);
  // A figure keeps the unit it was written in unless the reader has another habit.
  const kept = habit[input.dimension] === undefined && unitsOffered(input).includes(written.unit);
  const unit = kept && from ? from : habitual;
  if (!from) throw new Error(`No unit is called ${written.unit}`);
  return writeIn(si, { from, decimals: written.decimals }, unit);
}

/** A value in a unit that was picked for it. @param si in SI @throws Error when a unit is none of ours */
export function convertField(
  si: number,
  written: { unit: string; decimals: number },
  symbol: string,
): FieldText {
  const [from, unit] = [written.unit, symbol].map(findUnit);
  if (!from || !unit) throw new Error(`No unit is called ${written.unit} or ${symbol}`);
  return writeIn(si, { from, decimals: written.decimals }, unit);
}

function writeIn(si: number, { from, decimals }: { from: Unit; decimals: number }, unit: Unit): FieldText {
  // Whole pound-force feet are up to a tenth off on a small bolt.
  const least = unit.symbol === 'lbf·ft' && fromSI(si, unit) < 15 ? 1 : 0;
  return {
    text: showNumber(fromSI(si, unit), Math.max(least, decimalsIn(unit, from, decimals, [si]))),
    unit: unit.symbol,
  };
}

/** The default of an input in the unit this reader types. */
export function writeDefault(input: QuantityInput, text: string, habit: Habit): FieldText {
  const read = readQuantity(text, input.dimension, input.unit);
  if (!read.ok) return { text: '', unit: readersUnit(input.unit, habit).symbol };
  return writeField(read.quantity.low, read.quantity, input, habit);
}

/** Whether a keypad of digits is enough: it has no minus sign. */
export function keypadOf(input: Input): 'decimal' | 'text' {
  return input.kind === 'quantity' && !/^[-−]/.test(input.limits[0]) ? 'decimal' : 'text';
}
