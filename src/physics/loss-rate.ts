import { EVEN_WITHIN } from './fill-account.ts';
import { within } from './out-of-range.ts';
import type { CubicMetre, CubicMetreDifference, CubicMetrePerSecond, Metre, Second } from './units.ts';

/** What was missing after a stretch of driving or standing. */
export interface LossWatch {
  /** Missing from the mark, −0.2 to 0.2 m3; negative when the level rose. */
  readonly lost: CubicMetreDifference;
  /** How far that may be off, either way, 0 to 0.1 m3. */
  readonly error: CubicMetre;
  /** Time between the two looks, an hour to two years; left out where nobody knows. */
  readonly time?: Second;
  /** Driven between the two looks, 1 to 100,000 km; left out where nobody knows. */
  readonly distance?: Metre;
  /** It had just been filled: air that comes out lets the level settle once. */
  readonly justFilled: boolean;
}

export type LossVerdict =
  /** No more than any tank breathes, over a stretch that is long enough. */
  | 'nothing lost'
  /** Nothing is missing, and the stretch is too short to say so of the car. */
  | 'too short'
  /** The error is larger than what would count as a loss. */
  | 'cannot tell'
  /** The level went up. */
  | 'rose'
  /** More than nothing, less than a loss is called from. */
  | 'undecided'
  /** Just filled: what has gone is no more than air lets a level settle. */
  | 'settles'
  | 'loses'
  /** So much that the car is not sent on the road. */
  | 'loses fast';

export interface LossRate {
  readonly verdict: LossVerdict;
  /** m3/s; left out with the time. */
  readonly byTime?: number;
  /** m3 a metre; left out with the distance. */
  readonly byDistance?: number;
}

/**
 * Less than this is no loss, and from the second on it is one, m3. The record of the watched level goes by the same. Common
 * practice, no source.
 */
export const NO_LOSS_BELOW = 0.05e-3;
export const LOSS_FROM = 0.15e-3;
/** A level that stands after so long or so far stands, s and m. The record's 300 km; the days common practice, no source. */
export const WATCHED = { time: 14 * 86_400, distance: 300e3 } as const;
/** After a fill the level may settle by so much once, m3: air that comes out. What a fill may be out. */
export const SETTLES_BY = EVEN_WITHIN.usual;
/** So fast it is not driven on: a third of a litre a day, or a litre in 1,000 km; m3/s and m3/m. Common practice, no source. */
const FAST = { byTime: 0.33e-3 / 86_400, byDistance: 1e-3 / 1e6 } as const;
/** Two decimals that were subtracted do not meet to the last bit, m3. */
const DROP = 1e-9;

/**
 * Judges how much coolant is lost, and how fast.
 *
 * Litres over time and distance. It stops a car only where it is a loss past its error.
 * @throws OutOfRange on any figure
 */
export function judgeLoss(watch: LossWatch): LossRate {
  const lost = within('coolant lost', watch.lost, -0.2, 0.2, 'm3');
  const error = within('error of the loss', watch.error, 0, 0.1, 'm3');
  const { time, distance } = watch;
  if (time !== undefined) within('time between the looks', time, 3600, 2 * 366 * 86_400, 's');
  if (distance !== undefined) within('distance driven', distance, 1e3, 1e8, 'm');
  const [byTime, byDistance] = [ratio(lost, time), ratio(lost, distance)];
  return {
    verdict: verdictOf(lost, error, watch),
    ...(byTime !== undefined && { byTime }),
    ...(byDistance !== undefined && { byDistance }),
  };
}

function verdictOf(lost: number, error: number, watch: LossWatch): LossVerdict {
  if (lost < -Math.max(error, NO_LOSS_BELOW)) return 'rose';
  const surely = lost - error;
  // As fast as the pace that is read out: only whether it is a loss at all waits for the error.
  if (surely >= LOSS_FROM && isFast(watch.justFilled ? surely - SETTLES_BY : lost, watch))
    return 'loses fast';
  if (lost < NO_LOSS_BELOW - DROP) {
    if (error > LOSS_FROM) return 'cannot tell';
    const { time = 0, distance = 0 } = watch;
    return time >= WATCHED.time || distance >= WATCHED.distance ? 'nothing lost' : 'too short';
  }
  if (watch.justFilled && lost <= SETTLES_BY + DROP) return 'settles';
  if (lost < error) return 'cannot tell';
  return lost < LOSS_FROM - DROP ? 'undecided' : 'loses';
}

function isFast(lost: number, { time, distance }: LossWatch): boolean {
  const quickInTime = time !== undefined && lost + DROP >= FAST.byTime * time;
  const quickOnRoad = distance !== undefined && lost + DROP >= FAST.byDistance * distance;
  return quickInTime || quickOnRoad;
}

function ratio(lost: number, over: number | undefined): number | undefined {
  return over === undefined ? undefined : lost / over;
}

/** How long or how far until so much more is gone at the pace seen; the sooner end first. */
export interface RemainingTime {
  readonly soonest: number;
  /** Left out where the loss may be nothing within its error. */
  readonly latest?: number;
}

/**
 * Days or kilometres that what is left lasts, in the unit of `over`.
 *
 * @param left above the low mark, 0 to 0.2 m3
 * @param over time or distance in which `lost` went, above 0
 * @throws OutOfRange on any figure, and when nothing was lost
 */
export function lastsFor(left: CubicMetre, lost: number, error: number, over: Second | Metre): RemainingTime {
  const room = within('coolant above the low mark', left, 0, 0.2, 'm3');
  const gone = within('coolant lost', lost, 1e-9, 0.2, 'm3');
  const doubt = within('error of the loss', error, 0, 0.1, 'm3');
  const stretch = within('stretch', over, 1, 1e9, '1');
  const soonest = (room / (gone + doubt)) * stretch;
  return gone > doubt * (1 + 1e-6) ? { soonest, latest: (room / (gone - doubt)) * stretch } : { soonest };
}

/** A tester's rate is good to a factor: the air inside, the pressure of the road, hours warm. Common practice, no source. */
export const TESTER_FACTOR = 3;
/** Usual mean speed where only the distance is known, m/s: 40 km/h. Common practice, no source. */
const MEAN_SPEED = 40 / 3.6;

export interface AgainstTester {
  /** What the leak on the tester would lose while the engine is warm, m3. */
  readonly expected: number;
  readonly accounts: 'for it' | 'for less than is lost' | 'for more than is lost';
}

/**
 * Whether the leak that the tester showed accounts for what is lost on the road.
 *
 * @param rate by the tester, 0 to 0.001 m3/s
 * @param hours warm, or the distance to reckon them from at 40 km/h, s
 * @throws OutOfRange on any figure
 */
export function againstTester(lost: number, rate: CubicMetrePerSecond, hours: Second): AgainstTester {
  const leak = within('leak on the tester', rate, 0, 1e-3, 'm3/s');
  const expected = leak * within('time warm', hours, 0, 1e8, 's');
  const accounts =
    lost > expected * TESTER_FACTOR
      ? 'for less than is lost'
      : lost < expected / TESTER_FACTOR
        ? 'for more than is lost'
        : 'for it';
  return { expected, accounts };
}

/** Time at the wheel for a distance, s, at 40 km/h. @param distance 0 to 100,000 km @throws OutOfRange */
export function usualTimeFor(distance: Metre): number {
  return within('distance driven', distance, 0, 1e8, 'm') / MEAN_SPEED;
}
