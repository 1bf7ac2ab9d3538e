/**
 * Evidence against physics: how often a reading is seen under a cause by the words of its record, and how often on
 * simulated cars. Where the two part, a person settles who is right; the car is never changed for it.
 */
import { exactInterval } from '../../diagnosis/counted.ts';
import { completeRow } from '../../diagnosis/likelihood.ts';
import { LIKELIHOOD_WORDS } from '../../diagnosis/words.ts';
import type { Records } from '../shelf.ts';

/** What was read on simulated cars that were brought in with a cause, no slips. */
export interface SimulatedRow {
  readonly test: string;
  readonly cause: string;
  readonly cars: number;
  /** Cars by outcome; one that is not named was never read. */
  readonly seen: Readonly<Record<string, number>>;
}

/** A row of the evidence that stands away from what the simulated cars show, at the outcome where it does most. */
export interface Parted {
  readonly test: string;
  readonly cause: string;
  readonly outcome: string;
  /** Share by the record, 0 to 1, completed as the belief does. */
  readonly written: number;
  /** Whether the record has a row of its own for the cause, or the one of all others stands for it. */
  readonly isNamed: boolean;
  readonly seen: number;
  readonly cars: number;
  /** Steps of the words of frequency between the record and the nearest share that so many cars allow. */
  readonly steps: number;
}

/** From here on a likelihood parts by more than one word of the scale. */
const PARTS_FROM = 1;

const SCALE = Object.values(LIKELIHOOD_WORDS);

/**
 * Place of a share on the scale of words, in steps: 0 for what cannot be, 10 for what must.
 * @param share 0 to 1
 */
export function placeOnScale(share: number): number {
  const above = SCALE.findIndex((value) => value >= share);
  const [low = 0, high = 1] = [SCALE[above - 1], SCALE[above]];
  return above <= 0 ? 0 : above - 1 + (share - low) / (high - low);
}

/** The simulated rows whose record says otherwise, the furthest apart first. Records and outcomes that are gone are passed over. */
export function partedRows(records: Pick<Records, 'test'>, rows: readonly SimulatedRow[]): Parted[] {
  return rows
    .flatMap((row) => furthest(records, row) ?? [])
    .filter(({ steps }) => steps > PARTS_FROM)
    .sort((a, b) => b.steps - a.steps || a.test.localeCompare(b.test) || a.cause.localeCompare(b.cause));
}

function furthest(records: Pick<Records, 'test'>, { test, cause, cars, seen }: SimulatedRow) {
  const record = records.test.get(test)?.data;
  if (!record) return undefined;
  const own = Object.hasOwn(record.evidence, cause) ? record.evidence[cause] : undefined;
  const outcomes = Object.keys(record.outcomes);
  const completed = completeRow(outcomes, own ?? record.otherwise);
  if (!completed.ok) return undefined;
  const parted = outcomes.map((outcome, at): Parted => {
    const written = completed.distribution[at] ?? 0;
    const count = seen[outcome] ?? 0;
    const { low, high } = exactInterval(count, cars);
    const nearest = Math.min(high, Math.max(low, written));
    const steps = Math.abs(placeOnScale(written) - placeOnScale(nearest));
    return { test, cause, outcome, written, isNamed: own !== undefined, seen: count, cars, steps };
  });
  return parted.reduce((a, b) => (b.steps > a.steps ? b : a));
}
