/** From what stands in the fields to an answer or to plain messages. The same at build and live. */

import { type Quantity, readQuantity } from '../model/quantity.ts';
import { type Habit, METRIC, showNumber } from '../model/show-quantity.ts';
import { findUnit, fromSI } from '../model/units.ts';
import { OutOfRange } from '../physics/out-of-range.ts';
import type { Answer, Calculator, Input, QuantityInput, Shower, Values } from './declaration.ts';

/** What stands in the fields, by input name, as typed. */
export type Typed = Readonly<Record<string, string | undefined>>;

/** A message at a field. */
export interface FieldFault {
  name: string;
  message: string;
}

export type Outcome = { ok: true; answer: Answer } | { ok: false; faults: FieldFault[] };

/** Whether an input is asked, given the choices made. */
export function isAsked(input: Input, calculator: Calculator, typed: Typed): boolean {
  if (!input.when) return true;
  const { name, is } = input.when;
  const other = calculator.inputs.find((each) => each.name === name);
  return is.includes(typed[name] ?? other?.default ?? '');
}

/** Unit taken for a bare number: the reader's habit, else the declaration's. */
export function unitFor(input: QuantityInput, habit: Habit): string {
  return habit[input.dimension] ?? input.unit;
}

/**
 * Work out a calculator. Never throws on what a person can type; a number is never changed silently.
 * @param typed fields as typed; a missing one stands at its default
 */
export function workOut(calculator: Calculator, typed: Typed, habit: Habit = METRIC): Outcome {
  const numbers = new Map<string, number>();
  const choices = new Map<string, string>();
  const faults: FieldFault[] = [];
  for (const input of calculator.inputs) {
    if (!isAsked(input, calculator, typed)) continue;
    const text = (typed[input.name] ?? input.default).trim();
    if (input.kind === 'choice') {
      const known = input.options.some(({ value }) => value === text);
      if (known) choices.set(input.name, text);
      else
        faults.push({
          name: input.name,
          message: `Choose one of: ${input.options.map(({ label }) => label).join(', ')}.`,
        });
      continue;
    }
    if (text === '') {
      if (!input.optional)
        faults.push({
          name: input.name,
          message: `${input.label}: write a number, such as ${exampleFor(input, habit)}.`,
        });
      continue;
    }
    const read = readQuantity(
      text,
      input.dimension,
      typed[input.name] === undefined ? input.unit : unitFor(input, habit),
    );
    if (!read.ok) {
      faults.push({ name: input.name, message: `${read.fault.found} Write ${read.fault.expected}.` });
      continue;
    }
    const outside = outsideLimits(input, read.quantity, habit);
    if (outside) faults.push({ name: input.name, message: outside });
    else numbers.set(input.name, (read.quantity.low + read.quantity.high) / 2);
  }
  if (faults.length > 0) return { ok: false, faults };
  const values: Values = {
    number(name) {
      const value = numbers.get(name);
      if (value === undefined) throw new Error(`${calculator.id} has no number ${name}`);
      return value;
    },
    optional: (name) => numbers.get(name),
    choice(name) {
      const value = choices.get(name);
      if (value === undefined) throw new Error(`${calculator.id} has no choice ${name}`);
      return value;
    },
  };
  try {
    const answer = calculator.answer(values, showerFor(habit));
    return 'refused' in answer ? { ok: false, faults: [answer.refused] } : { ok: true, answer };
  } catch (fault) {
    if (!(fault instanceof OutOfRange)) throw fault;
    return {
      ok: false,
      faults: [{ name: '', message: `${fault.message} No figure is given outside that range.` }],
    };
  }
}

function outsideLimits(input: QuantityInput, quantity: Quantity, habit: Habit): string | undefined {
  const [low, high] = input.limits.map((each) => readQuantity(each, input.dimension, input.unit));
  if (!low?.ok || !high?.ok) throw new Error(`Limits of ${input.name} cannot be read`);
  if (quantity.low >= low.quantity.low && quantity.high <= high.quantity.high) return undefined;
  const show = showerFor(habit);
  const decimals = Math.max(low.quantity.decimals, high.quantity.decimals);
  return `${input.label}: ${show.range(low.quantity.low, high.quantity.low, input.unit, decimals)} is what can be meant here.`;
}

function exampleFor(input: QuantityInput, habit: Habit): string {
  const low = readQuantity(input.limits[0], input.dimension, input.unit);
  const high = readQuantity(input.limits[1], input.dimension, input.unit);
  const given = input.default === '' ? undefined : readQuantity(input.default, input.dimension, input.unit);
  if (given?.ok) return showerFor(habit).quantity(given.quantity.low, input.unit, given.quantity.decimals);
  if (!low.ok || !high.ok) throw new Error(`Limits of ${input.name} cannot be read`);
  return showerFor(habit).quantity(
    (low.quantity.low + high.quantity.low) / 2,
    input.unit,
    low.quantity.decimals,
  );
}

/** Quantities in the units this reader wants to see. */
export function showerFor(habit: Habit): Shower {
  const place = (unitName: string, decimals: number) => {
    const metric = findUnit(unitName);
    if (!metric) throw new Error(`No unit is called ${unitName}`);
    const wanted = findUnit(habit[metric.dimension] ?? unitName) ?? metric;
    // A step no finer than the metric one, seen in the reader's unit.
    const step = (10 ** -decimals * metric.factor) / wanted.factor;
    return {
      unit: wanted,
      decimals: wanted === metric ? decimals : Math.max(0, Math.round(-Math.log10(step))),
    };
  };
  const written = (number: string, symbol: string) => (symbol === '' ? number : `${number}\u00a0${symbol}`);
  return {
    quantity(si, unitName, decimals) {
      const shown = place(unitName, decimals);
      return written(showNumber(fromSI(si, shown.unit), shown.decimals), shown.unit.symbol);
    },
    range(low, high, unitName, decimals) {
      const shown = place(unitName, decimals);
      const [a, b] = [low, high].map((si) => showNumber(fromSI(si, shown.unit), shown.decimals));
      return written(a === b ? `${a}` : `${a} to ${b}`, shown.unit.symbol);
    },
  };
}
