/** Does it get too hot, and where: straight past its opening, standing without a fan, or at speed. */
import type { Band } from './expected-band.ts';
import { fanLine } from './fan-asked.ts';
import type { FanCourse } from './fan-course.ts';
import { extentOf, type Grid, riseOver } from './grid.ts';
import { SETTLED_RISE, type SettledStretch, settledAtSpeed } from './settled.ts';
import type { Drive, Stretch } from './stretches.ts';
import { acrossEngine, type TraceVehicle } from './vehicle.ts';
import type { WarmUpCourse } from './warm-up-course.ts';

export type HotSide =
  /**
   * `dip`: fell so far and came back, once, and nothing explains it, K. `overStamp`: held at this level, K, which is too
   * high with the thermostat at the outlet and usual with it at the pump's inlet.
   */
  | { is: 'not hot'; highest: number; dip: number | undefined; overStamp: number | undefined }
  /** Through the opening without a pause and on. */
  | { is: 'straight past'; at: number; highest: number; sure: boolean }
  /** Up and down by itself while hot. */
  | { is: 'swings'; at: number; highest: number; sure: boolean; swing: number }
  /** Standing, past where the fan should have come. */
  | { is: 'no fan'; at: number; highest: number; sure: boolean }
  /** Standing with the fan running, still climbing. */
  | { is: 'fan does not help'; at: number; highest: number; sure: boolean }
  /** Too hot, and nothing says where it was or what it did before. */
  | { is: 'too hot'; at: number; highest: number }
  /** At speed, above what a sound engine would read. */
  | { is: 'hot at speed'; at: number; highest: number; sure: boolean }
  /** Settled at moderate speed on a mild day, far over its stamp. */
  | { is: 'holds high'; at: number; highest: number; level: number };

export interface HotSideInput {
  grid: Grid;
  drive: Drive | undefined;
  band: Band | undefined;
  vehicle: TraceVehicle;
  course: WarmUpCourse;
  fan: FanCourse;
  /** Outside, K. */
  outside: number | undefined;
}

/** Past the fan's figure by so much, still climbing, the fan has not come: switches are 2 to 3 K out, K. */
const FAN_LATE = 4;
/** The same where the log's own fan column says that it stands still, K, for so long, s. */
const FAN_SEEN_STANDING = 2;
const SEEN_FOR = 120;
/** Too hot at speed when over the band by so much, K. */
const OVER_BAND = 4;
/** Falls and rises of so many K within a minute while hot and not standing before a fan are swings. */
const SWING = 7;

/** Says whether it gets too hot, when, and how. */
export function hotSide(input: HotSideInput): HotSide {
  const { grid, vehicle } = input;
  const { smooth, step } = grid;
  const { high: highest } = extentOf(smooth, 0, smooth.length);
  const over = firstLasting(grid, vehicle.stopAt.high + 1, 10);
  const swing = swings(input);
  if (swing && swing.times > 1 && (over === undefined || swing.at < over * step)) {
    const { at, largest, times } = swing;
    return { is: 'swings', highest, at, swing: largest, sure: times > 2 };
  }
  if (over !== undefined) return overheated(input, over, highest);
  const late = standingPastFan(input);
  if (late !== undefined && regulatedBefore(input, late))
    return { is: 'no fan', at: late * step, highest, sure: false };
  const inVain = standingWithFan(input);
  if (inVain !== undefined && regulatedBefore(input, inVain))
    return { is: 'fan does not help', at: inVain * step, highest, sure: false };
  if (wentStraightPast(input, smooth.indexOf(highest)) && staysHigh(input, highest))
    return { is: 'straight past', at: smooth.indexOf(highest) * step, highest, sure: false };
  const hot = hotStretch(input);
  if (hot) return { is: 'hot at speed', at: hot.from * step, highest, sure: false };
  const across = acrossEngine(vehicle);
  const high = heldOver(input, across);
  if (high) return { is: 'holds high', at: high.to * step, highest, level: high.level };
  const overStamp =
    vehicle.layout.thermostat === undefined ? heldOver(input, STAMP_AND_READING)?.level : undefined;
  return { is: 'not hot', highest, dip: swing?.largest, overStamp };
}

/** Past its opening without a pause, and never since let down to a usual figure at speed: that would be a thermostat at work. */
function wentStraightPast(input: HotSideInput, until: number): boolean {
  return input.course.straightPast && !heldAtSpeed(input, until) && !stoodUnderOpening(input, until);
}

/** Under its opening by more than stamp and reading are out, K. */
const SURELY_UNDER = 5;
/** On a day warmer than this the heater and the wind alone do not carry off what an engine makes at speed, K: 10 °C. */
const NO_FROST = 283;

/** Minutes level at speed under its opening on a warm day: with the way to the radiator shut it would have gone on climbing. */
function stoodUnderOpening({ grid, drive, vehicle, outside }: HotSideInput, until: number): boolean {
  if (!drive || outside === undefined || outside < NO_FROST) return false;
  return settledAtSpeed(grid, drive).some(
    ({ from, to, level, rise }) =>
      to < until &&
      (to - from) * grid.step >= HELD &&
      Math.abs(rise) < SETTLED_RISE &&
      level < vehicle.opens.low - SURELY_UNDER,
  );
}

/** Well past the opening, past where a fan would have come, and not let down again by anything. */
function staysHigh({ grid: { smooth }, vehicle }: HotSideInput, highest: number): boolean {
  const line = Math.max(vehicle.opens.high + 11, vehicle.fanOn.from === 'general' ? 0 : vehicle.fanOn.high);
  const after = extentOf(smooth, smooth.indexOf(highest), smooth.length);
  return highest > line && after.low > vehicle.opens.high + 7;
}

/** First point from which it stays over a figure for so many seconds. */
function firstLasting({ smooth, step }: Grid, kelvin: number, seconds: number): number | undefined {
  let since = 0;
  for (let at = 0; at < smooth.length; at++) {
    since = (smooth[at] ?? 0) > kelvin ? since + step : 0;
    if (since >= seconds) return at;
  }
  return undefined;
}

function overheated(input: HotSideInput, over: number, highest: number): HotSide {
  const { grid, drive, fan, vehicle } = input;
  const at = over * grid.step;
  if (wentStraightPast(input, over)) return { is: 'straight past', at, highest, sure: true };
  const minute = Math.round(60 / grid.step);
  const standing = drive?.standing.find(
    ({ from, to }) => from <= over - minute / 2 && to >= over - minute / 2,
  );
  if (!drive) return { is: 'too hot', at, highest };
  if (!standing) {
    // From cold to too hot, and at no time let down to a usual figure: the way to the radiator may never have opened.
    const neverLet =
      !regulatedBefore(input, over) && (grid.smooth.find(Number.isFinite) ?? 999) < vehicle.opens.low;
    return neverLet
      ? { is: 'straight past', at, highest, sure: false }
      : { is: 'hot at speed', at, highest, sure: true };
  }
  // Hot already when it came to a stand: what follows is not the fan's fault.
  const arrived = grid.smooth[standing.from] ?? 0;
  if (arrived > vehicle.fanOn.high + 1) return { is: 'too hot', at, highest };
  if (!regulatedBefore(input, standing.from)) return { is: 'too hot', at, highest };
  const ran = fan.from === 'column' && fan.runs.some(({ from, to }) => from < at && (to ?? at) > at - 120);
  return ran
    ? { is: 'fan does not help', at, highest, sure: true }
    : { is: 'no fan', at, highest, sure: fan.from === 'column' };
}

/** Whether the thermostat is known to let the heat out: a pause at the opening, or minutes at speed at a usual figure. */
function regulatedBefore(input: HotSideInput, until: number): boolean {
  const { low, high } = input.vehicle.opens;
  const { pause } = input.course;
  if (pause && pause.kelvin > low - 7 && pause.kelvin < high + 7) return true;
  return heldAtSpeed(input, until);
}

/** What moves by more is not held, only passed, K. */
const STEADY = 6;

function heldAtSpeed({ grid, drive, vehicle }: HotSideInput, until: number): boolean {
  const { low, high } = vehicle.opens;
  return (drive?.atSpeed ?? []).some(({ from, to }) => {
    const { low: least, high: most } = extentOf(grid.smooth, Math.round((from + to) / 2), to);
    const steady = most - least < STEADY;
    return to < until && steady && most > low - 8 && most < Math.max(high + 9, vehicle.cruise.high + 3);
  });
}

/** Standing, past the fan's figure for a minute, and not falling. */
function standingPastFan({ grid, drive, vehicle, fan }: HotSideInput): number | undefined {
  if (vehicle.fanOn.from === 'general' && fan.from !== 'column') return undefined;
  if (fan.from === 'column') return standingWithoutFan(grid, drive, fanLine(vehicle), fan);
  const line = fanLine(vehicle) + FAN_LATE;
  const minute = Math.round(60 / grid.step);
  for (const { from, to } of drive?.standing ?? []) {
    for (let at = from; at + minute <= to; at++) {
      if (!((grid.smooth[at] ?? 0) > line)) continue;
      if (riseOver(grid, at, at + minute) > 0.002) return at + minute;
      break;
    }
  }
  return undefined;
}

/** Ordered at a stand for so long, s, a fan that turns has the reading falling. */
const ORDERED_FOR = 120;

/** Ordered at a stand by the log's column, minutes later well over its start and still climbing. */
function standingWithFan({ grid, drive, vehicle, fan }: HotSideInput): number | undefined {
  if (vehicle.fanOn.from === 'general' || fan.from !== 'column') return undefined;
  const { smooth, step } = grid;
  const points = (seconds: number) => Math.round(seconds / step);
  const line = fanLine(vehicle) + FAN_LATE;
  for (const { from, to } of drive?.standing ?? [])
    for (const run of fan.runs) {
      const begun = Math.round(run.from / step);
      if (begun < from || begun > to) continue;
      const end = Math.min(to, Math.round((run.to ?? grid.length * step) / step));
      for (let at = begun + points(ORDERED_FOR); at <= end; at++)
        if ((smooth[at] ?? 0) > line && riseOver(grid, at - points(60), at) > 0.002) return at;
    }
  return undefined;
}

/** Two minutes over the fan's figure with the log's own column saying that it stands still. */
function standingWithoutFan(
  { smooth, step }: Grid,
  drive: Drive | undefined,
  starts: number,
  fan: FanCourse,
): number | undefined {
  // One that came later, at a higher figure, is not dead.
  if (fan.runs.some(({ on }) => on > starts)) return undefined;
  const ran = (at: number) =>
    fan.runs.some((run) => run.from <= at * step && (run.to ?? Number.POSITIVE_INFINITY) >= at * step);
  for (const { from, to } of drive?.standing ?? []) {
    let seconds = 0;
    for (let at = from; at <= to; at++) {
      seconds = (smooth[at] ?? 0) > starts + FAN_SEEN_STANDING && !ran(at) ? seconds + step : 0;
      if (seconds >= SEEN_FOR) return at;
    }
  }
  return undefined;
}

/** Half the lift, and nearly all of it: full lift is 10 to 15 K above the opening by the trade, K. */
export const HALF_LIFT = 8;
const FULL_LIFT = 12;
/** Makers size a radiator for top speed in the heat. At this, m/s (108 km/h), and 25 °C it needs no half lift, faster no full one. */
const MODERATE = 30;
const MILD = 298;
/** Settled for so long, s. */
const HELD = 240;
/**
 * Colder than this the water that comes back from the radiator keeps a thermostat in the inlet nearly shut, and the
 * outlet stands far over the stamp with nothing wrong, K: −10 °C.
 */
const HARD_FROST = 263;

/** A reading and a stamp are each out by about this, K. */
const STAMP_AND_READING = 1;

/**
 * A steady figure on a mild day, half the lift and more above the stamp: the heat does not get out as it should.
 * @param beyond what is allowed on top of the lift, K
 */
function heldOver(
  { grid, drive, vehicle, outside }: HotSideInput,
  beyond: number,
): SettledStretch | undefined {
  const { speed } = grid.signals;
  if (!drive || !speed || outside === undefined || outside > MILD) return undefined;
  if (outside < HARD_FROST && acrossEngine(vehicle) > 0) return undefined;
  const { opens, cruise } = vehicle;
  const usual = cruise.from === 'vehicle' ? cruise.high + 2 : 0;
  const minutes = Math.round(HELD / grid.step);
  return settledAtSpeed(grid, drive).find(({ from, to, level, rise }) => {
    if (rise < -SETTLED_RISE || to - from < minutes) return false;
    const fast = extentOf(speed, to - minutes, to).high > MODERATE;
    const over = (fast ? FULL_LIFT : HALF_LIFT) + beyond;
    return level > Math.max(usual, opens.high + over);
  });
}

function hotStretch({ grid, drive, band, vehicle }: HotSideInput): Stretch | undefined {
  if (!band) return undefined;
  const minute = Math.round(60 / grid.step);
  return drive?.atSpeed.find(({ from, to }) => {
    let seconds = 0;
    for (let at = from + 2 * minute; at <= to; at++) {
      const value = grid.smooth[at] ?? 0;
      const usual = Math.max(band.high[at] ?? Number.POSITIVE_INFINITY, vehicle.cruise.high);
      const line = usual + OVER_BAND + acrossEngine(vehicle);
      seconds = value > line ? seconds + grid.step : 0;
      if (seconds >= 60) return true;
    }
    return false;
  });
}

/** Quick falls while hot that nothing explains: no fan at standstill, no thermostat letting cold water in for the first time. */
function swings({
  grid,
  drive,
  vehicle,
}: HotSideInput): { at: number; largest: number; times: number } | undefined {
  const { smooth, step } = grid;
  const near = Math.round(40 / step);
  const hot = vehicle.opens.low - 8;
  const first = smooth.findIndex((each) => each > hot);
  if (first === -1) return undefined;
  let count = 0;
  let largest = 0;
  let firstAt = 0;
  for (let at = first; at + near < smooth.length; at++) {
    const here = smooth[at] ?? 0;
    if (here < hot || (at - first) * step < 90) continue;
    const fall = here - (smooth[at + near] ?? here);
    if (!(fall >= SWING)) continue;
    const standing = drive?.standing.some(({ from, to }) => from <= at + near && to >= at);
    if (standing !== false && here > vehicle.fanOn.low - 5) continue;
    // Then it must come back by itself within two minutes; standing as quickly as it fell, or it is the tooth of a fan
    // that starts at another figure than is known.
    const within = standing === false ? 120 : 40;
    const lowest = standing === false ? at + near : lowestFrom(smooth, at + near, near);
    const back = extentOf(smooth, lowest, lowest + Math.round(within / step)).high - (smooth[lowest] ?? 0);
    if (!(back >= 0.6 * SWING)) continue;
    count++;
    if (count === 1) firstAt = at * step;
    largest = Math.max(largest, fall);
    at += near;
  }
  return count > 0 ? { at: firstAt, largest, times: count } : undefined;
}

/** The first low point from here on, within so many points. */
function lowestFrom(smooth: Float64Array, from: number, most: number): number {
  let at = from;
  while (at < from + most && (smooth[at + 1] ?? Number.POSITIVE_INFINITY) <= (smooth[at] ?? 0)) at++;
  return at;
}
