/** Walks simulated cars through the shelf's trees: the reader is noisy, the eye slips, and the car's own drive has shown the complaint. */

import { COMPLAINT_IDS, type ComplaintId } from '../../../src/car/complaint.ts';
import { FAULT_IDS, type FaultId } from '../../../src/car/faults.ts';
import { randomOf } from '../../../src/car/random.ts';
import { readingOf, SLIP, TEST_IDS, testFits } from '../../../src/car/reading.ts';
import { type CompiledModel, compile } from '../../../src/diagnosis/compiled.ts';
import { SOMETHING_ELSE } from '../../../src/diagnosis/model.ts';
import type { WalkTree } from '../../../src/diagnosis/walk.ts';
import { caseOf } from '../../../src/library/case.ts';
import { type CaseWalk, walkCar } from '../../../src/library/case-walk.ts';
import type { Shelf } from '../../../src/library/shelf.ts';
import { causeOfRecheck, NOT_IT, PROVEN } from '../../../src/model/recheck.ts';
import { type BroughtIn, broughtIn } from './draw.ts';
import { shelfLayout } from './layout.ts';

/** How a walk of a simulated car ends. */
export type Verdict =
  /** Its cause is proven or first. */
  | 'right'
  /** Nothing is called proven, and its cause stands on the list or the list says that it may be none of these. */
  | 'honest'
  /** Nothing is called proven, and its cause is no longer on the list. */
  | 'lost'
  /** A cause is called proven that the car does not have. */
  | 'wrong';

export interface Tried {
  readonly from: BroughtIn;
  readonly verdict: Verdict;
  readonly walk: CaseWalk;
  /** Tests whose answer was a slip of the eye. */
  readonly slipped: readonly string[];
}

/** Share of something else from which a list says by itself that it may be none of these; our own choice. */
const NONE_OF_THESE = 0.05;

/** Complaint and cause, where the shelf has the cause behind the complaint and the simulation has both. */
export function pairsOf(shelf: Pick<Shelf, 'records'>): { complaint: ComplaintId; fault: FaultId }[] {
  return COMPLAINT_IDS.flatMap((complaint) => {
    const causes = shelf.records.symptom.get(complaint)?.data.causes ?? {};
    return FAULT_IDS.filter((fault) => fault in causes).map((fault) => ({ complaint, fault }));
  });
}

/** @returns undefined where the car never shows the complaint, or where the shelf holds its layout unable to have the cause */
export type Trier = (
  complaint: ComplaintId,
  fault: FaultId,
  seed: number,
  scale?: number,
) => Tried | undefined;

/** Tries cars on a shelf; models of a layout are made once. */
export function trierOf(shelf: Pick<Shelf, 'records'>): Trier {
  const made = new Map<string, { compiled: CompiledModel; tree: WalkTree }>();
  const walkOf = (from: BroughtIn) => {
    const layout = shelfLayout(from.car.layout, from.fault === 'condenser-fan-dead');
    const key = JSON.stringify([from.complaint, layout]);
    const known = made.get(key);
    if (known) return known;
    const { model, tree } = caseOf(shelf, from.complaint, layout);
    const one = { compiled: compile(model), tree };
    made.set(key, one);
    return one;
  };
  return (complaint, fault, seed, scale = 1) => {
    const from = broughtIn(complaint, fault, seed, scale);
    if (!from) return undefined;
    const { compiled, tree } = walkOf(from);
    if (!compiled.causeNumber.has(fault)) return undefined;
    const slipped: string[] = [];
    const walk = walkCar(compiled, tree, { faults: [fault] }, (test) => answerOf(from, test, slipped));
    return { from, verdict: verdictOf(walk), walk, slipped };
  };
}

/** A recheck comes out for the fault and not for others; a test that the simulation does not have is passed over. */
function answerOf({ car, seed, outside, fault }: BroughtIn, test: string, slipped: string[]) {
  const cause = causeOfRecheck(test);
  if (cause !== undefined) {
    const slips = randomOf(seed, `${test} slip`).chance(SLIP);
    if (slips) slipped.push(test);
    return (cause === fault) !== slips ? PROVEN : NOT_IT;
  }
  const known = TEST_IDS.find((id) => id === test);
  if (known === undefined || !testFits(known, car)) return undefined;
  const reading = readingOf(known, car, seed, outside);
  if (reading.slipped) slipped.push(test);
  return reading.outcome;
}

function verdictOf({ ending, ranked }: CaseWalk): Verdict {
  if (ending === 'proven' || ending === 'first') return 'right';
  if (ending === 'wrongly proven') return 'wrong';
  const none = ranked.find(({ cause }) => cause === SOMETHING_ELSE)?.share ?? 0;
  return ending === 'named' || none >= NONE_OF_THESE ? 'honest' : 'lost';
}
