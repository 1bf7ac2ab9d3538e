/** What every test shows on cars that were brought in with a cause: the rows that the shelf's evidence is held against. */
import type { FaultId } from '../../../src/car/faults.ts';
import { readingOf, TEST_IDS, testFits } from '../../../src/car/reading.ts';
import type { SimulatedRow } from '../../../src/library/against-physics/compare.ts';
import type { Shelf } from '../../../src/library/shelf.ts';
import { type BroughtIn, broughtIn } from './draw.ts';
import { pairsOf } from './trial.ts';

/** Cars of a cause after which a complaint is given up that none of them shows. */
const GIVE_UP = 6;

/** Cars with a cause, drawn in turn from the complaints that the shelf has it behind. */
export function carsWith(
  shelf: Pick<Shelf, 'records'>,
  fault: FaultId,
  cars: number,
  first: number,
): BroughtIn[] {
  const complaints = pairsOf(shelf).filter((pair) => pair.fault === fault);
  const found: BroughtIn[] = [];
  const left = new Map(complaints.map(({ complaint }) => [complaint, 0]));
  for (let seed = first; found.length < cars && left.size > 0 && seed < first + 4 * cars; seed++)
    for (const [complaint, shown] of left) {
      const one = found.length < cars ? broughtIn(complaint, fault, seed) : undefined;
      if (one) found.push(one);
      if (one) left.set(complaint, shown + 1);
      else if (shown === 0 && seed >= first + GIVE_UP) left.delete(complaint);
    }
  return found;
}

/** The rows of a cause, slips of the eye left out: they are the reader's and not the car's. */
export function rowsOf(
  shelf: Pick<Shelf, 'records'>,
  fault: FaultId,
  cars: number,
  first: number,
  only: readonly string[] = TEST_IDS,
): SimulatedRow[] {
  const brought = carsWith(shelf, fault, cars, first);
  return TEST_IDS.filter((test) => only.includes(test)).flatMap((test): SimulatedRow[] => {
    const able = brought.filter(({ car }) => testFits(test, car));
    if (able.length < cars / 4) return [];
    const seen: Record<string, number> = {};
    for (const { car, seed, outside } of able) {
      const { outcome } = readingOf(test, car, seed, outside, 0);
      seen[outcome] = (seen[outcome] ?? 0) + 1;
    }
    return [{ test, cause: fault, cars: able.length, seen }];
  });
}
