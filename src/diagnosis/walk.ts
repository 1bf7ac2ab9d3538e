/**
 * Where a walk stands: the author's order first, the belief over it. A step asks a test; no step convicts or acquits.
 */
import { item, real } from './arrays.ts';
import { type Belief, believe, NOT_THIS_UNDER, nextProof, planningWeights } from './belief.ts';
import type { CompiledModel } from './compiled.ts';
import { ProofCoster } from './proof-order.ts';
import { type ResolvedSituation, sumOf } from './state.ts';
import type { Step } from './tree.ts';

/** A cause this likely is proven before the author's next question: what is left is seldom quicker. */
const PURSUED_FROM = 0.7;

/** A step of a walk on a vehicle that is not known in full. */
export type WalkStep =
  | Step
  /** Branch on the vehicle's layout: a way for each value. */
  | { kind: 'layout'; feature: string; on: Readonly<Record<string, string>> }
  /** Go on in the walk of another symptom. */
  | { kind: 'tree'; tree: string };

/** An authored tree as it is walked; steps and ends never share an id. */
export interface WalkTree {
  start: string;
  steps: Readonly<Record<string, WalkStep>>;
}

/** What the walk asks or says next. */
export type WalkPosition =
  /** A question: of the tree at `step`, or to prove `cause`. */
  | { kind: 'ask'; test: string; step?: string; cause?: string }
  | { kind: 'ask-layout'; step: string; feature: string }
  | { kind: 'proven'; cause: string }
  /** The tree goes on in the walk of another symptom. */
  | { kind: 'other-walk'; step: string; tree: string }
  /** Nothing left is worth its minutes: the causes by their shares, and the end of the tree that was reached. */
  | { kind: 'list' }
  /** The tree asks what cannot be tested here. */
  | { kind: 'off-tree'; step: string };

export interface WalkPlace {
  standing: WalkPosition;
  belief: Belief;
  /** The end that the tree has come to with these answers. */
  end: string | undefined;
  /** Steps of the tree that were passed, in order, the last one excluded. */
  passed: string[];
}

/**
 * Follows a tree with what was found.
 * @param layout what is known of the vehicle's layout, by feature
 * @throws RangeError when the tree names a step that is not there
 */
export function placeOf(
  compiled: CompiledModel,
  tree: WalkTree,
  situation: ResolvedSituation,
  layout: Readonly<Record<string, string | undefined>> = {},
): WalkPlace {
  const belief = believe(compiled, situation);
  const passed: string[] = [];
  const at = (standing: WalkPosition, end?: string): WalkPlace => ({ standing, belief, end, passed });
  if (belief.proven !== undefined) return at({ kind: 'proven', cause: belief.proven });
  if (belief.missingProof) return at({ kind: 'ask', ...belief.missingProof });
  const pursued = pursue(compiled, situation, belief);
  if (pursued) return at({ kind: 'ask', ...pursued });
  let id = tree.start;
  for (;;) {
    const step = Object.hasOwn(tree.steps, id) ? tree.steps[id] : undefined;
    if (step === undefined) throw new RangeError(`No step "${id}".`);
    if (step.kind === 'end') {
      const proof = worthProving(compiled, situation, belief);
      return at(proof ? { kind: 'ask', ...proof } : { kind: 'list' }, id);
    }
    if (step.kind === 'tree') return at({ kind: 'other-walk', step: id, tree: step.tree });
    const next = nextFrom(compiled, step, situation, belief, layout);
    if (next === undefined) return at(questionOf(compiled, id, step, situation));
    passed.push(id);
    id = next;
  }
}

/** Where a step leads with what is known; undefined when it waits for an answer. */
function nextFrom(
  compiled: CompiledModel,
  step: Exclude<WalkStep, { kind: 'end' | 'tree' }>,
  situation: ResolvedSituation,
  belief: Belief,
  layout: Readonly<Record<string, string | undefined>>,
): string | undefined {
  if (step.kind === 'layout') {
    const value = layout[step.feature];
    return value === undefined ? undefined : step.on[value];
  }
  const outcomeOf = (test: number) => situation.findings.find((finding) => finding.test === test)?.outcome;
  if (step.kind === 'test') {
    const test = compiled.testNumber.get(step.test);
    const outcome = test === undefined ? undefined : outcomeOf(test);
    if (test === undefined || outcome === undefined) return undefined;
    return step.on[item(item(compiled.tests, test).outcomes, outcome)];
  }
  const cause = compiled.causeNumber.get(step.cause);
  const test = cause === undefined ? undefined : firstProof(compiled, cause);
  if (cause === undefined || test === undefined || situation.unavailable.has(test)) return step.otherwise;
  const isSettled = outcomeOf(test) !== undefined || shareOf(belief.weights, cause) < NOT_THIS_UNDER;
  return isSettled ? step.otherwise : undefined;
}

function questionOf(
  compiled: CompiledModel,
  id: string,
  step: Exclude<WalkStep, { kind: 'end' | 'tree' }>,
  situation: ResolvedSituation,
): WalkPosition {
  if (step.kind === 'layout') return { kind: 'ask-layout', step: id, feature: step.feature };
  const cause = step.kind === 'prove' ? compiled.causeNumber.get(step.cause) : undefined;
  const test =
    step.kind === 'test'
      ? compiled.testNumber.get(step.test)
      : cause === undefined
        ? undefined
        : firstProof(compiled, cause);
  if (test === undefined || situation.unavailable.has(test)) return { kind: 'off-tree', step: id };
  return {
    kind: 'ask',
    test: item(compiled.tests, test).id,
    step: id,
    ...(step.kind === 'prove' && { cause: step.cause }),
  };
}

function shareOf(weights: Float64Array, cause: number): number {
  const sum = sumOf(weights);
  return sum > 0 ? real(weights, cause) / sum : 0;
}

/** The test that a step "prove this cause" asks: its proof, or its recheck where it has no other. */
export function firstProof(compiled: CompiledModel, cause: number): number | undefined {
  const { proofs = [], recheck } = item(compiled.model.causes, cause);
  const act = proofs[0] ?? recheck;
  return act && compiled.testNumber.get(act.test);
}

interface Proof {
  test: string;
  cause: string;
}

/** The proof of a cause that has become so likely that the author's order waits. */
function pursue(compiled: CompiledModel, situation: ResolvedSituation, belief: Belief): Proof | undefined {
  const [top] = belief.ranked;
  const cause = top && compiled.causeNumber.get(top.cause);
  if (top === undefined || cause === undefined || top.share < PURSUED_FROM) return undefined;
  const test = nextProof(compiled, situation, cause, top.share);
  return test === undefined ? undefined : { test: item(compiled.tests, test).id, cause: top.cause };
}

/** The proof that comes first in falling chance per minute, as long as passing the car on is not cheaper. */
function worthProving(
  compiled: CompiledModel,
  situation: ResolvedSituation,
  belief: Belief,
): Proof | undefined {
  const sum = sumOf(belief.weights);
  if (sum === 0) return undefined;
  const weights = planningWeights(compiled, situation, belief.weights);
  const [first] = new ProofCoster(compiled).sequence(weights, sum, situation.car);
  if (first === undefined) return undefined;
  const test = nextProof(compiled, situation, first, real(belief.weights, first) / sum);
  return test === undefined
    ? undefined
    : { test: item(compiled.tests, test).id, cause: item(compiled.model.causes, first).id };
}
