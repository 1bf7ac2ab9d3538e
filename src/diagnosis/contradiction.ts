import { item, real } from './arrays.ts';
import { type CompiledModel, rowOf } from './compiled.ts';
import type { Finding, Situation } from './model.ts';
import { nameOf } from './posterior.ts';
import { type NumberedFinding, repeatsOf, resolve, sumOf, weigh } from './state.ts';

/** Findings that no single cause explains well. */
export interface Contradiction {
  /** The best explanation among the causes, and still a poor one; undefined when no cause can show all findings. */
  best: string | undefined;
  /** How many times less likely these findings are under it than those of a typical car that has it. */
  times: number;
  /** The two findings that fight: the one the best cause explains worst, and the one that speaks for it. */
  pair: [Finding, Finding];
}

/** Findings this many times less likely than usual are "far worse"; one surprising reading in a long list is not. */
const FAR_WORSE = 20;

/** And beyond this many standard deviations of what such cars usually show. */
const FAR_OUT = 2.5;

/** Two findings fight when each speaks for its own cause by at least this factor. */
const SPEAKS_FOR = 5;

/**
 * Whether the findings fit together: the best cause must explain them about as well as it would a typical case.
 * When it does not, either a finding is wrong, or there are two faults, or it is none of the listed causes.
 *
 * Compares the log-likelihood of the findings under the most likely cause with its mean (the entropy of each
 * test's outcomes) and its spread under the same cause. Thresholds are our own choice, no source.
 * @returns undefined when nothing fights, or with fewer than two findings
 */
export function contradiction(compiled: CompiledModel, situation: Situation): Contradiction | undefined {
  const { findings, ruledOut, fitted } = resolve(compiled, situation);
  if (findings.length < 2) return undefined;
  const weights = weigh(compiled, findings, ruledOut, fitted);
  if (sumOf(weights) === 0) return impossible(compiled, findings, ruledOut);
  // Something else has no picture of its own that findings could fit badly.
  weights[compiled.rest] = 0;
  if (sumOf(weights) === 0) return undefined;
  const best = largest(weights);
  let excess = 0;
  let variance = 0;
  let worst = item(findings, 0);
  let worstExcess = Number.NEGATIVE_INFINITY;
  for (const finding of findings) {
    const share = 1 / repeatsOf(compiled, findings, finding);
    const { mean, spread } = usual(compiled, finding.test, best);
    const own = share * (-Math.log(real(rowOf(compiled, finding.test, finding.outcome), best)) - mean);
    excess += own;
    variance += share * share * spread;
    if (own > worstExcess) {
      worstExcess = own;
      worst = finding;
    }
  }
  if (excess < Math.log(FAR_WORSE) || excess < FAR_OUT * Math.sqrt(variance)) return undefined;
  const other = opponent(compiled, findings, ruledOut, worst, best);
  if (other === undefined) return undefined;
  return {
    best: nameOf(compiled, best),
    times: Math.exp(excess),
    pair: [byIds(compiled, worst), byIds(compiled, other)],
  };
}

/**
 * Every pair of findings that no single cause explains well, the worst first. A pair is judged by itself, so that it stays named
 * whatever else is found, until one of the two changes. Where no pair fights and all findings together do, those two that fight most.
 */
export function contradictions(compiled: CompiledModel, situation: Situation): Contradiction[] {
  const { evidence } = situation;
  const pairs = evidence.flatMap((one, at) =>
    evidence
      .slice(at + 1)
      .flatMap((other) => contradiction(compiled, { ...situation, evidence: [one, other] }) ?? []),
  );
  if (pairs.length > 0) return pairs.sort((a, b) => b.times - a.times);
  return [contradiction(compiled, situation)].flatMap((found) => found ?? []);
}

/** Mean and variance of minus the log-likelihood of a test's outcome on cars with this cause. */
function usual(compiled: CompiledModel, test: number, column: number): { mean: number; spread: number } {
  let mean = 0;
  let square = 0;
  for (const row of item(compiled.tests, test).rows) {
    const likelihood = real(row, column);
    if (likelihood === 0) continue;
    const surprise = -Math.log(likelihood);
    mean += likelihood * surprise;
    square += likelihood * surprise * surprise;
  }
  return { mean, spread: square - mean * mean };
}

/**
 * The finding that fights with `worst`: of those that favour the best cause over the cause `worst` points to,
 * the one that favours it most. Undefined when `worst` points nowhere else, being merely rare, or nothing
 * speaks clearly against where it points.
 */
function opponent(
  compiled: CompiledModel,
  findings: readonly NumberedFinding[],
  ruledOut: ReadonlySet<number>,
  worst: NumberedFinding,
  best: number,
): NumberedFinding | undefined {
  const alone = weigh(compiled, [worst], ruledOut);
  alone[best] = 0;
  const rival = largest(alone);
  const favour = (finding: NumberedFinding, one: number, other: number): number => {
    const row = rowOf(compiled, finding.test, finding.outcome);
    return Math.log(real(row, one) / real(row, other)) / repeatsOf(compiled, findings, finding);
  };
  if (!(favour(worst, rival, best) >= Math.log(SPEAKS_FOR))) return undefined;
  let found: NumberedFinding | undefined;
  let most = Math.log(SPEAKS_FOR);
  for (const finding of findings) {
    if (!(favour(finding, best, rival) >= most)) continue;
    most = favour(finding, best, rival);
    found = finding;
  }
  return found;
}

/** No cause can show everything: name the first two findings that no cause can show together, else the last two. */
function impossible(
  compiled: CompiledModel,
  findings: readonly NumberedFinding[],
  ruledOut: ReadonlySet<number>,
): Contradiction {
  for (const [at, one] of findings.entries())
    for (const other of findings.slice(at + 1))
      if (sumOf(weigh(compiled, [one, other], ruledOut)) === 0) return noneShows(compiled, one, other);
  return noneShows(compiled, item(findings, findings.length - 2), item(findings, findings.length - 1));
}

function noneShows(compiled: CompiledModel, one: NumberedFinding, other: NumberedFinding): Contradiction {
  return {
    best: undefined,
    times: Number.POSITIVE_INFINITY,
    pair: [byIds(compiled, one), byIds(compiled, other)],
  };
}

function byIds(compiled: CompiledModel, finding: NumberedFinding): Finding {
  const test = item(compiled.tests, finding.test);
  return { test: test.id, outcome: item(test.outcomes, finding.outcome) };
}

function largest(weights: Float64Array): number {
  let at = 0;
  weights.forEach((weight, column) => {
    if (weight > real(weights, at)) at = column;
  });
  return at;
}
