/**
 * A reading that no longer moves. Regulated coolant stands still too, for minutes and to the degree a tool gives; so a
 * reading is nobody's blame for standing. Only one that came by a step, as a controller's substitute does, and never
 * moves again to the end is surely not the coolant. One that stands where no engine does makes the log doubtful.
 */
import { ZERO_CELSIUS } from '../physics/units.ts';
import { extentOf, type Grid } from './grid.ts';
import type { Channel } from './read/read-log.ts';
import { isLeap } from './sensor-faults.ts';
import type { Drive } from './stretches.ts';

export interface StandingReading {
  /** Seconds from the start, to the end of the log. */
  at: number;
  seconds: number;
  readings: number;
  /** Before it, and the figure it stands at, K. */
  from: number;
  to: number;
  /** Came by a step: a substitute. Otherwise it makes the log doubtful and no more. */
  byStep: boolean;
}

/** All of it within so much, K. */
const STILL_WITHIN = 0.3;
/** A step is at least so much, and so much more for each second between the two readings: K, K/s. */
const STEP = 3;
const STEP_RATE = 0.6;
/** Readings further apart than this say nothing about steps, s. */
const STEP_LONGEST = 8;
/** Stands for so long, driven at changing speed or not, s. */
const STANDS_DRIVEN = 240;
const STANDS = 480;
/** After a leap that no coolant makes, so long is enough whatever the drive does, s. */
const STANDS_AFTER_LEAP = 120;
/** While the speed moved by so much, m/s. */
const SPEED_MOVED = 8;
/** At speed and standing alike for so long, s: then even whole degrees would have moved. */
const EVERYWHERE = 900;
/** An engine no warmer than the air by this is cold: driven, it gains degrees each minute, thermostat or not, K. */
const WARMER_THAN_AIR = 15;
/** A log that shows steps as small as this would show any coolant move, K. */
const FINE = 0.3;
/** Nearer to its opening than this a thermostat holds a figure, K; what rose like this does not stop at once elsewhere, K/s. */
const REGULATED = 12;
const ROSE = 0.03;
/** Rise before it is taken over so long, s. */
const BEFORE = 60;

/**
 * The figure at which the reading stands to the end of the log, if no coolant would.
 *
 * @param channel the readings as logged
 * @param opens where the thermostat should start to open, K
 * @param outside K, from something else than the coolant itself
 */
export function standingReading(
  channel: Channel,
  grid: Grid,
  drive: Drive | undefined,
  opens: number,
  outside: number | undefined,
): StandingReading | undefined {
  const { time, value } = channel;
  const to = value.at(-1) ?? Number.NaN;
  // The ends of the scale are a wire's, and said as such.
  if (!(to > ZERO_CELSIUS - 39.4 && to < ZERO_CELSIUS + 148)) return undefined;
  let from = value.length - 1;
  while (from > 0 && Math.abs((value[from - 1] ?? Number.NaN) - to) <= STILL_WITHIN) from--;
  const at = time[from] ?? 0;
  const seconds = (time.at(-1) ?? at) - at;
  const { speed } = grid.signals;
  const [first, last] = [Math.round(at / grid.step), grid.length - 1];
  const extent = speed && extentOf(speed, first, last);
  const driven = extent !== undefined && extent.high - extent.low > SPEED_MOVED;
  const found = { at, seconds, readings: value.length - from, from: value[from - 1] ?? to, to };
  const wanted = leaps(channel, from) ? STANDS_AFTER_LEAP : driven ? STANDS_DRIVEN : STANDS;
  if (stepsAt(channel, from) && seconds >= wanted) return { ...found, byStep: true };
  const stood = drive?.standing.some((each) => each.from >= first && each.to <= last) ?? false;
  const nearAir = outside !== undefined && to < outside + WARMER_THAN_AIR;
  const doubtful =
    (nearAir && driven && seconds >= STANDS_DRIVEN) ||
    (driven && stood && seconds >= EVERYWHERE && (from === 0 || Math.abs(to - opens) > REGULATED)) ||
    (seconds >= STANDS && finestStep(channel) <= FINE) ||
    (seconds >= STANDS && to < opens - REGULATED && roseBefore(channel, from));
  return doubtful ? { ...found, byStep: false } : undefined;
}

function stepsAt({ time, value }: Channel, at: number): boolean {
  if (at === 0) return false;
  const gap = (time[at] ?? 0) - (time[at - 1] ?? 0);
  const step = Math.abs((value[at] ?? 0) - (value[at - 1] ?? 0));
  return gap <= STEP_LONGEST && step >= STEP + STEP_RATE * gap;
}

/** Whether it came by more than any coolant changes between two readings. */
function leaps({ time, value }: Channel, at: number): boolean {
  const gap = (time[at] ?? 0) - (time[at - 1] ?? Number.NaN);
  return isLeap((value[at] ?? 0) - (value[at - 1] ?? 0), gap);
}

function roseBefore({ time, value }: Channel, at: number): boolean {
  const since = (time[at] ?? 0) - BEFORE;
  const before = time.findIndex((each) => each >= since);
  const span = (time[at] ?? 0) - (time[before] ?? 0);
  return span > 0.5 * BEFORE && ((value[at] ?? 0) - (value[before] ?? 0)) / span > ROSE;
}

/** Smallest change between two readings that are not alike, K. */
function finestStep({ value }: Channel): number {
  let finest = Number.POSITIVE_INFINITY;
  for (let at = 1; at < value.length; at++) {
    const step = Math.abs((value[at] ?? 0) - (value[at - 1] ?? 0));
    if (step > 1e-6 && step < finest) finest = step;
  }
  return finest;
}
