/** From what stands in the fields to an answer or to plain messages. The same at build and live. */

import { type Habit, METRIC } from '../model/habit.ts';
import { type Quantity, readQuantity } from '../model/quantity.ts';
import { readersUnit } from '../model/readers-unit.ts';
import { showNumber } from '../model/show-quantity.ts';
import { findUnit, fromSI } from '../model/units.ts';
import { OutOfRange } from '../physics/out-of-range.ts';
import type { Answer, Calculator, Input, QuantityInput, Values, WordInput } from './declaration.ts';
import { showerFor } from './reader-units.ts';
import { sayOutOfRange } from './say-out-of-range.ts';
import { withGaugeAsArea } from './wire-gauge.ts';

/** What stands in the fields, by input name, as typed. */
export type TypedValues = Readonly<Record<string, string | undefined>>;

/** A message at a field; at none when it is the whole that does not fit. */
export interface FieldFault {
  name: string;
  message: string;
}

export type CalculatorResult = { ok: true; answer: Answer } | { ok: false; faults: FieldFault[] };

/** Whether an input is asked, given the choices made. */
export function isAsked(input: Input, calculator: Calculator, typed: TypedValues): boolean {
  return Object.entries(input.when ?? {}).every(([name, values]) => {
    const other = calculator.inputs.find((each) => each.name === name);
    return other !== undefined && values.includes((typed[name] ?? other.default).trim());
  });
}

/** Whose figures stand in the fields, by input name. */
export interface FilledIn {
  person: ReadonlySet<string>;
  vehicle: ReadonlySet<string>;
}

/**
 * Whether an answer rests on example figures: nobody has typed one, and the vehicle gives not all that is read on a car.
 * @param typed fields as they stand, for what is asked
 */
export function isExample(
  calculator: Calculator,
  typed: TypedValues,
  { person, vehicle }: FilledIn,
): boolean {
  if (hasTyped(calculator, typed, person)) return false;
  const asked = askedFigures(calculator, typed);
  const readings = asked.filter(({ reading }) => reading);
  return readings.length > 0
    ? !readings.every(({ name }) => vehicle.has(name))
    : !asked.some(({ name }) => vehicle.has(name));
}

/**
 * The fields as they stand, without the examples of readings that nobody took: once a person has typed one figure of
 * this car, an example beside it would be taken for another.
 * @param typed fields as they stand, for what is asked
 */
export function withoutExamples(calculator: Calculator, typed: TypedValues, given: FilledIn): TypedValues {
  if (!hasTyped(calculator, typed, given.person)) return typed;
  const notTaken = askedFigures(calculator, typed).filter(
    ({ name, reading }) => reading && !given.person.has(name) && !given.vehicle.has(name),
  );
  return { ...typed, ...Object.fromEntries(notTaken.map(({ name }) => [name, ''])) };
}

/** Whether a person has typed a figure that is asked for. @param typed fields as they stand, for what is asked */
export function hasTyped(calculator: Calculator, typed: TypedValues, person: ReadonlySet<string>): boolean {
  return askedFigures(calculator, typed).some(({ name }) => person.has(name));
}

/** Quantities, and words that are read on the car. */
function askedFigures(calculator: Calculator, typed: TypedValues): (QuantityInput | WordInput)[] {
  return calculator.inputs.filter(
    (input): input is QuantityInput | WordInput =>
      (input.kind === 'quantity' || (input.kind === 'word' && input.reading === true)) &&
      isAsked(input, calculator, typed),
  );
}

/** What was read from a field: SI, and half a unit of its last digit. */
interface ReadNumber {
  si: number;
  rounding: number;
}

/**
 * Work out a calculator. Never throws on what a person can type; a number is never changed silently.
 * @param typed fields as typed; a missing one stands at its default
 */
export function workOut(calculator: Calculator, typed: TypedValues, habit: Habit = METRIC): CalculatorResult {
  const numbers = new Map<string, ReadNumber>();
  const texts = new Map<string, string>();
  const faults: FieldFault[] = [];
  for (const input of calculator.inputs) {
    if (!isAsked(input, calculator, typed)) continue;
    const read = readInput(input, typed[input.name], habit);
    if (typeof read === 'string') texts.set(input.name, read);
    else if (read && 'si' in read) numbers.set(input.name, read);
    else if (read) faults.push({ name: input.name, ...read });
  }
  if (faults.length > 0) return { ok: false, faults };
  const show = showerFor(habit);
  try {
    const answer = calculator.answer(valuesOf(calculator, numbers, texts), show);
    return 'refused' in answer ? { ok: false, faults: [answer.refused] } : { ok: true, answer };
  } catch (fault) {
    if (!(fault instanceof OutOfRange)) throw fault;
    return { ok: false, faults: [{ name: '', message: sayOutOfRange(fault, show) }] };
  }
}

/** The value of one field, nothing when it was left empty and may be, or what is wrong with it. */
function readInput(
  input: Input,
  typed: string | undefined,
  habit: Habit,
): ReadNumber | string | undefined | { message: string } {
  const text = (typed ?? input.default).trim();
  if (input.kind === 'choice') {
    if (input.options.some(({ value }) => value === text)) return text;
    return { message: `Choose one of: ${input.options.map(({ label }) => label).join(', ')}.` };
  }
  if (input.kind === 'word') {
    if (text === '') return text;
    const word = input.asMeant?.(text) ?? text;
    if (input.pattern.test(word)) return word;
    return { message: `Write ${input.expected}, or leave it empty.` };
  }
  const example = exampleFor(input, habit);
  if (text === '') {
    if (input.optional) return undefined;
    return { message: `Write a number, such as ${example}.` };
  }
  const bare = typed === undefined ? input.unit : readersUnit(input.unit, habit).symbol;
  const read = readQuantity(withGaugeAsArea(text, input.dimension), input.dimension, bare, example);
  if (!read.ok) return { message: `${read.fault.found} Write ${read.fault.expected}.` };
  const { low, high, unit, decimals } = read.quantity;
  if (low !== high) {
    const [one, other] = [low, high].map((end) => showNumber(fromSI(end, unitOf(unit)), decimals));
    return {
      message: `One number is wanted here, not a range. Write ${one}\u00a0${unit}, then ${other}\u00a0${unit}, and see both answers.`,
    };
  }
  const outside = outsideLimits(input, low, habit);
  return outside ? { message: outside } : { si: low, rounding: 0.5 * 10 ** -decimals * unitOf(unit).factor };
}

/** @throws Error when no unit has that name; one that was read has */
function unitOf(symbol: string) {
  const unit = findUnit(symbol);
  if (!unit) throw new Error(`No unit is called ${symbol}`);
  return unit;
}

function valuesOf(
  { id }: Calculator,
  numbers: ReadonlyMap<string, ReadNumber>,
  texts: ReadonlyMap<string, string>,
): Values {
  const numberOf = (name: string) => {
    const value = numbers.get(name);
    if (value === undefined) throw new Error(`${id} has no number ${name}`);
    return value;
  };
  return {
    number: (name) => numberOf(name).si,
    optional: (name) => numbers.get(name)?.si,
    rounding: (name) => numberOf(name).rounding,
    choice(name) {
      const value = texts.get(name);
      if (value === undefined) throw new Error(`${id} has no choice ${name}`);
      return value;
    },
    word: (name) => texts.get(name) ?? '',
  };
}

function outsideLimits(input: QuantityInput, si: number, habit: Habit): string | undefined {
  const [low, high] = limitsOf(input);
  // The last bits of a conversion are no reason to refuse the limit itself.
  const slack = 1e-9 * Math.max(Math.abs(low.low), Math.abs(high.low));
  if (si >= low.low - slack && si <= high.low + slack) return undefined;
  const show = showerFor(habit);
  const size = Math.abs(fromSI(si, readersUnit(input.unit, habit)));
  const found = size > 1e9 ? 'So large a number' : show.quantity(si, input.unit, decimalsThatTell(size));
  const range = show.range(low.low, high.low, input.unit, Math.max(low.decimals, high.decimals));
  return `${found} cannot be meant here. Write ${range}.`;
}

/** Enough decimals that a number outside the limits is not shown as the limit. */
function decimalsThatTell(size: number): number {
  return size >= 100 || size === 0 ? 0 : Math.min(6, 2 - Math.floor(Math.log10(size)));
}

function exampleFor(input: QuantityInput, habit: Habit): string {
  const [low, high] = limitsOf(input);
  const given = input.default === '' ? undefined : readQuantity(input.default, input.dimension, input.unit);
  const { si, decimals } = given?.ok
    ? { si: given.quantity.low, decimals: given.quantity.decimals }
    : { si: (low.low + high.low) / 2, decimals: low.decimals };
  return showerFor(habit).quantity(si, input.unit, decimals);
}

/** @throws Error when the declaration's own limits cannot be read */
function limitsOf(input: QuantityInput): [Quantity, Quantity] {
  const [low, high] = input.limits.map((each) => readQuantity(each, input.dimension, input.unit));
  if (!low?.ok || !high?.ok) throw new Error(`Limits of ${input.name} cannot be read`);
  return [low.quantity, high.quantity];
}
