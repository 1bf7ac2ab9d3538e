import { minutesOf, named, statesAfter } from './actions.ts';
import { item, real } from './arrays.ts';
import type { Budget } from './budget.ts';
import type { CompiledModel } from './compiled.ts';
import { ExactSearch } from './exact-search.ts';
import { knownCauseCost, Lookahead, leastProofs } from './lookahead.ts';
import type { Action, Situation } from './model.ts';
import { ProofCoster } from './proof-order.ts';
import { resolve, type State, stateOf, sumOf } from './state.ts';

/** The best plan found for a situation. */
export interface BestFound {
  /** Expected minutes to a proven cause. */
  minutes: number;
  /** `exact`: no plan is quicker. `policy`: the two-step policy carried through; a quicker plan may exist. */
  kind: 'exact' | 'policy';
  first: Action;
  /** States searched, or states in which the policy looked ahead. */
  states: number;
  /** Chance that the policy came to a state beyond its budget and went on by proofs alone; 0 when exact. */
  cut: number;
}

/** Coarse readings multiply: beyond this many bits of answers and causes the exact search is not begun. */
const MOST_BITS = 24;

/** Sums in another order differ in the last digits: a limit is only taken as passed beyond them. */
const ROUNDED_UP = 1 + 1e-9;

/**
 * The best plan found: exact where the states fit the budget, otherwise the two-step policy carried through
 * every answer. Never above proofs alone, never below the optimum.
 */
export function bestFound(compiled: CompiledModel, situation: Situation, budget: Budget): BestFound {
  const state = stateOf(compiled, resolve(compiled, situation));
  const sum = sumOf(state.weights);
  if (sum === 0)
    return { minutes: compiled.passOn, kind: 'exact', first: { kind: 'pass-on' }, states: 0, cut: 0 };
  return exact(compiled, state, sum, budget) ?? policy(compiled, state, sum, budget);
}

/**
 * What bestFound finds, if it takes fewer than `limit` minutes; undefined if it does not. Quicker than bestFound where it
 * does not, since the policy is left as soon as it cannot come under the limit any more.
 */
export function bestUnder(
  compiled: CompiledModel,
  situation: Situation,
  budget: Budget,
  limit: number,
): BestFound | undefined {
  const state = stateOf(compiled, resolve(compiled, situation));
  const sum = sumOf(state.weights);
  if (sum === 0) return undefined;
  const found =
    exact(compiled, state, sum, budget) ?? policy(compiled, state, sum, budget, limit * sum * ROUNDED_UP);
  return found !== undefined && found.minutes < limit ? found : undefined;
}

function exact(compiled: CompiledModel, state: State, sum: number, budget: Budget): BestFound | undefined {
  if (bitsOf(compiled, state) > MOST_BITS) return undefined;
  const search = new ExactSearch(compiled, budget.exactStates);
  const [best] = search.byFirstAction(state) ?? [];
  if (best === undefined) return undefined;
  return {
    minutes: best.cost / sum,
    kind: 'exact',
    first: named(compiled, best.action),
    states: search.states,
    cut: 0,
  };
}

/** Binary digits of the number of states, upper estimate: each cause in or out, each coarse test asked or not. */
function bitsOf(compiled: CompiledModel, state: State): number {
  let bits = state.weights.filter((weight) => weight > 0).length;
  for (const number of state.open) {
    const test = item(compiled.tests, number);
    if (!test.crisp) bits += Math.log2(test.outcomes.length + 1);
  }
  return bits;
}

function policy(compiled: CompiledModel, root: State, sum: number, budget: Budget): BestFound;
/** @param limit minutes × sum; undefined comes back as soon as the policy cannot stay under it */
function policy(
  compiled: CompiledModel,
  root: State,
  sum: number,
  budget: Budget,
  limit: number,
): BestFound | undefined;
function policy(
  compiled: CompiledModel,
  root: State,
  sum: number,
  budget: Budget,
  limit = Number.POSITIVE_INFINITY,
): BestFound | undefined {
  const lookahead = new Lookahead(compiled);
  const coster = new ProofCoster(compiled);
  const leastProof = leastProofs(compiled);
  const proofsOnly = (state: State): number => coster.cost(state.weights, sumOf(state.weights), state.car);
  const knownCause = (state: State): number => knownCauseCost(leastProof, state.weights);
  const without = proofsOnly(root);
  const waiting: State[] = [root];
  let first: Action = { kind: 'pass-on' };
  let cost = 0;
  /** What the waiting states cost at the least: as if each car's cause were known from here on. */
  let stillAtLeast = knownCause(root);
  let states = 0;
  while (waiting.length > 0 && states < budget.policyStates) {
    if (Math.min(without, cost + stillAtLeast) >= limit) return undefined;
    const state = takeLikeliest(waiting);
    stillAtLeast -= knownCause(state);
    if (state !== root && !aTestCanPay(compiled, state, coster, leastProof)) {
      cost += proofsOnly(state);
      continue;
    }
    states++;
    const { action } = lookahead.best(state);
    if (state === root) first = named(compiled, action);
    cost += sumOf(state.weights) * minutesOf(compiled, action, state.car);
    for (const next of statesAfter(compiled, state, action)) {
      stillAtLeast += knownCause(next);
      waiting.push(next);
    }
  }
  let left = 0;
  for (const state of waiting) {
    cost += proofsOnly(state);
    left += sumOf(state.weights);
  }
  if (without < cost) {
    const [cause] = coster.sequence(root.weights, sum, root.car);
    first = named(compiled, cause === undefined ? { kind: 'pass-on' } : { kind: 'prove', cause });
  }
  return { minutes: Math.min(cost, without) / sum, kind: 'policy', first, states, cut: left / sum };
}

function takeLikeliest(waiting: State[]): State {
  let likeliest = 0;
  let most = -1;
  waiting.forEach((state, at) => {
    const chance = sumOf(state.weights);
    if (chance > most) {
      most = chance;
      likeliest = at;
    }
  });
  const state = item(waiting, likeliest);
  waiting.splice(likeliest, 1);
  return state;
}

/**
 * Whether a test could still save its own minutes, now or between the proofs to come, if it told the cause
 * outright. Where none can, looking ahead would only repeat what proofs alone cost.
 */
function aTestCanPay(
  compiled: CompiledModel,
  from: State,
  coster: ProofCoster,
  leastProof: Float64Array,
): boolean {
  let state: State | undefined = from;
  for (const cause of [...coster.sequence(from.weights, sumOf(from.weights), from.car), undefined]) {
    if (state === undefined) return false;
    const { weights, car, open }: State = state;
    const sum = sumOf(weights);
    const known = knownCauseCost(leastProof, weights);
    const gain = coster.cost(weights, sum, car) - known;
    if (open.some((test) => sum * real(item(compiled.tests, test).minutes, car) < gain)) return true;
    if (cause !== undefined) [state] = statesAfter(compiled, state, { kind: 'prove', cause });
  }
  return false;
}
