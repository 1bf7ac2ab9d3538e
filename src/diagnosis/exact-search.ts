import { actionsOf, minutesOf, type NumberedAction, statesAfter } from './actions.ts';
import { item, real, whole } from './arrays.ts';
import { CARS, type CompiledModel } from './compiled.ts';
import { knownCauseCost, leastProofs } from './lookahead.ts';
import { ProofCoster } from './proof-order.ts';
import { openAfter, type State, sumOf } from './state.ts';

/** Possible columns are kept as bits of one whole number. */
const MOST_COLUMNS = 30;

export interface ExactValue {
  action: NumberedAction;
  /** Expected minutes × sum of the weights. */
  cost: number;
}

/**
 * Least expected minutes over every plan, by memoised search with the actions set aside that cannot beat the
 * best found even if the cause were known.
 *
 * A state is told by its possible columns, the answers of the tests that say more than possible or not, and the
 * car; its key is a string (a product of primes or of floats overflows and mixes states up).
 */
export class ExactSearch {
  private readonly compiled: CompiledModel;
  private readonly mostStates: number;
  private readonly coster: ProofCoster;
  private readonly leastProof: Float64Array;
  private readonly values = new Map<string, number>();
  /** Tests whose answer, or whose having been done, is not fully told by the columns left and the car. */
  private readonly remembered: readonly boolean[];

  constructor(compiled: CompiledModel, mostStates: number) {
    this.compiled = compiled;
    this.mostStates = mostStates;
    this.coster = new ProofCoster(compiled);
    this.leastProof = leastProofs(compiled);
    this.remembered = compiled.tests.map((test) => !test.crisp || test.group >= 0 || test.movesCar);
  }

  get states(): number {
    return this.values.size;
  }

  /** Exact value of each first action, cheapest first; undefined when the states ran out. */
  byFirstAction(state: State): ExactValue[] | undefined {
    if (this.compiled.columns > MOST_COLUMNS) return undefined;
    const answers = new Array<number>(this.compiled.tests.length).fill(0);
    const values: ExactValue[] = [];
    for (const action of actionsOf(this.compiled, state)) {
      if (changesNothing(this.compiled, state, action)) continue;
      const cost = this.costOf(state, answers, action, Number.POSITIVE_INFINITY);
      if (Number.isNaN(cost)) return undefined;
      values.push({ action, cost });
    }
    return values.sort((a, b) => a.cost - b.cost);
  }

  /** Least expected minutes × sum; undefined when the states ran out. */
  least(state: State): number | undefined {
    if (this.compiled.columns > MOST_COLUMNS) return undefined;
    const cost = this.value(state, new Array<number>(this.compiled.tests.length).fill(0));
    return Number.isNaN(cost) ? undefined : cost;
  }

  /** NaN inside this class means that the states ran out. */
  private value(state: State, answers: readonly number[]): number {
    const sum = sumOf(state.weights);
    const key = keyOf(state, answers);
    const stored = this.values.get(key);
    if (stored !== undefined) return stored;
    if (this.values.size >= this.mostStates) return Number.NaN;
    let best = this.coster.cost(state.weights, sum, state.car);
    const known = knownCauseCost(this.leastProof, state.weights);
    if (best > known) {
      const candidates = actionsOf(this.compiled, state)
        .map((action) => ({ action, floor: this.floor(state, action, sum, known) }))
        .sort((a, b) => a.floor - b.floor);
      for (const { action, floor } of candidates) {
        if (floor >= best) break;
        if (action.kind === 'pass-on' || changesNothing(this.compiled, state, action)) continue;
        const cost = this.costOf(state, answers, action, best);
        if (Number.isNaN(cost)) return cost;
        best = Math.min(best, cost);
      }
    }
    this.values.set(key, best);
    return best;
  }

  /** What an action costs at least: itself, then proving a known cause. */
  private floor(state: State, action: NumberedAction, sum: number, known: number): number {
    const own = sum * minutesOf(this.compiled, action, state.car);
    if (action.kind === 'test') return own + known;
    if (action.kind === 'pass-on') return own;
    return own + known - real(state.weights, action.cause) * real(this.leastProof, action.cause);
  }

  /** Cost of an action first and the best plan after it; something not under `limit` once it cannot be under it. */
  private costOf(state: State, answers: readonly number[], action: NumberedAction, limit: number): number {
    let cost = sumOf(state.weights) * minutesOf(this.compiled, action, state.car);
    if (action.kind !== 'test') {
      for (const after of statesAfter(this.compiled, state, action)) cost += this.value(after, answers);
      return cost;
    }
    const { test } = action;
    const { rows, after } = item(this.compiled.tests, test);
    const open = openAfter(this.compiled, state.open, test);
    for (const [outcome, row] of rows.entries()) {
      const weights = state.weights.map((weight, column) => weight * real(row, column));
      if (sumOf(weights) === 0) continue;
      if (cost >= limit) return cost;
      const car = whole(after, state.car);
      const said = this.remembered[test] ? answers.with(test, outcome + 1) : answers;
      cost += this.value({ weights, car, open }, said);
    }
    return cost;
  }
}

/**
 * A test that leaves every possible column as likely as before, and the car as it was, is never worth its minutes.
 * One that warms the engine on the way may be.
 */
function changesNothing(compiled: CompiledModel, state: State, action: NumberedAction): boolean {
  if (action.kind !== 'test') return false;
  const { rows, movesCar } = item(compiled.tests, action.test);
  if (movesCar) return false;
  return rows.every((row) => {
    let likelihood: number | undefined;
    return state.weights.every((weight, column) => {
      if (weight === 0) return true;
      likelihood ??= real(row, column);
      return real(row, column) === likelihood;
    });
  });
}

function keyOf(state: State, answers: readonly number[]): string {
  let possible = 0;
  state.weights.forEach((weight, column) => {
    if (weight > 0) possible |= 1 << column;
  });
  return `${possible * CARS + state.car}:${answers.join('')}`;
}
