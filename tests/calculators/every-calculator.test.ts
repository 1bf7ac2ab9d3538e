/** What holds for every calculator, whatever it works out. */
import { readdirSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CALCULATORS, calculatorOf } from '../../src/calculators/catalogue.ts';
import type { Calculator } from '../../src/calculators/declaration.ts';
import { isAsked, workOut } from '../../src/calculators/work-out.ts';
import { CALCULATOR_IDS } from '../../src/model/calculator-ids.ts';
import { FIGURES } from '../../src/model/figures.ts';
import { METRIC, US } from '../../src/model/habit.ts';
import { readQuantity } from '../../src/model/quantity.ts';
import { findUnit } from '../../src/model/units.ts';
import { absurdText, answerOf, soundFields, textOf } from './ask.ts';

const UNCLEAN = /NaN|undefined|Infinity|\[object|null|\de[+-]?\d/;
/** Nothing on a page says that something is safe; "not safe" may be said. */
const CALLED_SAFE = /(?<!not )\bsafe(ly)?\b/i;

/** Numbers and units masked, so that the words can be compared across units. */
function wording(text: string): string {
  return text.replace(
    /[−\d.]+(?: to [−\d.]+)?(?:\u00a0(?:US qt|US gal\/min|fl oz(?:\/min)?|[^\s.,:;)]+))?/g,
    '#',
  );
}

describe('the catalogue', () => {
  test('holds a declaration for every id a record can ask for, and no other', () => {
    expect(CALCULATORS.map(({ id }) => id).toSorted()).toEqual([...CALCULATOR_IDS].toSorted());
    for (const id of CALCULATOR_IDS) expect(calculatorOf(id).id).toBe(id);
  });

  test.each(CALCULATOR_IDS)(
    '%s is the only thing its file exports, since its script is made of it',
    async (id) => {
      const file: Record<string, unknown> = await import(`../../src/calculators/${id}.ts`);
      expect(Object.values(file)).toEqual([calculatorOf(id)]);
    },
  );

  test('lies beside no declaration that nobody can reach', () => {
    const shared = [
      'catalogue',
      'coolant-inputs',
      'declaration',
      'loss-litres',
      'mixture-judge',
      'mixture-readings',
      'reader-units',
      'refuse',
      'say-out-of-range',
      'sensor-curve',
      'sensor-verdict',
      'torque-after',
      'torque-oil',
      'wire-gauge',
      'work-out',
    ];
    const files = readdirSync(new URL('../../src/calculators', import.meta.url)).map((name) =>
      name.replace(/\.ts$/, ''),
    );
    expect(files.toSorted()).toEqual([...CALCULATOR_IDS, ...shared].toSorted());
  });
});

describe.each(CALCULATORS.map((calculator) => [calculator.id, calculator] as const))(
  '%s',
  (_, calculator) => {
    test('is declared soundly: names once, defaults and limits readable, defaults inside their limits', () => {
      expect(new Set(calculator.inputs.map(({ name }) => name)).size).toBe(calculator.inputs.length);
      for (const input of calculator.inputs) {
        expect(input.name).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
        for (const [name, values] of Object.entries(input.when ?? {})) {
          const other = calculator.inputs.find((each) => each.name === name);
          expect(other?.kind).toBe('choice');
          if (other?.kind === 'choice')
            expect(other.options.map(({ value }) => value)).toEqual(expect.arrayContaining([...values]));
        }
        if (input.kind !== 'quantity') continue;
        expect(findUnit(input.unit)?.dimension).toBe(input.dimension);
        if (input.figure) expect(FIGURES[input.figure.path].dimension).toBe(input.dimension);
        for (const text of input.limits)
          expect(readQuantity(text, input.dimension, input.unit).ok).toBe(true);
        if (input.default === '') expect(input.optional).toBe(true);
      }
    });

    test('answers its own example in either system, with a picture or figures, a method and its error', () => {
      for (const habit of [METRIC, US]) {
        const answer = answerOf(calculator, {}, habit);
        expect(answer.sentence.length).toBeGreaterThan(10);
        expect(answer.figures.length).toBeGreaterThan(0);
      }
      const { formula, sources, valid, error } = calculator.method;
      for (const text of [formula, valid, error, ...sources]) expect(text.length).toBeGreaterThan(5);
    });

    test('asks for every input under some choice', () => {
      for (const input of calculator.inputs) {
        const choices = Object.fromEntries(
          Object.entries(input.when ?? {}).map(([name, values]) => [name, values[0]]),
        );
        expect(isAsked(input, calculator, choices)).toBe(true);
      }
    });

    test('answers or says why not, in clean words, for anything between its limits', () => {
      fc.assert(
        fc.property(soundFields(calculator), fc.constantFrom(METRIC, US), (typed, habit) => {
          const outcome = workOut(calculator, typed, habit);
          expect(textOf(outcome)).not.toMatch(UNCLEAN);
          expect(textOf(outcome)).not.toMatch(CALLED_SAFE);
          if (!outcome.ok)
            for (const { message } of outcome.faults) expect(message).toMatch(/^[A-Z0-9−"].*[.?]$/s);
        }),
        { numRuns: 400 },
      );
    });

    test('takes absurd text in any field without a throw, and says something clean', () => {
      const names = calculator.inputs.map(({ name }) => name);
      fc.assert(
        fc.property(soundFields(calculator), fc.constantFrom(...names), absurdText, (sound, name, absurd) => {
          const outcome = workOut(calculator, { ...sound, [name]: absurd }, US);
          const said = textOf(outcome).replaceAll(absurd.trim(), '');
          expect(said).not.toMatch(UNCLEAN);
          if (!outcome.ok) expect(outcome.faults.length).toBeGreaterThan(0);
        }),
        { numRuns: 400 },
      );
    });

    test('means the same to a reader of other units', () => {
      fc.assert(
        fc.property(soundFields(calculator), (typed) => {
          const [metric, other] = [workOut(calculator, typed, METRIC), workOut(calculator, typed, US)];
          expect(other.ok).toBe(metric.ok);
          if (metric.ok && other.ok) {
            expect(other.answer.tone).toBe(metric.answer.tone);
            expect(wording(other.answer.sentence)).toBe(wording(metric.answer.sentence));
          } else if (!metric.ok && !other.ok)
            expect(other.faults.map(({ name }) => name)).toEqual(metric.faults.map(({ name }) => name));
        }),
        { numRuns: 200 },
      );
    });
  },
);

describe('the list of inputs', () => {
  test('names a cause of doubt wherever a rule has no source', () => {
    const told = (calculator: Calculator) => calculator.method.sources.join(' ');
    for (const id of ['fill-account', 'voltage-drop', 'torque', 'heat-balance', 'bench-test'] as const)
      expect(told(calculatorOf(id))).toContain('common practice, no source');
  });
});
