import type { NumberedAction } from './actions.ts';
import { item, real, whole } from './arrays.ts';
import { CARS, type CarState, type CompiledModel } from './compiled.ts';
import { ProofCoster } from './proof-order.ts';
import { applyOutcome, openAfter, type State, sumOf } from './state.ts';

/** An action with the expected minutes × the sum of weights when it comes first. */
export interface ActionCost {
  action: NumberedAction;
  cost: number;
  /** How many real steps were looked ahead before costing the rest by proofs alone. */
  steps: 1 | 2;
}

/** How many tests and proofs get the second step. The best of the first step is always among them. */
export interface Width {
  tests: number;
  proofs: number;
}

const USUAL_WIDTH: Width = { tests: 10, proofs: 4 };

/**
 * Values actions by looking ahead two steps and costing what then remains by proofs alone.
 *
 * One step is blind to pairs of tests that only pay together (worked example `one-step-is-blind`).
 * Every value is the cost of a plan that can be carried out, so it is never below the optimum; and because a
 * second step is only taken where it is cheaper, never above proofs alone.
 */
export class Lookahead {
  private readonly compiled: CompiledModel;
  private readonly width: Width;
  private readonly coster: ProofCoster;
  private readonly near: Float64Array;
  private readonly far: Float64Array;
  private readonly leastProof: Float64Array;

  constructor(compiled: CompiledModel, width: Width = USUAL_WIDTH) {
    this.compiled = compiled;
    this.width = width;
    this.coster = new ProofCoster(compiled);
    this.near = new Float64Array(compiled.columns);
    this.far = new Float64Array(compiled.columns);
    this.leastProof = leastProofs(compiled);
  }

  /** Expected minutes × sum by proofs alone. */
  proofsOnly(weights: Float64Array, car: CarState): number {
    return this.coster.cost(weights, sumOf(weights), car);
  }

  /** All possible actions, cheapest first; those on the shortlist looked at two steps ahead. */
  value(state: State): ActionCost[] {
    return this.refined(state, false).sort(byCost);
  }

  /** The first of value(), in less time: the others are left as soon as they cannot be it. */
  best(state: State): ActionCost {
    return item(this.refined(state, true).sort(byCost), 0);
  }

  /** @param onlyBest an action may come back unfinished, with some cost not under that of another */
  private refined(state: State, onlyBest: boolean): ActionCost[] {
    const { weights, car, open } = state;
    const sum = sumOf(weights);
    const tests: ActionCost[] = open.map((test) => ({
      action: { kind: 'test', test },
      cost: this.afterTest(weights, sum, car, test, 0, Number.POSITIVE_INFINITY),
      steps: 1,
    }));
    const proofs = this.proofs(weights, sum, car);
    tests.sort(byCost);
    proofs.sort(byCost);
    // Promising tests first: a low value early lets most of the others be set aside unfinished.
    const promising: State = {
      ...state,
      open: tests.flatMap(({ action }) => (action.kind === 'test' ? action.test : [])),
    };
    const passOn: ActionCost = { action: { kind: 'pass-on' }, cost: sum * this.compiled.passOn, steps: 2 };
    let limit = onlyBest ? passOn.cost : Number.POSITIVE_INFINITY;
    const counted = (valued: ActionCost): ActionCost => {
      if (onlyBest) limit = Math.min(limit, valued.cost);
      return valued;
    };
    return [
      ...tests.map((valued, place) =>
        counted(place < this.width.tests ? this.testAhead(promising, sum, valued, limit) : valued),
      ),
      ...proofs.map((valued, place) =>
        counted(place < this.width.proofs ? this.proofAhead(promising, sum, valued) : valued),
      ),
      passOn,
    ];
  }

  /**
   * Expected minutes × sum when one test is done and the rest is left to proofs alone.
   * @param known cost for someone who knows the cause; stops early once the value cannot come under `limit`,
   *   and then returns something not under it
   */
  private afterTest(
    weights: Float64Array,
    sum: number,
    car: CarState,
    test: number,
    known: number,
    limit: number,
  ): number {
    const { minutes, after, rows } = item(this.compiled.tests, test);
    const then = whole(after, car);
    let cost = sum * real(minutes, car);
    let knownLeft = known;
    for (const row of rows) {
      if (cost + knownLeft >= limit) return cost + knownLeft;
      const likely = applyOutcome(weights, row, this.far);
      if (likely === 0) continue;
      cost += this.coster.cost(this.far, likely, then);
      knownLeft -= knownCauseCost(this.leastProof, this.far);
    }
    return cost;
  }

  /** The cheapest of proofs alone and any one further test before them. */
  private ahead(weights: Float64Array, sum: number, car: CarState, open: readonly number[]): number {
    if (sum === 0) return 0;
    let best = this.coster.cost(weights, sum, car);
    // Whoever knew the cause would still have to prove it: no test can bring the cost below that.
    const known = knownCauseCost(this.leastProof, weights);
    for (const test of open) best = Math.min(best, this.afterTest(weights, sum, car, test, known, best));
    return best;
  }

  /** @param limit left once the value cannot come under it, with something not under it */
  private testAhead(state: State, sum: number, valued: ActionCost, limit: number): ActionCost {
    if (valued.action.kind !== 'test') return valued;
    const { test } = valued.action;
    const { minutes, after, rows } = item(this.compiled.tests, test);
    const open = openAfter(this.compiled, state.open, test);
    const then = whole(after, state.car);
    let cost = sum * real(minutes, state.car);
    let knownLeft = knownCauseCost(this.leastProof, state.weights);
    for (const row of rows) {
      if (cost + knownLeft >= limit) return { action: valued.action, cost: cost + knownLeft, steps: 2 };
      const likely = applyOutcome(state.weights, row, this.near);
      knownLeft -= knownCauseCost(this.leastProof, this.near);
      cost += this.ahead(this.near, likely, then, open);
    }
    return { action: valued.action, cost, steps: 2 };
  }

  private proofs(weights: Float64Array, sum: number, car: CarState): ActionCost[] {
    const proofs: ActionCost[] = [];
    for (let cause = 0; cause < this.compiled.rest; cause++) {
      if (real(weights, cause) === 0) continue;
      this.far.set(weights);
      this.far[cause] = 0;
      const entry = cause * CARS + car;
      const cost =
        sum * real(this.compiled.proof, entry) +
        this.coster.cost(this.far, sumOf(this.far), whole(this.compiled.afterProof, entry));
      proofs.push({ action: { kind: 'prove', cause }, cost, steps: 1 });
    }
    return proofs;
  }

  private proofAhead(state: State, sum: number, valued: ActionCost): ActionCost {
    if (valued.action.kind !== 'prove') return valued;
    const { cause } = valued.action;
    this.near.set(state.weights);
    this.near[cause] = 0;
    const entry = cause * CARS + state.car;
    const cost =
      sum * real(this.compiled.proof, entry) +
      this.ahead(this.near, sumOf(this.near), whole(this.compiled.afterProof, entry), state.open);
    return { action: valued.action, cost, steps: 2 };
  }
}

/** Least minutes by which each column can be settled: its bare proof, or passing on. */
export function leastProofs(compiled: CompiledModel): Float64Array {
  const least = new Float64Array(compiled.columns).fill(compiled.passOn);
  for (let cause = 0; cause < compiled.rest; cause++)
    least[cause] = Math.min(compiled.passOn, real(compiled.bareProof, cause));
  return least;
}

/** Minutes × sum for someone who knows the cause from the start: under every plan. */
export function knownCauseCost(leastProof: Float64Array, weights: Float64Array): number {
  let cost = 0;
  for (let column = 0; column < weights.length; column++)
    cost += real(weights, column) * real(leastProof, column);
  return cost;
}

function byCost(a: ActionCost, b: ActionCost): number {
  return a.cost - b.cost;
}
