/** The first rise: when it passed which temperature, whether it paused at the opening, whether it went straight past. */
import { extentOf, type Grid, riseOver } from './grid.ts';
import { acrossEngine, type TraceVehicle } from './vehicle.ts';

export interface WarmUpCourse {
  /** Seconds at which each temperature (K) was first reached. */
  milestones: { kelvin: number; at: number }[];
  /** Where the rise stopped or slowed to a quarter for a while: s and K. */
  pause: { at: number; kelvin: number } | undefined;
  /** It went through the opening and on for `PAST` K with hardly less rise than before. */
  straightPast: boolean;
  /** Highest rise over a minute, K/s. */
  steepest: number;
}

/** °C at which the time is taken. */
const MILESTONES = [40, 50, 60, 70, 80];
/** Rise compared over this time, s. */
const WINDOW = 50;
/** A pause rises at less than this share of the minute and a half before it. */
const PAUSE_SHARE = 0.3;
/** More than this faster is speeding up, m/s. */
const SPEEDING_UP = 4;
/** Slower than this is no rise to pause in, K/s. */
const LEAST_RISE = 0.02;
/** A sound thermostat has stopped the rise this far above its opening, in K. */
const PAST = 9;
/** Started warmer than so far under the opening, K. */
const WARM_START = 15;
/** Slower than this makes no wind, m/s. */
const WIND = 3;
/** A rise of so many K before the opening is needed to hold the rest against, K. */
const LEAST_BEFORE = 5;

/** When the first rise passed its milestones, how fast, and where it paused. */
export function warmUpCourse(grid: Grid, vehicle: TraceVehicle): WarmUpCourse {
  const { smooth, step } = grid;
  const opens = vehicle.opens.low;
  const wanted = [...MILESTONES.map((celsius) => celsius + 273.15), opens, vehicle.stopAt.high];
  const start = smooth.find(Number.isFinite) ?? 0;
  const milestones = wanted
    .filter((kelvin) => kelvin > start + 1)
    .map((kelvin) => ({ kelvin, at: smooth.findIndex((each) => each >= kelvin) * step }))
    .filter(({ at }) => at > 0);
  const pause = start < opens - 15 ? findPause(grid) : undefined;
  // With the thermostat in the inlet the outlet, where the sensor sits, is hotter when it opens.
  const latest = vehicle.opens.high + 6 + acrossEngine(vehicle);
  const brokeOff = pause !== undefined && pause.kelvin > opens - 7 && pause.kelvin < latest;
  return {
    milestones: milestones.sort((a, b) => a.at - b.at),
    pause,
    straightPast: !brokeOff && goesStraightPast(grid, vehicle, start),
    steepest: steepestRise(grid),
  };
}

function findPause(grid: Grid): WarmUpCourse['pause'] {
  const { smooth, step, signals } = grid;
  const window = Math.round(WINDOW / step);
  const { speed } = signals;
  const mean = (from: number, to: number) => {
    let sum = 0;
    for (let at = from; at < to; at++) sum += speed?.[at] ?? 0;
    return sum / Math.max(1, to - from);
  };
  const end = Math.min(smooth.length - window, endOfFirstRise(grid));
  for (let at = 2 * window; at < end; at++) {
    const before = riseOver(grid, at - 2 * window, at);
    const after = riseOver(grid, at, at + window);
    if (!(before > LEAST_RISE) || !(after < PAUSE_SHARE * before)) continue;
    // Slowing down makes a pause too, and speeding up cools an engine whose thermostat stands open.
    const [was, is] = [mean(at - 2 * window, at), mean(at, at + window)];
    if (speed && (is < 0.7 * was - 0.5 || is > was + SPEEDING_UP)) continue;
    if ((smooth[at] ?? 0) < 323) continue;
    return { at: at * step, kelvin: smooth[at] ?? 0 };
  }
  return undefined;
}

/** Risen by so much from the start, K, it has begun to warm up. */
const BEGUN = 15;
/** Five minutes without rising by more than this, or a fall of so much: the first rise is over, K. */
const LEVEL = 1.5;
const LEVEL_FOR = 300;
const FELL = 4;
/** Speeding up hides the break for so long, s. */
const HIDDEN = 180;

/** The point after which nothing is the first rise any more: a thermostat opens once from cold. */
function endOfFirstRise({ smooth, step }: Grid): number {
  const start = smooth.find(Number.isFinite) ?? 0;
  const span = Math.round(LEVEL_FOR / step);
  const hidden = Math.round(HIDDEN / step);
  let top = start;
  let since = 0;
  for (let at = 0; at < smooth.length; at++) {
    const here = smooth[at] ?? Number.NaN;
    if (here > top + LEVEL) {
      top = here;
      since = at;
    }
    if (top < start + BEGUN) since = at;
    else if (at - since > span) return since + hidden;
    else if (here < top - FELL) return at + hidden;
  }
  return smooth.length;
}

function goesStraightPast({ smooth, signals }: Grid, vehicle: TraceVehicle, start: number): boolean {
  const opens = vehicle.opens.high + 2;
  const from = Math.max(opens - 10, start + 1);
  if (opens - from < LEAST_BEFORE) return false;
  const when = (kelvin: number) => smooth.findIndex((each) => each >= kelvin);
  const [before, at, past] = [when(from), when(opens), when(opens + PAST)];
  if (before < 1 || at <= before || past <= at) return false;
  // Started warm, the radiator has no cold water left to make a pause, and standing no wind to take the heat.
  const { speed } = signals;
  if (speed && start > vehicle.opens.low - WARM_START && extentOf(speed, at, past).high < WIND) return false;
  return (past - at) / PAST < (1.5 * (at - before)) / (opens - from);
}

function steepestRise(grid: Grid): number {
  const minute = Math.round(60 / grid.step);
  let steepest = 0;
  for (let at = 0; at + minute < grid.length; at++) {
    const rise = riseOver(grid, at, at + minute);
    if (rise > steepest) steepest = rise;
  }
  return steepest;
}
