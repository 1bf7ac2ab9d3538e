/** What a master says to a job, and what the calculator says: both verdict and words. The tables stand in jobs/. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CALCULATORS, calculatorOf } from '../../src/calculators/catalogue.ts';
import type { Calculator } from '../../src/calculators/declaration.ts';
import {
  type CalculatorResult,
  type TypedValues,
  withoutExamples,
  workOut,
} from '../../src/calculators/work-out.ts';
import type { CalculatorId } from '../../src/model/calculator-ids.ts';
import { readQuantity } from '../../src/model/quantity.ts';
import { findUnit, fromSI } from '../../src/model/units.ts';
import { soundFields } from './ask.ts';
import { JOBS } from './jobs/all.ts';

/** As the page works it out: a reading that is not typed was not taken. */
function ask(calculator: Calculator, typed: TypedValues): CalculatorResult {
  const person = new Set(Object.keys(typed));
  return workOut(calculator, withoutExamples(calculator, typed, { person, vehicle: new Set() }));
}

const verdictOf = (outcome: CalculatorResult) => (outcome.ok ? outcome.answer.tone : 'asks');

/** The sentence with the figures under it, or the messages. */
function wordsOf(outcome: CalculatorResult): string {
  const words = outcome.ok
    ? [
        outcome.answer.sentence,
        ...outcome.answer.figures.map(({ label, value, note = '' }) => `${label} ${value} ${note}`),
      ].join('\n')
    : outcome.faults.map(({ message }) => message).join('\n');
  return words.replaceAll('\u00a0', ' ');
}

describe.each(CALCULATORS.map(({ id }) => id))('%s', (id) => {
  const calculator = calculatorOf(id);

  test.each(JOBS[id].map((job) => [job.job, job] as const))('%s', (_, { typed, master, says, never }) => {
    const outcome = ask(calculator, typed);
    expect(`${verdictOf(outcome)}: ${wordsOf(outcome)}`).toMatch(new RegExp(`^${master}: `));
    if (says) expect(wordsOf(outcome)).toMatch(says);
    if (never) expect(wordsOf(outcome)).not.toMatch(never);
  });

  test('has twenty jobs and more, near half of them close to a limit', () => {
    expect(JOBS[id].length).toBeGreaterThanOrEqual(20);
    expect(JOBS[id].filter(({ near }) => near).length).toBeGreaterThanOrEqual(0.33 * JOBS[id].length);
  });
});

/**
 * By how much a reading may be out, as the calculators state it or the trade reckons: two thermometers, a jug, a tester read
 * to 0.02 bar, a wrench of ISO 6789 (4 %), the second digit of a volt. A share where it is marked so.
 */
const ERRORS: Partial<Record<CalculatorId, Readonly<Record<string, { by: number; share?: true }>>>> = {
  mixture: { freezes: { by: 1 }, strength: { by: 0.02 } },
  'fill-account': { drained: { by: 0.1e-3 }, refilled: { by: 0.1e-3 }, short: { by: 0.1e-3 } },
  'boil-margin': { now: { by: 2 }, cap: { by: 5e3 } },
  'pressure-decay': {
    start: { by: 2e3 },
    end: { by: 2e3 },
    'start-temperature': { by: 0.5 },
    'end-temperature': { by: 0.5 },
  },
  'loss-rate': { topped: { by: 0.03e-3 }, down: { by: 3e-3 } },
  'vacuum-fill': { vacuum: { by: 2e3 }, after: { by: 2e3 }, drew: { by: 0.1e-3 } },
  compression: {
    one: { by: 0.02, share: true },
    two: { by: 0.02, share: true },
    three: { by: 0.02, share: true },
    four: { by: 0.02, share: true },
    'loss-one': { by: 0.02 },
    'loss-two': { by: 0.02 },
    'loss-three': { by: 0.02 },
    'loss-four': { by: 0.02 },
  },
  'sensor-volts': { volts: { by: 0.02 }, scan: { by: 1 }, thermometer: { by: 1 } },
  'fan-stage': { motor: { by: 0.02 }, supply: { by: 0.02 }, measured: { by: 0.05, share: true } },
  'cooling-time': { now: { by: 2 }, first: { by: 1 } },
  'coolant-order': { filling: { by: 0.1e-3 } },
  'bench-test': { stamp: { by: 1 } },
  'voltage-drop': { drop: { by: 0.02 }, 'fuse-drop': { by: 0.5e-3 }, current: { by: 0.05, share: true } },
  'radiator-air': { hot: { by: 1 }, cold: { by: 1 }, 'air-in': { by: 1 }, 'air-out': { by: 2 } },
  'belt-speed': {
    crank: { by: 0.005, share: true },
    pump: { by: 0.005, share: true },
    'crank-pulley': { by: 1e-3 },
    'pump-pulley': { by: 1e-3 },
  },
  'coolant-change': { 'stands-now': { by: 1e3 }, 'a-year': { by: 0.1, share: true } },
  torque: {
    torque: { by: 0.04, share: true },
    engagement: { by: 0.5e-3 },
    angle: { by: (5 * Math.PI) / 180 },
    second: { by: 0.04, share: true },
  },
};

/** The fields with one reading moved; undefined when nothing stands there. */
function moved(
  calculator: Calculator,
  typed: TypedValues,
  name: string,
  shift: { by: number; share?: true },
  way: 1 | -1,
): TypedValues | undefined {
  const input = calculator.inputs.find((each) => each.name === name);
  const text = typed[name] ?? input?.default ?? '';
  if (input?.kind !== 'quantity' || text === '') return undefined;
  const read = readQuantity(text, input.dimension, input.unit);
  const unit = findUnit(input.unit);
  if (!read.ok || !unit) return undefined;
  const si = read.quantity.low + way * (shift.share ? shift.by * read.quantity.low : shift.by);
  return { ...typed, [name]: `${fromSI(si, unit).toFixed(6)} ${unit.symbol}` };
}

/** A job with one field changed: where the readings hang together, fields drawn one by one are hardly ever a sound car. */
function aroundJobs(calculator: Calculator): fc.Arbitrary<TypedValues> {
  const names = calculator.inputs.map(({ name }) => name);
  return fc
    .tuple(fc.constantFrom(...JOBS[calculator.id]), fc.constantFrom(...names), soundFields(calculator))
    .map(([{ typed }, name, drawn]) => ({ ...typed, [name]: drawn[name] }));
}

describe.each(Object.entries(ERRORS))('%s, a reading moved by its error', (id, errors) => {
  const calculator = CALCULATORS.find((each) => each.id === id) ?? calculatorOf('mixture');

  const neverStops = (typed: TypedValues) => {
    const before = ask(calculator, typed);
    if (verdictOf(before) !== 'fine') return false;
    for (const [name, shift] of Object.entries(errors))
      for (const way of [1, -1] as const) {
        const other = moved(calculator, typed, name, shift, way);
        if (other === undefined) continue;
        const after = ask(calculator, other);
        expect(
          verdictOf(after),
          `${JSON.stringify(typed)} with ${name} ${other[name]}: ${wordsOf(after)}`,
        ).not.toBe('stop');
      }
    return true;
  };

  test('never turns fine into stop without “look again” between, in the jobs', () => {
    const tried = (JOBS[calculator.id] ?? []).filter(({ typed }) => neverStops(typed));
    expect(tried.length).toBeGreaterThan(0);
  });

  test('nor in anything that can be typed', () => {
    let fine = 0;
    fc.assert(
      fc.property(fc.oneof(soundFields(calculator), aroundJobs(calculator)), (typed) => {
        if (neverStops(typed)) fine += 1;
      }),
      { numRuns: 400 },
    );
    expect(fine).toBeGreaterThan(2);
  }, 60_000);
});
