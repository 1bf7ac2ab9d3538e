import { minutesOf, type NumberedAction, named } from './actions.ts';
import { item, real } from './arrays.ts';
import { believe, planningWeights } from './belief.ts';
import type { CompiledModel } from './compiled.ts';
import { type ActionCost, Lookahead } from './lookahead.ts';
import type { Action, Situation } from './model.ts';
import { type CauseShare, nameOf, rank } from './posterior.ts';
import { resolve, type State, stateOf, sumOf } from './state.ts';

/** An action with what it comes to when it is done first. */
export interface RatedAction {
  action: Action;
  /** Expected minutes to a proven cause, this act included. */
  minutes: number;
  /** Minutes of the act alone, getting ready included. */
  own: number;
  /** Minutes of warming up, cooling down, road or lift within `own`. */
  gettingReady: number;
  /** Expected minutes saved against proving causes without another test; below 0 when it does not pay. */
  saves: number;
  /** Steps looked ahead before the rest is costed by proofs alone. */
  steps: 1 | 2;
}

export interface NextStep {
  best: RatedAction;
  /** Everything that can be done now, quickest first, `best` included. */
  considered: RatedAction[];
  /** Expected minutes when no more tests are done. */
  proofsOnly: number;
  /** Causes with their shares now, most likely first. */
  ranked: CauseShare[];
}

/**
 * What to do next: the action with the least expected minutes to a proven cause, two steps ahead.
 *
 * Tests already answered, unavailable, or repeating an answered one are not offered. When no cause can show
 * the findings, the only thing left is passing on.
 */
export function nextStep(compiled: CompiledModel, situation: Situation): NextStep {
  const resolved = resolve(compiled, situation);
  const { ranked, weights } = believe(compiled, resolved);
  const state: State = {
    ...stateOf(compiled, resolved),
    weights: planningWeights(compiled, resolved, weights),
  };
  const sum = sumOf(state.weights);
  const lookahead = new Lookahead(compiled);
  const valued: ActionCost[] =
    sum > 0 ? lookahead.value(state) : [{ action: { kind: 'pass-on' }, cost: compiled.passOn, steps: 2 }];
  const scale = sum > 0 ? sum : 1;
  const proofsOnly = sum > 0 ? lookahead.proofsOnly(state.weights, state.car) / sum : compiled.passOn;
  const considered = valued.map(({ action, cost, steps }): RatedAction => {
    const own = minutesOf(compiled, action, state.car);
    return {
      action: named(compiled, action),
      minutes: cost / scale,
      own,
      gettingReady: own - bareMinutes(compiled, action),
      saves: proofsOnly - cost / scale,
      steps,
    };
  });
  return { best: item(considered, 0), considered, proofsOnly, ranked };
}

function bareMinutes(compiled: CompiledModel, action: NumberedAction): number {
  switch (action.kind) {
    case 'test':
      return item(compiled.model.tests, action.test).minutes;
    case 'prove':
      return real(compiled.bareProof, action.cause);
    case 'pass-on':
      return compiled.passOn;
  }
}

/** One outcome of a test as things stand. */
export interface ExpectedOutcome {
  outcome: string;
  chance: number;
  /** Causes with their shares if this is seen, most likely first. */
  ranked: CauseShare[];
}

/** What a test would do to what is known. */
export interface Split {
  test: string;
  outcomes: ExpectedOutcome[];
  /** The two causes it tells apart best, likelier first; undefined when it tells none apart. */
  separates?: [string, string];
}

/** What a test would tell in a situation: how likely each outcome, what each leaves, which causes it tells apart. */
export function splitOf(compiled: CompiledModel, situation: Situation, test: string): Split | undefined {
  const number = compiled.testNumber.get(test);
  if (number === undefined) return undefined;
  const state = stateOf(compiled, resolve(compiled, situation));
  const sum = sumOf(state.weights);
  const { outcomes, rows } = item(compiled.tests, number);
  const split: Split = {
    test,
    outcomes: outcomes.map((outcome, at) => {
      const weights = state.weights.map((weight, column) => weight * real(item(rows, at), column));
      return {
        outcome,
        chance: sum > 0 ? sumOf(weights) / sum : 0,
        ranked: rank(compiled, weights),
      };
    }),
  };
  const pair = bestSeparated(compiled, state, rows);
  return pair === undefined ? split : { ...split, separates: pair };
}

/**
 * The pair of causes with the largest chance of being in question and told apart: product of their weights ×
 * share of cars on which their outcomes differ (total variation distance). Something else has no reading of its own.
 */
function bestSeparated(
  compiled: CompiledModel,
  state: State,
  rows: readonly Float64Array[],
): [string, string] | undefined {
  let most = 0;
  let pair: [number, number] | undefined;
  for (let one = 0; one < compiled.rest; one++)
    for (let other = one + 1; other < compiled.rest; other++) {
      let apart = 0;
      for (const row of rows) apart += Math.abs(real(row, one) - real(row, other)) / 2;
      const worth = real(state.weights, one) * real(state.weights, other) * apart;
      if (worth <= most) continue;
      most = worth;
      pair = real(state.weights, one) >= real(state.weights, other) ? [one, other] : [other, one];
    }
  return pair && [nameOf(compiled, pair[0]), nameOf(compiled, pair[1])];
}
