import { item } from './arrays.ts';
import { type EngineState, faultsOf, type Model, type ModelTest, type TestPlace } from './model.ts';

/**
 * Engine and place as one number from 0 to 5: engine (0 cold, 1 warm) + 2 × place (0 bay, 1 road, 2 lift).
 * Known cold and warm only: a car that arrives in an unknown state counts as cold.
 */
export type CarState = number;

/** A car that is always ready: no change-over ever. For bounds only; no real car is in this state. */
export const READY_CAR = 6;
export const CARS = 7;

/** Engine and place in one number: 1 for a warm engine, 2 for each place further on. */
export function carOf(engine: EngineState = 'cold', place?: TestPlace): CarState {
  return (engine === 'warm' ? 1 : 0) + 2 * placeNumber(place);
}

/** Engine a proof asks for, as a number; 0 is any. */
export const COLD = 1;
export const WARM = 2;

export interface CompiledTest {
  id: string;
  /** Minutes including getting the car ready, by the car's state before. */
  minutes: Float64Array;
  /** State of the car afterwards, by its state before. */
  after: Int32Array;
  /** Number of the group, or -1. */
  group: number;
  outcomes: readonly string[];
  /** One row an outcome: likelihood under each column. */
  rows: readonly Float64Array[];
  /** The recheck of a cause, asked to prove it and for nothing else. */
  isRecheck: boolean;
  /** All likelihoods are 0 or 1. */
  crisp: boolean;
  /** It asks for an engine state or a place, or leaves one; others at most bring the car in from the road, as any act does. */
  movesCar: boolean;
}

/** A model laid out for arithmetic. Columns are its causes in order, something else last. */
export interface CompiledModel {
  model: Model;
  columns: number;
  /** Number of the column of something else. */
  rest: number;
  prior: Float64Array;
  /** `proof[cause * CARS + car]`: minutes of proving including getting the car ready. */
  proof: Float64Array;
  /** `afterProof[cause * CARS + car]`: state of the car after a proof. */
  afterProof: Int32Array;
  /** Bare minutes of proving, by cause. */
  bareProof: Float64Array;
  /** Engine state each proof asks for: 0 any, COLD or WARM. */
  proofEngine: Int32Array;
  /** Whether any proof asks for an engine state, so that its minutes depend on the car. */
  proofsCareForEngine: boolean;
  passOn: number;
  tests: readonly CompiledTest[];
  causeNumber: ReadonlyMap<string, number>;
  testNumber: ReadonlyMap<string, number>;
}

/**
 * Lays a model out for arithmetic; do it once a page.
 * @throws RangeError listing every fault of the model
 */
export function compile(model: Model): CompiledModel {
  const faults = faultsOf(model);
  if (faults.length > 0) throw new RangeError(`The model cannot be computed with. ${faults.join(' ')}`);
  const rest = model.causes.length;
  const groups = [...new Set(model.tests.flatMap((test) => test.group ?? []))];
  const proof = new Float64Array(rest * CARS);
  const afterProof = new Int32Array(rest * CARS);
  model.causes.forEach((cause, number) => {
    for (let car = 0; car < CARS; car++) {
      const ready = makeReady(model, car, cause.proveEngine, undefined);
      proof[number * CARS + car] = cause.proveMinutes + ready.minutes;
      afterProof[number * CARS + car] = ready.car;
    }
  });
  return {
    model,
    columns: rest + 1,
    rest,
    prior: priorOf(model),
    proof,
    afterProof,
    bareProof: Float64Array.from(model.causes, (cause) => cause.proveMinutes),
    proofEngine: Int32Array.from(model.causes, (cause) =>
      cause.proveEngine === undefined ? 0 : cause.proveEngine === 'cold' ? COLD : WARM,
    ),
    proofsCareForEngine: model.causes.some((cause) => cause.proveEngine !== undefined),
    passOn: model.passOnMinutes,
    tests: model.tests.map((test) => compileTest(model, test, groups)),
    causeNumber: new Map(model.causes.map((cause, number) => [cause.id, number])),
    testNumber: new Map(model.tests.map((test, number) => [test.id, number])),
  };
}

function compileTest(model: Model, test: ModelTest, groups: readonly string[]): CompiledTest {
  const minutes = new Float64Array(CARS);
  const after = new Int32Array(CARS);
  for (let car = 0; car < CARS; car++) {
    const ready = makeReady(model, car, test.engine, test.place);
    minutes[car] = test.minutes + ready.minutes;
    after[car] = leave(ready.car, test);
  }
  return {
    id: test.id,
    minutes,
    after,
    group: test.group === undefined ? -1 : groups.indexOf(test.group),
    outcomes: test.outcomes,
    rows: test.likelihood.map((row) => Float64Array.from(row)),
    isRecheck: test.isRecheck === true,
    movesCar: test.engine !== undefined || test.leaves !== undefined || test.place !== undefined,
    crisp: test.likelihood.every((row) => row.every((value) => value === 0 || value === 1)),
  };
}

function priorOf(model: Model): Float64Array {
  const weights = model.causes.map((cause) => cause.weight);
  const sum = weights.reduce((total, weight) => total + weight, 0);
  const named = sum === 0 ? 0 : (1 - model.somethingElse) / sum;
  return Float64Array.from([...weights.map((weight) => weight * named), sum === 0 ? 1 : model.somethingElse]);
}

/**
 * Minutes to bring the car where an act needs it. An act without a place brings a car in from the road,
 * whose trip was paid both ways, and is done as well on the lift.
 */
function makeReady(
  model: Model,
  car: CarState,
  engine: EngineState | undefined,
  place: TestPlace | undefined,
): { minutes: number; car: CarState } {
  if (car === READY_CAR) return { minutes: 0, car };
  const change = model.changeOver;
  const isWarm = car % 2 === 1;
  const at = Math.floor(car / 2);
  let minutes = 0;
  if (engine === 'warm' && !isWarm) minutes += change.coldToWarm;
  if (engine === 'cold' && isWarm) minutes += change.warmToCold;
  const warm = engine === undefined ? isWarm : engine === 'warm';
  let there = at === placeNumber('road') ? placeNumber(undefined) : at;
  if (place !== undefined) {
    there = placeNumber(place);
    if (there !== at) minutes += place === 'road' ? change.toRoad : change.toLift;
  }
  return { minutes, car: (warm ? 1 : 0) + 2 * there };
}

/** A drive leaves the engine warm whatever it began with. */
function leave(car: CarState, test: ModelTest): CarState {
  const engine = test.leaves ?? (test.place === 'road' ? 'warm' : undefined);
  if (engine === undefined || car === READY_CAR) return car;
  return car - (car % 2) + (engine === 'warm' ? 1 : 0);
}

function placeNumber(place: TestPlace | undefined): number {
  return place === undefined ? 0 : place === 'road' ? 1 : 2;
}

/** Likelihood row of one outcome of a test. */
export function rowOf(compiled: CompiledModel, test: number, outcome: number): Float64Array {
  return item(item(compiled.tests, test).rows, outcome);
}
