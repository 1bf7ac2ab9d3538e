import fc from 'fast-check';
import { type CompiledModel, compile } from '../../src/diagnosis/compiled.ts';
import type { Model, ModelCause, ModelTest, Situation } from '../../src/diagnosis/model.ts';
import { resolve, type State, stateOf } from '../../src/diagnosis/state.ts';
import { LIKELIHOOD_WORDS } from '../../src/diagnosis/words.ts';

export const FREE_CHANGE = { coldToWarm: 0, warmToCold: 0, toRoad: 0, toLift: 0 };
export const NOTHING_KNOWN: Situation = { evidence: [] };

/** A test as the published examples write it: yes and no, `yes` the likelihood under each column. */
export function yesNo(id: string, minutes: number, yes: number[]): ModelTest {
  return { id, minutes, outcomes: ['yes', 'no'], likelihood: [yes, yes.map((value) => 1 - value)] };
}

/** A model from shares instead of weights; causes c1, c2, … and tests as given. */
export function modelOf(
  shares: readonly number[],
  proofMinutes: readonly number[],
  passOnMinutes: number,
  tests: ModelTest[] = [],
  somethingElse = 0,
): Model {
  return {
    causes: shares.map((weight, at) => ({ id: `c${at + 1}`, weight, proveMinutes: proofMinutes[at] ?? 0 })),
    somethingElse,
    passOnMinutes,
    tests,
    changeOver: FREE_CHANGE,
  };
}

/** Shape of the two larger worked examples: the last weight is that of something else. */
export interface WorkedInputs {
  weights: number[];
  proofMinutes: (number | null)[];
  passOnMinutes: number;
  tests: { id: string; minutes: number; outcomes?: number[][]; yes?: number[] }[];
}

export function workedModel(inputs: WorkedInputs): Model {
  const total = inputs.weights.reduce((sum, weight) => sum + weight, 0);
  return modelOf(
    inputs.weights.slice(0, -1),
    inputs.proofMinutes.map((minutes) => minutes ?? 0),
    inputs.passOnMinutes,
    inputs.tests.map(({ id, minutes, outcomes, yes }) =>
      outcomes
        ? { id, minutes, outcomes: outcomes.map((_, at) => String(at)), likelihood: outcomes }
        : yesNo(id, minutes, yes ?? []),
    ),
    (inputs.weights.at(-1) ?? 0) / total,
  );
}

export function startOf(
  model: Model,
  situation: Situation = NOTHING_KNOWN,
): { compiled: CompiledModel; state: State } {
  const compiled = compile(model);
  return { compiled, state: stateOf(compiled, resolve(compiled, situation)) };
}

export interface ModelSize {
  causes: number;
  tests: number;
  engines?: boolean;
  groups?: boolean;
  crisp?: boolean;
}

const words = Object.values(LIKELIHOOD_WORDS);
const coarse = fc.constantFrom(...words.filter((value) => value > 0 && value < 1));
const engine = fc.option(fc.constantFrom('cold' as const, 'warm' as const), { nil: undefined });

/** Random models in the vocabulary of the words: up to so many causes and tests, two or three outcomes. */
export function models(size: ModelSize): fc.Arbitrary<Model> {
  return fc
    .record({
      causes: fc.integer({ min: 1, max: size.causes }),
      tests: fc.integer({ min: 0, max: size.tests }),
    })
    .chain(({ causes, tests }) =>
      fc.record({
        causes: fc.tuple(...Array.from({ length: causes }, (_, at) => randomCause(at, size))),
        tests: fc.tuple(...Array.from({ length: tests }, (_, at) => randomTest(at, causes + 1, size))),
        somethingElse: fc.constantFrom(0.03, 0.06, 0.2),
        passOnMinutes: fc.integer({ min: 20, max: 240 }),
        changeOver: fc.constant({ coldToWarm: 15, warmToCold: 90, toRoad: 5, toLift: 4 }),
      }),
    );
}

function randomCause(at: number, size: ModelSize): fc.Arbitrary<ModelCause> {
  return fc
    .record({
      weight: fc.constantFrom(27, 9, 3, 1, 1 / 3),
      proveMinutes: fc.integer({ min: 1, max: 60 }),
      proveEngine: size.engines ? engine : fc.constant(undefined),
    })
    .map(({ proveEngine, ...rest }) => ({ id: `c${at + 1}`, ...rest, ...(proveEngine && { proveEngine }) }));
}

function randomTest(at: number, columns: number, size: ModelSize): fc.Arbitrary<ModelTest> {
  const column = fc.tuple(fc.integer({ min: 0, max: 2 }), size.crisp ? fc.constant(1) : coarse);
  return fc
    .record({
      minutes: fc.integer({ min: 0, max: 25 }),
      outcomes: fc.integer({ min: 2, max: 3 }),
      columns: fc.array(column, { minLength: columns, maxLength: columns }),
      engine: size.engines ? engine : fc.constant(undefined),
      leaves: size.engines ? engine : fc.constant(undefined),
      place: size.engines
        ? fc.constantFrom(undefined, undefined, 'road' as const, 'lift' as const)
        : fc.constant(undefined),
      group: size.groups ? fc.constantFrom(undefined, 'g1', 'g2') : fc.constant(undefined),
    })
    .map(({ minutes, outcomes, columns: drawn, engine: needs, leaves, place, group }) => ({
      id: `t${at + 1}`,
      minutes,
      outcomes: Array.from({ length: outcomes }, (_, outcome) => `o${outcome}`),
      likelihood: Array.from({ length: outcomes }, (_, outcome) =>
        drawn.map(([peak, value]) => (peak % outcomes === outcome ? value : (1 - value) / (outcomes - 1))),
      ),
      ...(needs && { engine: needs }),
      ...(leaves && { leaves }),
      ...(place && { place }),
      ...(group && { group }),
    }));
}

/** Some answers to some of the tests of a model, as a situation. */
export function situations(model: Model, share = 0.5): fc.Arbitrary<Situation> {
  return fc
    .record({
      answers: fc.array(fc.tuple(fc.double({ min: 0, max: 0.999, noNaN: true }), fc.nat(2)), {
        minLength: model.tests.length,
        maxLength: model.tests.length,
      }),
      out: fc.array(fc.boolean(), { minLength: model.causes.length, maxLength: model.causes.length }),
    })
    .map(({ answers, out }) => ({
      evidence: model.tests.flatMap((one, at) => {
        const [draw, outcome] = answers[at] ?? [1, 0];
        const seen = one.outcomes[outcome % one.outcomes.length];
        return draw < share && seen !== undefined ? [{ test: one.id, outcome: seen }] : [];
      }),
      ruledOut: model.causes.filter((_, at) => out[at] && at % 3 === 0).map((cause) => cause.id),
    }));
}
