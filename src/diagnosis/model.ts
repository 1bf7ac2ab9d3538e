/** State of the engine a test or a proof asks for. */
export type EngineState = 'cold' | 'warm';

/** Where the car must be for a test. A test without a place is done in the bay, car on the floor or raised. */
export type TestPlace = 'road' | 'lift';

/** A cause as the planner sees it. "Something else" is never in this list: it is the model's own last column. */
export interface ModelCause {
  id: string;
  /** How often it is behind the symptom, beside the other causes. Above 0; only the ratios matter. */
  weight: number;
  /** Minutes of the act that confirms it. The act is decisive: it proves the cause or rules it out. */
  proveMinutes: number;
  /** Engine state the confirming act needs, when it matters. */
  proveEngine?: EngineState;
  /** The acts that prove it, the first the one to ask: a test with the outcome that speaks for this cause. */
  proofs?: readonly Finding[];
  /** Its recheck, a test of two outcomes that is asked after a proof and before a part is bought. */
  recheck?: Finding;
  /** Something made it: a low level, spent coolant, a blown fuse. It is found, and the walk goes on to what made it. */
  consequence?: boolean;
}

export interface ModelTest {
  id: string;
  minutes: number;
  /** Engine state the test starts from, when it matters. */
  engine?: EngineState;
  /** Engine state the test leaves behind when it differs from the one it starts from: a warm-up watched from cold. */
  leaves?: EngineState;
  place?: TestPlace;
  /** Tests of one group repeat each other: their findings are pooled and the planner offers one of them. */
  group?: string;
  /** The recheck of a cause: it is asked to prove that cause, never to tell causes apart. */
  isRecheck?: boolean;
  outcomes: string[];
  /** `likelihood[outcome][cause]`, causes in the order of `Model.causes`, something else last. Each column sums to 1. */
  likelihood: number[][];
}

/** Minutes to bring the car into another state. */
export interface ChangeOver {
  coldToWarm: number;
  warmToCold: number;
  /** Getting ready for the road and back into the bay; a test's own minutes hold the driving. */
  toRoad: number;
  /** Positioning and raising the car. */
  toLift: number;
}

/**
 * Minutes for changing over. Warm-up and cool-down as in the check values of the worked example
 * `engine-cold-or-warm`; road and lift are common practice, no source.
 */
export const USUAL_CHANGE_OVER: ChangeOver = { coldToWarm: 15, warmToCold: 90, toRoad: 5, toLift: 5 };

/**
 * One symptom with its causes and tests: plain data, written as JSON into the symptom's page.
 * One fault at a time; tests are independent of each other under a given cause unless they share a group.
 */
export interface Model {
  causes: ModelCause[];
  /** Share of something else before any finding, 0 to 1. Take it from `shareOfSomethingElse`. */
  somethingElse: number;
  /** Minutes of passing the car on (a specialist, or starting over by hand). Settles anything. */
  passOnMinutes: number;
  tests: ModelTest[];
  changeOver: ChangeOver;
}

/** One answered test. */
export interface Finding {
  test: string;
  outcome: string;
}

/** What is known and possible at one moment. */
export interface Situation {
  evidence: readonly Finding[];
  /** Ids of causes that this car cannot have. */
  ruledOut?: readonly string[];
  /** What share of such cars can have a cause at all, by cause, 0 to 1; 1 where it is not given. */
  fitted?: Readonly<Record<string, number>>;
  /** How much likelier each cause makes what the customer answered, by cause, above 0; 1 where it is not given. */
  told?: Readonly<Record<string, number>> | undefined;
  /** Ids of tests that cannot be done: skipped, tool missing, not this layout. */
  unavailable?: readonly string[];
  /** Engine when the car arrives; unknown counts as cold. */
  engine?: EngineState;
  place?: TestPlace;
}

/** What can be done next. */
export type Action = { kind: 'test'; test: string } | { kind: 'prove'; cause: string } | { kind: 'pass-on' };

/** Name of the model's last column in every ranking. No cause may be called this. */
export const SOMETHING_ELSE = 'something-else';

const USUAL_SHARE = 0.06;
const LEAST_SHARE = 0.03;

/**
 * Share of something else to put into a model.
 * @param wanted share an author asks for, 0 to 1
 * @returns the wanted share, 6 % when none is given, never under 3 %
 */
export function shareOfSomethingElse(wanted: number = USUAL_SHARE): number {
  return Math.max(wanted, LEAST_SHARE);
}

/** What is wrong with a model, as sentences; empty when it can be computed with. */
export function faultsOf(model: Model): string[] {
  const faults: string[] = [];
  if (!(model.somethingElse >= 0 && model.somethingElse <= 1))
    faults.push(`Share of something else is ${model.somethingElse}; it must be from 0 to 1.`);
  checkMinutes(faults, 'Passing on', model.passOnMinutes);
  checkDistinct(
    faults,
    'cause',
    model.causes.map((cause) => cause.id),
  );
  checkDistinct(
    faults,
    'test',
    model.tests.map((test) => test.id),
  );
  for (const cause of model.causes) {
    if (cause.id === SOMETHING_ELSE)
      faults.push(`A cause is called "${SOMETHING_ELSE}"; that name is taken.`);
    if (!(cause.weight > 0 && Number.isFinite(cause.weight)))
      faults.push(`Cause "${cause.id}" has the weight ${cause.weight}; it must be above 0.`);
    checkMinutes(faults, `Proving "${cause.id}"`, cause.proveMinutes);
  }
  for (const test of model.tests) faults.push(...faultsOfTest(test, model.causes.length + 1));
  for (const [name, minutes] of Object.entries(model.changeOver)) checkMinutes(faults, name, minutes);
  return faults;
}

function faultsOfTest(test: ModelTest, columns: number): string[] {
  const faults: string[] = [];
  checkMinutes(faults, `Test "${test.id}"`, test.minutes);
  checkDistinct(faults, `outcome of test "${test.id}"`, test.outcomes);
  if (test.outcomes.length < 2) faults.push(`Test "${test.id}" needs at least two outcomes.`);
  if (test.likelihood.length !== test.outcomes.length)
    faults.push(
      `Test "${test.id}" has ${test.outcomes.length} outcomes and ${test.likelihood.length} rows of likelihoods.`,
    );
  const sums = new Array<number>(columns).fill(0);
  for (const row of test.likelihood) {
    if (row.length !== columns) {
      faults.push(`Test "${test.id}" has a row of ${row.length} likelihoods; it needs ${columns}.`);
      return faults;
    }
    row.forEach((value, column) => {
      if (!(value >= 0 && value <= 1)) faults.push(`Test "${test.id}" has the likelihood ${value}.`);
      sums[column] = (sums[column] ?? 0) + value;
    });
  }
  sums.forEach((sum, column) => {
    if (Math.abs(sum - 1) > 1e-6)
      faults.push(`Test "${test.id}": the likelihoods of column ${column} sum to ${sum}, not 1.`);
  });
  return faults;
}

function checkMinutes(faults: string[], what: string, minutes: number): void {
  if (!(minutes >= 0 && Number.isFinite(minutes)))
    faults.push(`${what} takes ${minutes} minutes; it must be 0 or more.`);
}

function checkDistinct(faults: string[], what: string, ids: string[]): void {
  const seen = new Set<string>();
  for (const id of ids) {
    if (seen.has(id)) faults.push(`The ${what} "${id}" is there twice.`);
    seen.add(id);
  }
}
