/** Whether the drive ever asked for the fan, and whether it came: a fan that was not needed is not judged. */
import type { FanCourse, FanRun } from './fan-course.ts';
import type { Grid } from './grid.ts';
import { type Drive, type Stretch, stretchesWhere } from './stretches.ts';
import type { TraceVehicle } from './vehicle.ts';

export type FanAsked =
  /** Ran about where it should. `rose`: switched on for minutes by the log, and the reading went on to rise from and to, K. */
  | { is: 'came'; runs: readonly FanRun[]; rose: RoseOn | undefined }
  /** Over its start for minutes, and nothing shows that it ran: seconds, and the highest then in K. */
  | { is: 'did not show'; at: number; seconds: number; highest: number }
  /** Never so warm, or only for moments. */
  | { is: 'not asked'; secondsOver: number };

export interface RoseOn {
  /** Seconds. */
  at: number;
  from: number;
  to: number;
}

/** A fan that turns stops the rise within this, K, and in this time, s. */
const STOPS_RISE = 3;
const STOPS_WITHIN = 120;

/** A switch and a sensor are each a degree or two out: so far over its start a fan has been asked for, K. */
const OVER = 1;
/** And for so long, s. */
const LASTING = 120;
/** A fan that ran so far under its start ran for the air conditioning, or always, K. */
const UNDER_START = 5;
/** A switch in the radiator feels the outlet, cooler than what the reading shows by about this (common practice), K. */
export const SWITCH_IN_RADIATOR = 6;

/**
 * Switched on and off by itself at readings so far under its start: the fan is sound and the reading low, or the figure
 * is another car's, K. A switch is 2 to 3 K out and so is a sensor.
 */
const OTHER_FIGURE = 7;
/** Starts within this of each other come from the temperature; the air conditioning's come at any, K. */
const ALIKE = 3;
/** A fan that stops this much cooler than it started was switched for the coolant, K. */
const COOLED = 2;

/** Reading at which the fan came and went more than once by its own column, far under its start, K. */
export function fanAtOtherFigure({ fanOn }: TraceVehicle, fan: FanCourse): number | undefined {
  if (fan.from !== 'column' || fanOn.from === 'general') return undefined;
  const cycles = fan.runs.filter(({ on, off }) => off !== undefined && on - off > COOLED);
  const starts = cycles.map(({ on }) => on);
  const [least, most] = [Math.min(...starts), Math.max(...starts)];
  const low = cycles.length > 1 && most - least < ALIKE && most < fanOn.low - OTHER_FIGURE;
  return low ? most : undefined;
}

/** Reading at which the fan has to have started, K. */
export function fanLine({ fanOn, layout }: TraceVehicle): number {
  return fanOn.high + (layout['fan-switched-by'] === 'switch in the radiator' ? SWITCH_IN_RADIATOR : 0);
}

/** The run in which the reading rose most. Most logs hold what the control unit asks for, not what turns. */
function roseOn({ smooth, step, length }: Grid, runs: readonly FanRun[]): RoseOn | undefined {
  return runs
    .map(({ from, to = length * step, on }) => ({
      at: from,
      seconds: to - from,
      from: on,
      to: smooth[Math.min(length - 1, Math.round(to / step))] ?? Number.NaN,
    }))
    .filter(({ seconds, from, to }) => seconds >= STOPS_WITHIN && to - from >= STOPS_RISE)
    .sort((a, b) => b.to - b.from - (a.to - a.from))[0];
}

/** Without a column only standing shows a fan; at speed the wind does its work. */
export function fanAsked(
  grid: Grid,
  drive: Drive | undefined,
  vehicle: TraceVehicle,
  fan: FanCourse,
): FanAsked {
  const { smooth, step } = grid;
  const runs = fan.runs.filter(({ on }) => on > vehicle.fanOn.low - UNDER_START);
  if (runs.length > 0) return { is: 'came', runs, rose: roseOn(grid, runs) };
  const line = fanLine(vehicle) + OVER;
  const over = (at: number) => (smooth[at] ?? 0) > line;
  const places: readonly Stretch[] =
    fan.from === 'column' ? [{ from: 0, to: smooth.length - 1 }] : (drive?.standing ?? []);
  const stretches = places.flatMap(({ from, to }) =>
    stretchesWhere(to - from + 1, (at) => over(from + at), 1).map((each) => ({
      from: each.from + from,
      to: each.to + from,
    })),
  );
  const seconds = ({ from, to }: Stretch) => (to - from) * step;
  const longest = stretches.sort((a, b) => seconds(b) - seconds(a))[0];
  const secondsOver = longest ? seconds(longest) : 0;
  // With a general range nobody knows where this one starts.
  if (!longest || secondsOver < LASTING || vehicle.fanOn.from === 'general')
    return { is: 'not asked', secondsOver };
  const highest = smooth.subarray(longest.from, longest.to + 1).reduce((a, b) => Math.max(a, b), 0);
  return { is: 'did not show', at: longest.from * step, seconds: secondsOver, highest };
}
