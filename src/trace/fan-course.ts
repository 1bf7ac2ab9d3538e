/** When the fan ran: from its column, or from the saw-tooth a fan draws at standstill. */
import type { Grid } from './grid.ts';
import type { Drive, Stretch } from './stretches.ts';
import type { TraceVehicle } from './vehicle.ts';

export interface FanRun {
  /** Seconds. */
  from: number;
  /** Undefined when it still ran at the end. */
  to: number | undefined;
  /** Coolant when it started and stopped, K. */
  on: number;
  off: number | undefined;
}

export interface FanCourse {
  /** Where it is from: the log's own column, or read off the temperature. */
  from: 'column' | 'temperature';
  runs: FanRun[];
  /** Share of the time from the first start on that it ran. */
  duty: number | undefined;
}

/** A fall at standstill of so many K within three minutes is a fan. */
const FAN_FALL = 2.5;
const FALL_TIME = 180;

/**
 * Runs of the fan, from its own column where the log has one, else from the teeth in the temperature while
 * standing.
 */
export function fanCourse(grid: Grid, drive: Drive | undefined, vehicle: TraceVehicle): FanCourse {
  const { fan } = grid.signals;
  if (fan) return { from: 'column', ...runsOfColumn(grid, fan) };
  const runs = (drive?.standing ?? []).flatMap((stretch) => sawTeeth(grid, stretch, vehicle));
  return { from: 'temperature', runs, duty: undefined };
}

function runsOfColumn(
  { smooth, step }: Grid,
  fan: Float64Array,
): { runs: FanRun[]; duty: number | undefined } {
  const top = fan.reduce((most, each) => Math.max(most, each), 0);
  const isOn = (at: number) => (fan[at] ?? 0) > (top > 1 ? 0.1 * top : 0.5);
  const runs: FanRun[] = [];
  let current: FanRun | undefined;
  let seconds = 0;
  for (let at = 0; at < fan.length; at++) {
    if (isOn(at)) {
      seconds += step;
      current ??= { from: at * step, to: undefined, on: smooth[at] ?? Number.NaN, off: undefined };
    } else if (current && Number.isFinite(fan[at])) {
      runs.push({ ...current, to: at * step, off: smooth[at] ?? Number.NaN });
      current = undefined;
    }
  }
  if (current) runs.push(current);
  const since = runs[0] && fan.length * step - runs[0].from;
  return { runs, duty: since ? seconds / since : undefined };
}

/** Peaks at standstill near the fan's figure that are followed by a quick fall. */
function sawTeeth({ smooth, step }: Grid, { from, to }: Stretch, vehicle: TraceVehicle): FanRun[] {
  const runs: FanRun[] = [];
  const reach = Math.round(FALL_TIME / step);
  for (let at = from + 1; at < to; at++) {
    const peak = smooth[at] ?? Number.NaN;
    if (!(peak > vehicle.fanOn.low - 5 && peak >= (smooth[at - 1] ?? 0) && peak > (smooth[at + 1] ?? 0)))
      continue;
    let low = at;
    while (
      low < to &&
      low - at < reach &&
      (smooth[low + 1] ?? Number.POSITIVE_INFINITY) <= (smooth[low] ?? 0) + 0.05
    )
      low++;
    if (peak - (smooth[low] ?? peak) < FAN_FALL) continue;
    // What goes on sinking for minutes only cools down: a fan stops.
    if (low - at >= reach) continue;
    runs.push({
      from: at * step,
      to: low < to ? low * step : undefined,
      on: peak,
      off: low < to ? smooth[low] : undefined,
    });
    at = low;
  }
  return runs;
}
