import { within } from './out-of-range.ts';
import { type CubicMetre, type CubicMetreDifference, cubicMetre, cubicMetreDifference } from './units.ts';

/** What a technician knows after filling. */
export interface FillRecord {
  /** What the whole system holds, 0.0005 to 0.2 m3; left out where nobody knows. */
  readonly capacity?: CubicMetre;
  /** What came out, measured. */
  readonly drained: CubicMetre;
  /** What went back in so far. */
  readonly refilled: CubicMetre;
  /** What was missing before it was drained; 0 when it stood at the mark, left out when nobody knows. */
  readonly shortBefore?: CubicMetre;
  /** Whether the bottle now stands at its mark and takes no more. */
  readonly takesNoMore: boolean;
}

/** What to make of it. */
export type FillVerdict =
  /** It takes no more and so much less went in than belongs in that it is not started: the difference is air. */
  | 'air inside'
  /** It takes no more, and more is missing than a jug is out: go over the bleed points once more. */
  | 'a little short'
  /** Less went in than belongs in, and it still takes: go on. */
  | 'keep filling'
  /** What belongs in is in. */
  | 'full'
  /** As much went in as belongs in, and it still goes down. */
  | 'still sinking'
  /** As much went in as came out, and whether it was full before nobody knows. */
  | 'even, if it was full before'
  /** More went in than belongs in: it had been lower before, or some of it has run out since. */
  | 'took more than drained'
  /** More came out than the whole holds: one of the two figures is wrong. */
  | 'drained more than it holds'
  /** More went in than the whole holds: a figure is wrong, or it runs out below. */
  | 'took more than it holds';

/** Where the litres are. */
export interface FillAccount {
  readonly verdict: FillVerdict;
  /** Drained and short before, less refilled, m3; negative when more went in. */
  readonly missing: CubicMetreDifference;
  /** Liquid inside now, m3, no more than the capacity; left out with it. */
  readonly inside?: CubicMetreDifference;
  /** Below this difference the account counts as even: jugs, wet walls, a drop beside the funnel, m3. */
  readonly allowance: CubicMetre;
  /** From this difference on the engine is not started, m3. */
  readonly notStarted: CubicMetre;
}

/**
 * Within this a refill is even, m3: what stays in jugs, on rags and walls; in a system above the size, the larger one. The
 * record of the test and the job card go by the same. Common practice, no source.
 */
export const EVEN_WITHIN = { usual: 0.3e-3, large: 0.5e-3, largeAbove: 15e-3 } as const;
/** So much more than even and it is not started, m3: half a litre short in a car. Common practice, no source. */
export const NOT_STARTED_ABOVE_EVEN = 0.2e-3;
/** A tenth of what belongs in is never nothing, however small the filling. Common practice, no source. */
export const NEVER_NOTHING = 0.1;

/**
 * Accounts for the coolant after a refill: litres still missing, and whether they are air.
 *
 * Plain conservation of volume, all measured at about the same temperature.
 * @throws OutOfRange on a volume below zero, a capacity outside 0.5 to 200 l, or more than 400 l in or out
 */
export function accountForFill(record: FillRecord): FillAccount {
  const capacity =
    record.capacity === undefined ? undefined : within('system capacity', record.capacity, 0.5e-3, 0.2, 'm3');
  const drained = within('drained volume', record.drained, 0, 0.4, 'm3');
  const refilled = within('refilled volume', record.refilled, 0, 0.4, 'm3');
  const short = within('short before', record.shortBefore ?? 0, 0, 0.4, 'm3');
  const allowance = allowanceFor(capacity, drained);
  const missing = drained + short - refilled;
  const litres = { capacity, drained, refilled, belongs: drained + short, missing, allowance };
  return {
    verdict: judge(litres, record.takesNoMore, record.shortBefore !== undefined),
    missing: cubicMetreDifference(missing),
    ...(capacity !== undefined && {
      inside: cubicMetreDifference(Math.min(capacity, capacity - missing)),
    }),
    allowance: cubicMetre(allowance),
    notStarted: cubicMetre(allowance + NOT_STARTED_ABOVE_EVEN),
  };
}

/** A capacity typed with a slip shall not widen it: what came out of a large system is large too. */
function allowanceFor(capacity: number | undefined, drained: number): number {
  const isLarge = (capacity ?? 0) > EVEN_WITHIN.largeAbove && drained > EVEN_WITHIN.largeAbove / 3;
  return isLarge ? EVEN_WITHIN.large : EVEN_WITHIN.usual;
}

/**
 * Whether a refill is even with what belongs in: nobody counts what stays in jugs and on rags, and a tenth is never nothing.
 * @param belongs what came out and was short before, m3
 * @param allowance `EVEN_WITHIN` for this system, m3
 */
export function isEven(belongs: number, refilled: number, allowance: number = EVEN_WITHIN.usual): boolean {
  // Decimals typed do not add up to the last bit: a drop is no litre.
  const drop = 1e-9;
  const missing = belongs - refilled;
  return Math.abs(missing) <= allowance + drop && (belongs === 0 || missing < NEVER_NOTHING * belongs - drop);
}

interface Litres {
  capacity: number | undefined;
  drained: number;
  refilled: number;
  belongs: number;
  missing: number;
  allowance: number;
}

function judge(
  { capacity, drained, refilled, belongs, missing, allowance }: Litres,
  takesNoMore: boolean,
  knownBefore: boolean,
): FillVerdict {
  const drop = 1e-9;
  if (capacity !== undefined && drained > capacity + allowance + drop) return 'drained more than it holds';
  if (capacity !== undefined && refilled > capacity + allowance + drop) return 'took more than it holds';
  const enough = missing < 0 || isEven(belongs, refilled, allowance);
  if (!enough && !takesNoMore) return 'keep filling';
  if (missing >= allowance + NOT_STARTED_ABOVE_EVEN - drop) return 'air inside';
  if (!enough) return 'a little short';
  if (-missing > allowance + drop) return 'took more than drained';
  if (!takesNoMore) return 'still sinking';
  return knownBefore ? 'full' : 'even, if it was full before';
}
