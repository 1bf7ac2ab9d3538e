/** Asks a calculator as a reader does: by what stands in its fields. */
import fc from 'fast-check';
import type { Answer, Calculator, Input } from '../../src/calculators/declaration.ts';
import {
  type CalculatorResult,
  type FieldFault,
  type TypedValues,
  workOut,
} from '../../src/calculators/work-out.ts';
import type { Habit } from '../../src/model/habit.ts';
import { readQuantity } from '../../src/model/quantity.ts';
import { findUnit, fromSI } from '../../src/model/units.ts';

/** No-break spaces as plain ones, so that what is expected can be typed. */
function plain<T>(said: T): T {
  return JSON.parse(JSON.stringify(said).replaceAll('\u00a0', ' '));
}

/** The answer. @throws Error with the messages when there is none */
export function answerOf(calculator: Calculator, typed: TypedValues, habit?: Habit): Answer {
  const outcome = workOut(calculator, typed, habit);
  if (outcome.ok) return plain(outcome.answer);
  throw new Error(outcome.faults.map(({ name, message }) => `${name}: ${message}`).join('; '));
}

/** The messages. @throws Error when there was an answer after all */
export function faultsOf(calculator: Calculator, typed: TypedValues, habit?: Habit): FieldFault[] {
  const outcome = workOut(calculator, typed, habit);
  if (!outcome.ok) return plain(outcome.faults);
  throw new Error(`Answered: ${outcome.answer.sentence}`);
}

/** A figure of an answer as a number, whatever its unit. @throws Error when there is no such line */
export function figureOf(answer: Answer, label: string): number {
  const found = answer.figures.find((figure) => figure.label === label);
  if (!found)
    throw new Error(`No line "${label}" in: ${answer.figures.map((each) => each.label).join(', ')}`);
  return Number.parseFloat(found.value.replace('−', '-'));
}

/** Every word an outcome would put on the page. */
export function textOf(outcome: CalculatorResult): string {
  if (!outcome.ok) return outcome.faults.map(({ message }) => message).join('\n');
  const { sentence, figures, notes, pictures } = outcome.answer;
  return [
    sentence,
    ...figures.flatMap(({ label, value, note = '' }) => [label, value, note]),
    ...notes,
    JSON.stringify(pictures ?? []),
  ].join('\n');
}

/** What a field may hold in good faith: any value between its limits with its unit, any choice, a good word. */
function soundText(input: Input): fc.Arbitrary<string> {
  if (input.kind === 'choice') return fc.constantFrom(...input.options.map(({ value }) => value));
  if (input.kind === 'word') return fc.constantFrom('', 'EUR', '2021-03-15', '2024-11-30');
  const unit = findUnit(input.unit);
  const [low, high] = input.limits.map((each) => {
    const read = readQuantity(each, input.dimension, input.unit);
    if (!read.ok || !unit) throw new Error(`${input.name}: ${each}`);
    return fromSI(read.quantity.low, unit);
  });
  // In even steps: doubles would crowd about zero. Small shares of the span too, where capacities and currents live.
  const between = fc
    .tuple(fc.integer({ min: 0, max: 1000 }), fc.constantFrom(1, 0.2, 0.03))
    .map(([step, part]) => (low ?? 0) + (step / 1000) * part * ((high ?? 0) - (low ?? 0)))
    .map((value) => `${value.toFixed(4)} ${input.unit}`.trim());
  return fc.oneof(between, fc.constantFrom(...input.limits), ...(input.optional ? [fc.constant('')] : []));
}

/** A whole filled-in calculator. */
export function soundFields(calculator: Calculator): fc.Arbitrary<Record<string, string>> {
  return fc.record(Object.fromEntries(calculator.inputs.map((input) => [input.name, soundText(input)])));
}

/** What a thumb, a paste or a keypad of another country may leave in a field. */
export const absurdText = fc.oneof(
  fc.string({ maxLength: 20 }),
  fc.string({ unit: 'binary', maxLength: 8 }),
  fc.constantFrom(
    '4,6',
    '1.400,5',
    '1e999',
    'NaN',
    'Infinity',
    '-0',
    '0x10',
    '007',
    '--5',
    '5 to 1',
    '5 to 10',
    '±3',
    '.',
    ',',
    '9'.repeat(400),
    '1 furlong',
    '15 psi',
    '195F',
    '4.6l',
    '100 %',
    'undefined',
    'null',
    '<b>5</b>',
    '٣',
    '５ bar',
    '½',
    '-40',
    '215',
  ),
);
