import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bestFound } from '../../src/diagnosis/best-policy.ts';
import { compile } from '../../src/diagnosis/compiled.ts';
import type { Action, Model } from '../../src/diagnosis/model.ts';
import { nextStep, splitOf } from '../../src/diagnosis/next-step.ts';
import {
  modelOf,
  models,
  NOTHING_KNOWN,
  situations,
  type WorkedInputs,
  workedModel,
  yesNo,
} from './make-model.ts';
import { published } from './published.ts';
import { THOROUGH_BUDGET } from './thorough-budget.ts';

const worked = workedModel(published.entry<WorkedInputs>('worked-5x4-posteriors').inputs);

function minutesByTest(model: Model): Record<string, number> {
  return Object.fromEntries(
    nextStep(compile(model), NOTHING_KNOWN).considered.flatMap(({ action, minutes }) =>
      action.kind === 'test' ? [[action.test, minutes] as const] : [],
    ),
  );
}

function nameOfAction(action: Action): string {
  return action.kind === 'test' ? action.test : action.kind === 'prove' ? action.cause : action.kind;
}

describe('published next steps', () => {
  test('worked-5x4-next-test, two steps ahead', () => {
    const { expected, tolerance } = published.entry<
      unknown,
      {
        twoStepTestFirst: Record<string, number>;
        oneStep: Record<string, number>;
        ecrNow: number;
        informationGain: Record<string, { bits: number }>;
      }
    >('worked-5x4-next-test');
    const minutes = minutesByTest(worked);
    for (const [id, wanted] of Object.entries(expected.twoStepTestFirst))
      expect(Math.abs((minutes[id] ?? 0) - wanted), id).toBeLessThanOrEqual(tolerance);
    const step = nextStep(compile(worked), NOTHING_KNOWN);
    expect(step.best.action).toEqual({ kind: 'test', test: 'T1' });
    expect(Math.abs(step.proofsOnly - expected.ecrNow)).toBeLessThanOrEqual(tolerance);
    // One step: with no other test to follow, two steps ahead is one.
    for (const [id, wanted] of Object.entries(expected.oneStep)) {
      const alone = { ...worked, tests: worked.tests.filter((one) => one.id === id) };
      expect(Math.abs((minutesByTest(alone)[id] ?? 0) - wanted), id).toBeLessThanOrEqual(tolerance);
    }
  });

  // Expected value of sample information: any textbook of decision analysis.
  test('worth-of-a-test', () => {
    const { inputs, expected, tolerance } = published.entry<
      { p: number[]; checkMinutes: number[]; passOnMinutes: number; test: { positive: number[] } },
      Record<string, number> & { posteriorPositive: number[]; posteriorNegative: number[] }
    >('worth-of-a-test');
    const model = (yes: number[]): Model =>
      modelOf(inputs.p, inputs.checkMinutes, inputs.passOnMinutes, [yesNo('t', 0, [...yes, 0.5])]);
    const compiled = compile(model(inputs.test.positive));
    const step = nextStep(compiled, NOTHING_KNOWN);
    const free = step.considered.find(({ action }) => action.kind === 'test');
    const near = (actual: number | undefined, wanted: number | undefined): void => {
      expect(Math.abs((actual ?? Number.NaN) - (wanted ?? Number.NaN))).toBeLessThanOrEqual(tolerance);
    };
    near(step.proofsOnly, expected.ecrNow);
    near(free?.minutes, expected.expectedEcrAfter);
    near(free?.saves, expected.breakEvenMinutes);
    near(nextStep(compile(model([1, 0])), NOTHING_KNOWN).best.saves, expected.perfectTestBreakEven);
    const split = splitOf(compiled, NOTHING_KNOWN, 't');
    const sharesOf = (at: number): number[] =>
      ['c1', 'c2'].map((id) => split?.outcomes[at]?.ranked.find((one) => one.cause === id)?.share ?? 0);
    sharesOf(0).forEach((share, at) => {
      near(share, expected.posteriorPositive[at]);
    });
    sharesOf(1).forEach((share, at) => {
      near(share, expected.posteriorNegative[at]);
    });
  });
});

describe('what is offered', () => {
  test('never an answered test, a missing tool, or a repeat of an answered one', () => {
    const cases = models({ causes: 4, tests: 5, groups: true, engines: true }).chain((model) =>
      fc.tuple(fc.constant(model), situations(model, 0.3), fc.subarray(model.tests.map((one) => one.id))),
    );
    fc.assert(
      fc.property(cases, ([model, situation, unavailable]) => {
        const step = nextStep(compile(model), { ...situation, unavailable });
        const answered = situation.evidence.map((finding) => finding.test);
        const groups = model.tests
          .filter((one) => answered.includes(one.id))
          .flatMap((one) => one.group ?? []);
        const offered = step.considered.flatMap(({ action }) =>
          action.kind === 'test' ? [action.test] : [],
        );
        const wanted = model.tests
          .filter((one) => !answered.includes(one.id) && !unavailable.includes(one.id))
          .filter((one) => one.group === undefined || !groups.includes(one.group))
          .map((one) => one.id);
        expect([...offered].sort()).toEqual([...wanted].sort());
        const proofs = step.considered.flatMap(({ action }) =>
          action.kind === 'prove' ? [action.cause] : [],
        );
        for (const cause of situation.ruledOut ?? []) expect(proofs).not.toContain(cause);
        expect(step.best.minutes).toBeLessThanOrEqual(step.proofsOnly + 1e-9);
        expect(step.considered.map((one) => one.minutes)).toEqual(
          step.considered.map((one) => one.minutes).sort((a, b) => a - b),
        );
      }),
    );
  });

  test('without the best test the walk finds another way', () => {
    const compiled = compile(worked);
    for (const missing of ['T1', 'T2', 'T3']) {
      const without = { evidence: [], unavailable: [missing] };
      const exact = bestFound(compiled, without, THOROUGH_BUDGET);
      expect(exact.kind).toBe('exact');
      expect(nextStep(compiled, without).best.action).toEqual(exact.first);
    }
    const none = nextStep(compiled, { evidence: [], unavailable: ['T1', 'T2', 'T3', 'T4'] });
    expect(none.best.action).toEqual({ kind: 'prove', cause: 'c1' });
    expect(none.best.minutes).toBeCloseTo(none.proofsOnly, 9);
  });

  test('with every cause ruled out it passes on', () => {
    const step = nextStep(compile(worked), { evidence: [], ruledOut: ['c1', 'c2', 'c3', 'c4'] });
    expect(step.best.action).toEqual({ kind: 'pass-on' });
    expect(step.best.minutes).toBe(90);
  });

  test('with findings no cause can show it passes on', () => {
    const model = modelOf([1, 1], [10, 10], 60, [yesNo('t', 5, [1, 0, 0])], 0.06);
    const step = nextStep(compile(model), { evidence: [{ test: 't', outcome: 'yes' }], ruledOut: ['c1'] });
    expect(step.best).toMatchObject({ action: { kind: 'pass-on' }, minutes: 60 });
  });

  test('a cold test comes first on a cold car and waits on a warm one', () => {
    const model: Model = {
      ...modelOf([1, 1, 1], [30, 30, 30], 200, [
        { ...yesNo('soak', 5, [0.98, 0.02, 0.02, 0.5]), engine: 'cold' },
        { ...yesNo('cruise', 5, [0.02, 0.98, 0.02, 0.5]), engine: 'warm' },
      ]),
      changeOver: { coldToWarm: 15, warmToCold: 90, toRoad: 0, toLift: 0 },
    };
    const cold = nextStep(compile(model), { evidence: [], engine: 'cold' });
    expect(nameOfAction(cold.best.action)).toBe('soak');
    const warm = nextStep(compile(model), { evidence: [], engine: 'warm' });
    expect(nameOfAction(warm.best.action)).toBe('cruise');
    expect(warm.considered.find(({ action }) => nameOfAction(action) === 'soak')).toMatchObject({
      own: 95,
      gettingReady: 90,
    });
  });

  test('a drive is paid once while the car stays out, and leaves the engine warm', () => {
    const model: Model = {
      ...modelOf([1, 1], [30, 30], 200, [
        { ...yesNo('cruise', 10, [0.98, 0.02, 0.5]), place: 'road' },
        { ...yesNo('hill', 10, [0.02, 0.98, 0.5]), place: 'road', engine: 'warm' },
      ]),
      changeOver: { coldToWarm: 15, warmToCold: 90, toRoad: 7, toLift: 3 },
    };
    const compiled = compile(model);
    const own = (situation: Parameters<typeof nextStep>[1], id: string): number | undefined =>
      nextStep(compiled, situation).considered.find(({ action }) => nameOfAction(action) === id)?.own;
    expect(own({ evidence: [] }, 'cruise')).toBe(17);
    expect(own({ evidence: [] }, 'hill')).toBe(32);
    expect(own({ evidence: [], engine: 'warm', place: 'road' }, 'hill')).toBe(10);
    expect(own({ evidence: [], engine: 'warm', place: 'lift' }, 'hill')).toBe(17);
  });
});

describe('what a test splits', () => {
  test('names the two likely causes it tells apart best, likelier first', () => {
    expect(splitOf(compile(worked), NOTHING_KNOWN, 'T1')?.separates).toEqual(['c1', 'c3']);
    expect(splitOf(compile(worked), NOTHING_KNOWN, 'T4')?.separates).toEqual(['c1', 'c2']);
  });

  test('names none when all columns are alike, and nothing for an unknown test', () => {
    const flat = modelOf([1, 1], [10, 10], 60, [yesNo('t', 5, [0.5, 0.5, 0.5])]);
    expect(splitOf(compile(flat), NOTHING_KNOWN, 't')?.separates).toBeUndefined();
    expect(splitOf(compile(flat), NOTHING_KNOWN, 'other')).toBeUndefined();
  });

  test('chances of the outcomes sum to 1', () => {
    const chances = splitOf(compile(worked), NOTHING_KNOWN, 'T2')?.outcomes.map((one) => one.chance) ?? [];
    expect(chances).toHaveLength(3);
    expect(chances.reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 12);
  });
});
