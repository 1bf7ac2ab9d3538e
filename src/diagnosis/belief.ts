import { item, real } from './arrays.ts';
import type { CompiledModel } from './compiled.ts';
import type { Finding, Situation } from './model.ts';
import { type CauseShare, nameOf, rank } from './posterior.ts';
import { type NumberedFinding, type ResolvedSituation, resolve, sumOf, weigh } from './state.ts';

/**
 * A cause is proven from this share on, all that was answered counted; our own choice, no source. At 0.95 two walks in a hundred
 * called a wrong cause proven on some symptoms, at 0.98 fewer than one on every symptom, for a minute or two more.
 */
export const PROVEN_FROM = 0.98;

/** From this share on a recheck would change nothing, and is not asked; our own choice, no source. */
export const RECHECK_UNDER = 0.99;

/** Under this share a cause is "not this"; our own choice, no source. */
export const NOT_THIS_UNDER = 0.005;

/** What all answers together say of the causes. */
export interface Belief {
  /** All causes and something else, most likely first. Consequences that were found stand apart in `found`. */
  ranked: CauseShare[];
  /** Proven consequences, in the order of their shares: what made them is still looked for. */
  found: string[];
  /** The cause that is proven. */
  proven: string | undefined;
  /** The likeliest cause waits for this test before it can be called proven. */
  missingProof: { cause: string; test: string } | undefined;
  /** Share of every column, found consequences at 0. */
  weights: Float64Array;
}

/**
 * The one belief that the walk, its lists, its ends and the job card read.
 *
 * A cause is proven when its share reaches `PROVEN_FROM`, one of its proofs has come out for it, and its recheck, where it has
 * one, came out for it or could not change anything. A proven consequence is set aside, and the belief goes on to what made it.
 */
export function beliefOf(compiled: CompiledModel, situation: Situation): Belief {
  return believe(compiled, resolve(compiled, situation));
}

/** The same from a situation that is looked up already. */
export function believe(compiled: CompiledModel, situation: ResolvedSituation): Belief {
  const weights = weigh(compiled, situation.findings, situation.ruledOut, situation.fitted);
  const found: string[] = [];
  let proven: string | undefined;
  let missingProof: Belief['missingProof'];
  for (;;) {
    const sum = sumOf(weights);
    const top = likeliest(weights);
    const share = sum > 0 ? real(weights, top) / sum : 0;
    if (top === compiled.rest || share < PROVEN_FROM) break;
    const isSeen = isProofSeen(compiled, situation.findings, top);
    const next = nextProof(compiled, situation, top, share);
    if (next !== undefined) {
      missingProof = { cause: nameOf(compiled, top), test: item(compiled.tests, next).id };
      break;
    }
    if (!isSeen || isRecheckAgainst(compiled, situation.findings, top)) break;
    if (item(compiled.model.causes, top).consequence !== true) {
      proven = nameOf(compiled, top);
      break;
    }
    found.push(nameOf(compiled, top));
    weights[top] = 0;
  }
  return { ranked: rank(compiled, weights), found, proven, missingProof, weights };
}

/**
 * The next act that would prove a cause: its proof, or its recheck once a proof has come out for it.
 * @param share of the cause now, 0 to 1
 * @returns number of the test; undefined when nothing is left to do for it here
 */
export function nextProof(
  compiled: CompiledModel,
  situation: Pick<ResolvedSituation, 'findings' | 'unavailable'>,
  cause: number,
  share: number,
): number | undefined {
  const { proofs = [], recheck } = item(compiled.model.causes, cause);
  const isOpen = (test: number | undefined): test is number =>
    test !== undefined &&
    !situation.unavailable.has(test) &&
    !situation.findings.some((finding) => finding.test === test);
  const numberOf = (act: Finding | undefined) => act && compiled.testNumber.get(act.test);
  const ownRecheck = numberOf(recheck);
  if (isProofSeen(compiled, situation.findings, cause))
    return share < RECHECK_UNDER && isOpen(ownRecheck) ? ownRecheck : undefined;
  // One proof that came out otherwise is not asked again in another way; the recheck settles it.
  const isAnswered = proofs.some((proof) =>
    situation.findings.some((finding) => finding.test === numberOf(proof)),
  );
  const next = isAnswered ? undefined : proofs.map(numberOf).find(isOpen);
  return next ?? (isOpen(ownRecheck) ? ownRecheck : undefined);
}

/** Whether the recheck of a cause has come out otherwise: who has seen that is not told that the cause is proven. */
function isRecheckAgainst(
  compiled: CompiledModel,
  findings: readonly NumberedFinding[],
  cause: number,
): boolean {
  const { recheck } = item(compiled.model.causes, cause);
  if (recheck === undefined) return false;
  const number = compiled.testNumber.get(recheck.test);
  return findings.some(
    ({ test, outcome }) =>
      test === number && item(compiled.tests, test).outcomes[outcome] !== recheck.outcome,
  );
}

/** Whether one of the proofs of a cause, or its recheck, has come out for it. */
function isProofSeen(compiled: CompiledModel, findings: readonly NumberedFinding[], cause: number): boolean {
  const { proofs = [], recheck } = item(compiled.model.causes, cause);
  return [...proofs, ...(recheck ? [recheck] : [])].some((proof) =>
    findings.some(
      ({ test, outcome }) =>
        test === compiled.testNumber.get(proof.test) &&
        item(compiled.tests, test).outcomes[outcome] === proof.outcome,
    ),
  );
}

/**
 * Weights for planning: a cause that nothing left can prove here counts as something else, which only passing on settles.
 * A model whose causes name no proofs is one in which proving is always possible.
 */
export function planningWeights(
  compiled: CompiledModel,
  situation: Pick<ResolvedSituation, 'findings' | 'unavailable'>,
  weights: Float64Array,
): Float64Array {
  const planned = Float64Array.from(weights);
  const sum = sumOf(weights);
  for (let cause = 0; cause < compiled.rest; cause++) {
    const weight = real(weights, cause);
    const { proofs, recheck } = item(compiled.model.causes, cause);
    if (weight === 0 || (proofs === undefined && recheck === undefined)) continue;
    if (nextProof(compiled, situation, cause, weight / sum) !== undefined) continue;
    planned[compiled.rest] = real(planned, compiled.rest) + weight;
    planned[cause] = 0;
  }
  return planned;
}

function likeliest(weights: Float64Array): number {
  let best = 0;
  for (let column = 1; column < weights.length; column++)
    if (real(weights, column) > real(weights, best)) best = column;
  return best;
}
