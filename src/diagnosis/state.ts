import { item, real } from './arrays.ts';
import { type CarState, type CompiledModel, carOf, rowOf } from './compiled.ts';
import type { Finding, Situation } from './model.ts';

/** A finding by the numbers of its test and outcome. */
export interface NumberedFinding {
  test: number;
  outcome: number;
}

/**
 * Where the search stands. Weights are prior × likelihoods, not normalised, so that expected minutes of the
 * branches of a test simply add up; their sum is the chance of having come this way.
 */
export interface State {
  weights: Float64Array;
  car: CarState;
  /** Numbers of the tests that may still be asked. */
  open: readonly number[];
}

/** A situation looked up in a model. */
export interface ResolvedSituation {
  findings: readonly NumberedFinding[];
  ruledOut: ReadonlySet<number>;
  unavailable: ReadonlySet<number>;
  /** What share of such cars can have each cause, and what the customer told of it, by its number; undefined where nothing is known. */
  fitted: Float64Array | undefined;
  car: CarState;
  /** Findings whose test or outcome this model does not have, for instance from an old address. */
  ignored: readonly Finding[];
}

/** Looks a situation up. A test answered twice counts with its last answer; what the model does not know is set aside. */
export function resolve(compiled: CompiledModel, situation: Situation): ResolvedSituation {
  const byTest = new Map<number, number>();
  const ignored: Finding[] = [];
  for (const finding of situation.evidence) {
    const test = compiled.testNumber.get(finding.test);
    const outcome = test === undefined ? -1 : item(compiled.tests, test).outcomes.indexOf(finding.outcome);
    if (test === undefined || outcome < 0) ignored.push(finding);
    else byTest.set(test, outcome);
  }
  return {
    findings: [...byTest].map(([test, outcome]) => ({ test, outcome })),
    ruledOut: numbersOf(situation.ruledOut, compiled.causeNumber),
    unavailable: numbersOf(situation.unavailable, compiled.testNumber),
    fitted: fittedOf(compiled, situation),
    car: carOf(situation.engine, situation.place),
    ignored,
  };
}

function fittedOf(compiled: CompiledModel, { fitted, told }: Situation): Float64Array | undefined {
  if (fitted === undefined && told === undefined) return undefined;
  const factors = new Float64Array(compiled.columns).fill(1);
  for (const [cause, factor] of [...Object.entries(fitted ?? {}), ...Object.entries(told ?? {})]) {
    const number = compiled.causeNumber.get(cause);
    if (number !== undefined) factors[number] = real(factors, number) * factor;
  }
  return factors;
}

function numbersOf(ids: readonly string[] = [], numbers: ReadonlyMap<string, number>): Set<number> {
  return new Set(ids.flatMap((id) => numbers.get(id) ?? []));
}

/**
 * Weights of all columns after the findings: prior × product of likelihoods, a ruled-out cause 0.
 *
 * Findings of one group repeat each other, so each counts with its log-likelihood divided by their number m:
 * the logarithmic opinion pool with equal weights (Genest and Zidek 1986, Statistical Science 1:114-135).
 */
export function weigh(
  compiled: CompiledModel,
  findings: readonly NumberedFinding[],
  ruledOut: ReadonlySet<number>,
  fitted?: Float64Array,
): Float64Array {
  const weights = fitted
    ? compiled.prior.map((weight, column) => weight * real(fitted, column))
    : Float64Array.from(compiled.prior);
  for (const cause of ruledOut) weights[cause] = 0;
  for (const finding of findings) {
    const exponent = 1 / repeatsOf(compiled, findings, finding);
    const row = rowOf(compiled, finding.test, finding.outcome);
    for (let column = 0; column < weights.length; column++) {
      const likelihood = real(row, column);
      weights[column] = real(weights, column) * (exponent === 1 ? likelihood : likelihood ** exponent);
    }
  }
  return weights;
}

/** How many of the findings say what this one says: those of its group, itself included. */
export function repeatsOf(
  compiled: CompiledModel,
  findings: readonly NumberedFinding[],
  finding: NumberedFinding,
): number {
  const group = item(compiled.tests, finding.test).group;
  if (group < 0) return 1;
  return findings.filter((other) => item(compiled.tests, other.test).group === group).length;
}

/**
 * Likelihoods of a test's outcomes after what was found. A test that repeats earlier ones says less: its likelihoods are
 * flattened to the power 1/m, m findings of its group, and scaled to sum to 1.
 */
export function likelihoodsAfter(
  compiled: CompiledModel,
  test: number,
  findings: readonly NumberedFinding[],
): readonly Float64Array[] {
  const { rows } = item(compiled.tests, test);
  const said = repeatsOf(compiled, [...findings, { test, outcome: 0 }], { test, outcome: 0 });
  if (said === 1) return rows;
  const flat = rows.map((row) => row.map((likelihood) => likelihood ** (1 / said)));
  const sums = new Float64Array(compiled.columns);
  for (const row of flat)
    row.forEach((value, column) => {
      sums[column] = real(sums, column) + value;
    });
  return flat.map((row) => row.map((value, column) => value / real(sums, column)));
}

/** The search state of a situation: one test of each group stays open, none of an answered group. */
export function stateOf(compiled: CompiledModel, situation: ResolvedSituation): State {
  const answered = new Set(situation.findings.map((finding) => finding.test));
  const answeredGroups = new Set(
    situation.findings.map((finding) => item(compiled.tests, finding.test).group),
  );
  answeredGroups.delete(-1);
  const open: number[] = [];
  compiled.tests.forEach((test, number) => {
    if (answered.has(number) || situation.unavailable.has(number) || answeredGroups.has(test.group)) return;
    if (!test.isRecheck) open.push(number);
  });
  const { findings, ruledOut, fitted } = situation;
  return { weights: weigh(compiled, findings, ruledOut, fitted), car: situation.car, open };
}

/** Sum of the weights of all causes. */
export function sumOf(weights: Float64Array): number {
  let sum = 0;
  for (let column = 0; column < weights.length; column++) sum += real(weights, column);
  return sum;
}

/** Writes weights × likelihood of one outcome into `into` and returns their sum. */
export function applyOutcome(weights: Float64Array, row: Float64Array, into: Float64Array): number {
  let sum = 0;
  for (let column = 0; column < weights.length; column++) {
    const value = real(weights, column) * real(row, column);
    into[column] = value;
    sum += value;
  }
  return sum;
}

/** The tests still open after one has been answered: itself and its group are gone. */
export function openAfter(compiled: CompiledModel, open: readonly number[], answered: number): number[] {
  const group = item(compiled.tests, answered).group;
  return open.filter(
    (test) => test !== answered && (group < 0 || item(compiled.tests, test).group !== group),
  );
}
