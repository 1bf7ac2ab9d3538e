/** A case walked through its tree as the page walks it: what is asked, what the car shows, where it ends. */
import { type WalkedBy, walkToEnd } from '../diagnosis/answered-walk.ts';
import { type CompiledModel, compile } from '../diagnosis/compiled.ts';
import { SOMETHING_ELSE } from '../diagnosis/model.ts';
import type { WalkPlace, WalkTree } from '../diagnosis/walk.ts';
import { NAMED_FROM } from '../diagnosis/walk-figures.ts';
import type { CarCase } from '../model/case.ts';
import { asMostAre } from '../model/layout.ts';
import { causeOfRecheck, NOT_IT, PROVEN } from '../model/recheck.ts';
import { caseOf } from './case.ts';
import type { Shelf } from './shelf.ts';

/** How a walk of a case ends. */
export type CaseEnding =
  /** A fault of the car is proven, or found where something made it. */
  | 'proven'
  /** The list has a fault of the car first. */
  | 'first'
  /** The list names one further down. */
  | 'named'
  | 'missed'
  /** A cause is called proven that the car does not have. */
  | 'wrongly proven';

export interface CaseWalk {
  ending: CaseEnding;
  /** The cause that was called proven. */
  proven: string | undefined;
  /** What was asked and answered, in order. */
  asked: { test: string; outcome: string }[];
  /** Tests that were asked and that the case says nothing of: passed over as not possible now. */
  unanswered: string[];
  minutes: number;
  /** The causes at the end with their shares, the likeliest first, those under one in a hundred left out. */
  ranked: { cause: string; share: number }[];
}

/**
 * Walks a case to its end.
 * @throws Error when the shelf lacks a record it names: the check reports that first
 */
export function walkCase(shelf: Pick<Shelf, 'records'>, car: CarCase, by: WalkedBy = 'tree'): CaseWalk {
  const vehicle = shelf.records.vehicle.get(car.vehicle);
  if (!vehicle) throw new Error(`The shelf has no vehicle "${car.vehicle}".`);
  const { model, tree } = caseOf(shelf, car.symptom, asMostAre(vehicle.data.layout));
  return walkCar(compile(model), tree, car, (test) => answerOf(shelf, car, test), by);
}

/**
 * Walks any car with known faults to its end.
 * @param car `should-be` where the wrong complaint was chosen
 * @param answerOf what the car shows at a test; undefined where nobody can say
 */
export function walkCar(
  compiled: CompiledModel,
  tree: WalkTree,
  car: Pick<CarCase, 'faults' | 'should-be'>,
  answerOf: (test: string) => string | undefined,
  by: WalkedBy = 'tree',
): CaseWalk {
  const { place, asked, unanswered } = walkToEnd(compiled, tree, by, answerOf);
  const minutes = asked.reduce(
    (sum, { test }) => sum + (compiled.model.tests.find(({ id }) => id === test)?.minutes ?? 0),
    0,
  );
  return ended(car, place, { asked, unanswered, minutes });
}

/** What the car shows, or what a sound one does where its case says nothing; a recheck comes out for the fault and not for others, where the case does not say. */
function answerOf(
  { records }: Pick<Shelf, 'records'>,
  { shows, faults, rechecks = {} }: CarCase,
  test: string,
): string | undefined {
  const cause = causeOfRecheck(test);
  if (cause === undefined) return shows[test]?.sees ?? records.test.get(test)?.data.sound;
  const isShown = rechecks[cause] ?? faultsOf(faults).includes(cause);
  return isShown ? PROVEN : NOT_IT;
}

/** A car with nothing wrong behaves as it should, which is a cause like any other. */
function faultsOf(faults: readonly string[]): readonly string[] {
  return faults.length > 0 ? faults : ['normal-behaviour'];
}

function ended(
  car: Pick<CarCase, 'faults' | 'should-be'>,
  { standing, belief }: WalkPlace,
  so: Pick<CaseWalk, 'asked' | 'unanswered' | 'minutes'>,
): CaseWalk {
  const ranked = belief.ranked.filter(({ share }) => share >= NAMED_FROM);
  const proven = standing.kind === 'proven' ? standing.cause : undefined;
  // With nothing wrong, or the wrong complaint chosen, the list may not have it: something else is then the right answer.
  const mayBeUnlisted = car.faults.length === 0 || car['should-be'] !== undefined;
  const right = [...faultsOf(car.faults), ...(mayBeUnlisted ? [SOMETHING_ELSE] : [])];
  const isRight = (cause: string) => right.includes(cause);
  const settled = [...belief.found, ...(proven === undefined ? [] : [proven])];
  const place = ranked.findIndex(({ cause }) => isRight(cause));
  const ending: CaseEnding = settled.some(isRight)
    ? 'proven'
    : proven !== undefined
      ? 'wrongly proven'
      : place === 0
        ? 'first'
        : place > 0
          ? 'named'
          : 'missed';
  return { ending, proven, ranked, ...so };
}
