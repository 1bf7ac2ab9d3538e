/** A case walked through its tree as the page walks it: what is asked, what the car shows, where it ends. */
import { nextProof } from '../diagnosis/belief.ts';
import { compile } from '../diagnosis/compiled.ts';
import { SOMETHING_ELSE } from '../diagnosis/model.ts';
import { nextStep } from '../diagnosis/next-step.ts';
import { resolve } from '../diagnosis/state.ts';
import { type Place, placeOf } from '../diagnosis/walk.ts';
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

/** More questions than any walk has; a fault of the code must not hang a check. */
const MOST_QUESTIONS = 80;

/** How the walk asks: along the authored tree, or what the planner finds quickest from the start. */
export type WalkedBy = 'tree' | 'planner';

/**
 * Walks a case to its end.
 * @throws Error when the shelf lacks a record it names: the check reports that first
 */
export function walkCase(shelf: Pick<Shelf, 'records'>, car: CarCase, by: WalkedBy = 'tree'): CaseWalk {
  const vehicle = shelf.records.vehicle.get(car.vehicle);
  if (!vehicle) throw new Error(`The shelf has no vehicle "${car.vehicle}".`);
  const { model, tree } = caseOf(shelf, car.symptom, asMostAre(vehicle.data.layout));
  const compiled = compile(model);
  const asked: CaseWalk['asked'] = [];
  const unanswered: string[] = [];
  const situation = () =>
    resolve(compiled, {
      evidence: asked.map(({ test, outcome }) => ({ test, outcome })),
      unavailable: unanswered,
    });
  let minutes = 0;
  let now = situation();
  for (let turn = 0; turn < MOST_QUESTIONS; turn++) {
    const place = placeOf(compiled, tree, now);
    const test = by === 'tree' || place.standing.kind === 'proven' ? askedAt(place) : undefined;
    const next = test ?? planned(place);
    if (next === undefined) return ended(car, place, { asked, unanswered, minutes });
    const outcome = answerOf(shelf, car, next);
    if (outcome === undefined) unanswered.push(next);
    else {
      asked.push({ test: next, outcome });
      minutes += model.tests.find(({ id }) => id === next)?.minutes ?? 0;
    }
    now = situation();
  }
  throw new Error(`The walk of "${car.title}" does not end.`);

  /** What the planner asks, where the tree has no way on or is not followed. */
  function planned({ standing, belief }: Place): string | undefined {
    if (standing.kind === 'proven') return undefined;
    if (by === 'tree' && standing.kind === 'list') return undefined;
    if (belief.missingProof) return belief.missingProof.test;
    const evidence = asked.map((finding) => ({ ...finding }));
    const { action } = nextStep(compiled, { evidence, unavailable: unanswered }).best;
    if (action.kind === 'test') return action.test;
    if (action.kind === 'pass-on') return undefined;
    const cause = compiled.causeNumber.get(action.cause);
    const proof = cause === undefined ? undefined : nextProof(compiled, now, cause, 0);
    return proof === undefined ? undefined : compiled.tests[proof]?.id;
  }
}

function askedAt({ standing }: Place): string | undefined {
  return standing.kind === 'ask' ? standing.test : undefined;
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
  car: CarCase,
  { standing, belief }: Place,
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
