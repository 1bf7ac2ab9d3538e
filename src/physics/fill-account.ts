import { within } from './out-of-range.ts';
import { type CubicMetre, type CubicMetreDifference, cubicMetre, cubicMetreDifference } from './units.ts';

/** What a technician knows after filling. */
export interface FillRecord {
  /** What the whole system holds, 0.0005 to 0.2 m3. */
  readonly capacity: CubicMetre;
  /** What came out, measured. */
  readonly drained: CubicMetre;
  /** What went back in so far. */
  readonly refilled: CubicMetre;
  /** Whether the bottle now stands at its mark and takes no more. */
  readonly takesNoMore: boolean;
}

/** What to make of it. */
export type FillVerdict =
  /** It takes no more and less went in than came out: the difference is air. */
  | 'air inside'
  /** Less went in than came out, and it still takes: go on. */
  | 'keep filling'
  /** What came out is back in. */
  | 'full'
  /** More went in than came out: it had been low before, or some of it has run out since. */
  | 'took more than drained'
  /** More came out than the whole holds: one of the two figures is wrong. */
  | 'drained more than it holds'
  /** More went in than the whole holds: a figure is wrong, or it runs out below. */
  | 'took more than it holds';

/** Where the litres are. */
export interface FillAccount {
  readonly verdict: FillVerdict;
  /** Drained less refilled, m3; negative when more went in than came out. */
  readonly missing: CubicMetreDifference;
  /** Liquid inside now if the system was full before draining, m3. */
  readonly inside: CubicMetreDifference;
  /** Below this difference the account counts as even: jugs, wet walls, a drop beside the funnel, m3. */
  readonly allowance: CubicMetre;
}

/** Allowance: a twentieth of the capacity and at least 0.15 l. Common practice, no source. */
const ALLOWANCE = { share: 0.05, least: 0.15e-3 } as const;

/**
 * Accounts for the coolant after a refill: litres still missing, and whether they are air.
 *
 * Plain conservation of volume, all measured at about the same temperature, the system full before it was drained.
 * @throws OutOfRange on a volume below zero, a capacity outside 0.5 to 200 l, or more than 400 l in or out
 */
export function accountForFill(record: FillRecord): FillAccount {
  const capacity = within('system capacity', record.capacity, 0.5e-3, 0.2, 'm3');
  const drained = within('drained volume', record.drained, 0, 0.4, 'm3');
  const refilled = within('refilled volume', record.refilled, 0, 0.4, 'm3');
  const allowance = Math.max(ALLOWANCE.share * capacity, ALLOWANCE.least);
  const missing = drained - refilled;
  return {
    verdict: judge({ capacity, drained, refilled, allowance }, record.takesNoMore),
    missing: cubicMetreDifference(missing),
    inside: cubicMetreDifference(capacity - missing),
    allowance: cubicMetre(allowance),
  };
}

function judge(
  {
    capacity,
    drained,
    refilled,
    allowance,
  }: Record<'capacity' | 'drained' | 'refilled' | 'allowance', number>,
  takesNoMore: boolean,
): FillVerdict {
  if (drained > capacity + allowance) return 'drained more than it holds';
  if (refilled > capacity + allowance) return 'took more than it holds';
  if (drained - refilled > allowance) return takesNoMore ? 'air inside' : 'keep filling';
  return refilled - drained > allowance ? 'took more than drained' : 'full';
}
