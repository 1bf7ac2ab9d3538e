import { actionsOf, minutesOf, type NumberedAction, statesAfter } from './actions.ts';
import { item, real } from './arrays.ts';
import type { Budget } from './budget.ts';
import type { CompiledModel } from './compiled.ts';
import { informationBound } from './information.ts';
import { knownCauseCost } from './lookahead.ts';
import type { Situation } from './model.ts';
import { RelaxedSearch } from './relaxed-search.ts';
import { resolve, type State, stateOf, sumOf } from './state.ts';

/** Minutes no plan can beat. */
export interface LowerBound {
  /** The larger of the two below. Their sum would be no bound: a failed proof informs as well. */
  minutes: number;
  classRevealing: number;
  information: number;
  /** False when the budget ran out and known-cause minutes stood in somewhere: still a bound, but a looser one. */
  complete: boolean;
}

/** Real steps before tests are taken as revealing. */
const REAL_STEPS = 2;

/** Lower bound on the expected minutes of every plan for a situation. */
export function lowerBound(compiled: CompiledModel, situation: Situation, budget: Budget): LowerBound {
  const state = stateOf(compiled, resolve(compiled, situation));
  const sum = sumOf(state.weights);
  if (sum === 0)
    return { minutes: compiled.passOn, classRevealing: compiled.passOn, information: 0, complete: true };
  const relaxed = new RelaxedSearch(compiled, budget.boundStates);
  const classRevealing = boundAfter(compiled, relaxed, state, REAL_STEPS) / sum;
  const information = informationBound(compiled, state);
  return {
    minutes: Math.max(classRevealing, information),
    classRevealing,
    information,
    complete: !relaxed.ranOut,
  };
}

/**
 * Bound × sum of the weights with the first steps real and the tests after them revealing their class.
 * More steps never give less.
 */
export function boundAfter(
  compiled: CompiledModel,
  relaxed: RelaxedSearch,
  state: State,
  steps: number,
): number {
  const loose = relaxed.value(state);
  return steps === 0 ? loose : Math.max(loose, tightened(compiled, relaxed, state, steps));
}

/** The cheapest first action, each costed with a bound on what follows it. */
function tightened(compiled: CompiledModel, relaxed: RelaxedSearch, state: State, steps: number): number {
  let best = Number.POSITIVE_INFINITY;
  for (const { action, floor } of byFloor(compiled, relaxed, state)) {
    if (floor >= best) break;
    const after = statesAfter(compiled, state, action);
    const loose = after.map((next) => relaxed.value(next));
    let bound = sumOf(state.weights) * minutesOf(compiled, action, state.car);
    for (const value of loose) bound += value;
    if (steps > 1)
      for (const [at, next] of after.entries()) {
        if (bound >= best || relaxed.ranOut) break;
        bound += Math.max(0, tightened(compiled, relaxed, next, steps - 1) - item(loose, at));
      }
    best = Math.min(best, bound);
  }
  return best;
}

/** The actions with what each costs at least, someone knowing the cause right after it; cheapest first. */
function byFloor(
  compiled: CompiledModel,
  { leastProof }: RelaxedSearch,
  { weights, car, open }: State,
): { action: NumberedAction; floor: number }[] {
  const sum = sumOf(weights);
  const known = knownCauseCost(leastProof, weights);
  const left = (action: NumberedAction): number => {
    if (action.kind === 'pass-on') return 0;
    return action.kind === 'test'
      ? known
      : known - real(weights, action.cause) * real(leastProof, action.cause);
  };
  return actionsOf(compiled, { weights, car, open })
    .map((action) => ({ action, floor: sum * minutesOf(compiled, action, car) + left(action) }))
    .sort((a, b) => a.floor - b.floor);
}
