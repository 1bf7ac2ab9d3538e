/** A walk to its end on a car that answers whatever is asked: along the authored tree, or by the planner. Pure. */
import { item, real, whole } from './arrays.ts';
import { nextProof } from './belief.ts';
import { type CompiledModel, carOf } from './compiled.ts';
import type { Finding, Situation } from './model.ts';
import { nextStep } from './next-step.ts';
import { resolve } from './state.ts';
import { placeOf, type WalkPlace, type WalkTree } from './walk.ts';

/** How the walk asks: along the authored tree, or what the planner finds quickest from the start. */
export type WalkedBy = 'tree' | 'planner';

/** What is known of the car before the first question. */
export interface KnownCar {
  /** By feature of the layout. */
  layout?: Readonly<Record<string, string | undefined>>;
  situation?: Omit<Situation, 'evidence'>;
}

/** A walk that has come to its end. */
export interface AnsweredWalk {
  place: WalkPlace;
  /** What was asked and answered, in order. */
  asked: Finding[];
  /** Tests that were asked and that the car had no answer to: passed over as not possible now. */
  unanswered: string[];
}

/** More questions than any walk has; a fault of the code must not hang a check. */
const MOST_QUESTIONS = 80;

/**
 * Asks until nothing is left to ask.
 * @param answerOf what the car shows at a test; undefined where nobody can say
 * @throws Error when the walk does not end
 */
export function walkToEnd(
  compiled: CompiledModel,
  tree: WalkTree,
  by: WalkedBy,
  answerOf: (test: string) => string | undefined,
  { layout, situation = {} }: KnownCar = {},
): AnsweredWalk {
  const asked: Finding[] = [];
  const unanswered: string[] = [];
  for (let turn = 0; turn < MOST_QUESTIONS; turn++) {
    const now: Situation = {
      ...situation,
      evidence: [...asked],
      unavailable: [...(situation.unavailable ?? []), ...unanswered],
    };
    const place = placeOf(compiled, tree, resolve(compiled, now), layout);
    const next = toAsk(compiled, by, place, now);
    if (next === undefined) return { place, asked, unanswered };
    const outcome = answerOf(next);
    if (outcome === undefined) unanswered.push(next);
    else asked.push({ test: next, outcome });
  }
  throw new Error('The walk does not end.');
}

function toAsk(
  compiled: CompiledModel,
  by: WalkedBy,
  { standing, belief }: WalkPlace,
  now: Situation,
): string | undefined {
  if (standing.kind === 'proven') return undefined;
  if (by === 'tree' && standing.kind === 'ask') return standing.test;
  if (by === 'tree' && standing.kind === 'list') return undefined;
  // What the planner asks, where the tree has no way on or is not followed.
  return belief.missingProof?.test ?? plannedTest(compiled, now);
}

/**
 * The test that the planner does next, the proof of a cause included; undefined when passing the car on is quicker.
 * Worked out two steps ahead.
 */
export function plannedTest(compiled: CompiledModel, now: Situation): string | undefined {
  const { action } = nextStep(compiled, now).best;
  if (action.kind === 'test') return action.test;
  if (action.kind === 'pass-on') return undefined;
  const cause = compiled.causeNumber.get(action.cause);
  const proof = cause === undefined ? undefined : nextProof(compiled, resolve(compiled, now), cause, 0);
  return proof === undefined ? undefined : compiled.tests[proof]?.id;
}

/**
 * Minutes of each test when they are done in this order, getting the car ready included: warming up, cooling down, road, lift.
 * A test that the model does not have takes none.
 */
export function minutesInOrder(compiled: CompiledModel, tests: readonly string[]): number[] {
  let car = carOf();
  return tests.map((id) => {
    const number = compiled.testNumber.get(id);
    if (number === undefined) return 0;
    const { minutes, after } = item(compiled.tests, number);
    const took = real(minutes, car);
    car = whole(after, car);
    return took;
  });
}
