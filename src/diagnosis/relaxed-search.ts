import { item, real, whole } from './arrays.ts';
import { CARS, type CarState, type CompiledModel, READY_CAR } from './compiled.ts';
import { knownCauseCost, leastProofs } from './lookahead.ts';
import type { State } from './state.ts';

/** Possible columns are kept as bits of one whole number. */
const MOST_COLUMNS = 30;

/**
 * Least expected cost if each test revealed outright in which of its classes of equal columns the cause is.
 *
 * The real outcome is a blurred version of the class, so no plan with real tests is cheaper. With such tests a
 * state is only the set of columns left and the car, and the best plan is found exactly by memoised search.
 */
export class RelaxedSearch {
  readonly leastProof: Float64Array;
  private readonly compiled: CompiledModel;
  private readonly classes: readonly (readonly number[])[];
  private statesLeft: number;
  private weights: Float64Array = new Float64Array(0);
  private open: readonly number[] = [];
  private values = new Map<number, number>();

  constructor(compiled: CompiledModel, mostStates: number) {
    this.compiled = compiled;
    this.leastProof = leastProofs(compiled);
    this.statesLeft = compiled.columns > MOST_COLUMNS ? 0 : mostStates;
    this.classes = compiled.tests.map((test) => classesOf(test.rows, compiled.columns));
  }

  /** The states ran out: known-cause cost, looser but still a bound, stands in for those not searched. */
  get ranOut(): boolean {
    return this.statesLeft <= 0;
  }

  /** Expected minutes × sum of the weights. */
  value(state: State): number {
    if (this.ranOut) return knownCauseCost(this.leastProof, state.weights);
    this.weights = state.weights;
    this.open = state.open;
    this.values = new Map();
    let set = 0;
    state.weights.forEach((weight, column) => {
      if (weight > 0) set |= 1 << column;
    });
    return this.least(set, state.car);
  }

  private least(set: number, car: CarState): number {
    const key = set * CARS + car;
    const stored = this.values.get(key);
    if (stored !== undefined) return stored;
    let sum = 0;
    let known = 0;
    for (let left = set; left !== 0; left &= left - 1) {
      const column = lowest(left);
      sum += real(this.weights, column);
      known += real(this.weights, column) * real(this.leastProof, column);
    }
    if (this.statesLeft <= 0) return known;
    this.statesLeft--;
    let best = sum * this.compiled.passOn;
    for (let left = set & ~(1 << this.compiled.rest); left !== 0 && best > known; left &= left - 1)
      best = Math.min(best, this.provingFirst(set, lowest(left), car, sum, known, best));
    for (const test of this.open) {
      if (best <= known) break;
      best = Math.min(best, this.testingFirst(set, test, car, sum, known, best));
    }
    this.values.set(key, best);
    return best;
  }

  private provingFirst(
    set: number,
    cause: number,
    car: CarState,
    sum: number,
    known: number,
    limit: number,
  ): number {
    const entry = cause * CARS + car;
    const cost = sum * real(this.compiled.proof, entry);
    const floor = cost + known - real(this.weights, cause) * real(this.leastProof, cause);
    if (floor >= limit) return floor;
    const others = set & ~(1 << cause);
    return others === 0 ? cost : cost + this.least(others, whole(this.compiled.afterProof, entry));
  }

  private testingFirst(
    set: number,
    test: number,
    car: CarState,
    sum: number,
    known: number,
    limit: number,
  ): number {
    const { minutes, after } = item(this.compiled.tests, test);
    let cost = sum * real(minutes, car);
    if (cost + known >= limit) return cost + known;
    const then = whole(after, car);
    for (const members of item(this.classes, test)) {
      const kept = set & members;
      if (kept === set) return this.movingOnly(set, car, then, cost);
      if (kept !== 0) cost += this.least(kept, then);
      if (cost >= limit) return cost;
    }
    return cost;
  }

  /**
   * A test that tells nothing here is worth doing only for the state it leaves the car in. Following that up could
   * go round in circles; that no further change-over is ever needed is cheaper and ends.
   */
  private movingOnly(set: number, car: CarState, then: CarState, cost: number): number {
    return then === car ? Number.POSITIVE_INFINITY : cost + this.least(set, READY_CAR);
  }
}

/** Sets of columns a test cannot tell apart, as bits. */
function classesOf(rows: readonly Float64Array[], columns: number): number[] {
  const classes = new Map<string, number>();
  for (let column = 0; column < Math.min(columns, MOST_COLUMNS); column++) {
    const key = rows.map((row) => real(row, column)).join(' ');
    classes.set(key, (classes.get(key) ?? 0) | (1 << column));
  }
  return [...classes.values()];
}

function lowest(set: number): number {
  return 31 - Math.clz32(set & -set);
}
