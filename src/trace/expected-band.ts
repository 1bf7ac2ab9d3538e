/**
 * What a sound engine of this kind would have read on this drive and this day, as a band; and the most that one with
 * its thermostat stuck open would have read. Both from the lumped model, run at the ends of what is not known: heat
 * of the engine, heater, wind, tolerance of the thermostat.
 */

import { kelvin, second } from '../physics/units.ts';
import {
  fitHeat,
  type WarmUpConditions,
  type WarmUpDrive,
  type WarmUpVehicle,
  warmUp,
} from '../physics/warm-up-model.ts';
import type { Grid } from './grid.ts';
import type { TraceVehicle } from './vehicle.ts';

export interface Band {
  /** K by point of the grid. */
  low: Float64Array;
  high: Float64Array;
  /** The warmest an engine with its thermostat stuck open, a third and more, could be. */
  openHigh: Float64Array;
}

/** What the person says of the heater. Unknown widens the band by the whole of it. */
export type HeaterSetting = 'off' | 'on' | 'unknown';

/**
 * Heat of one engine beside the fitted one: load, wind, gears and a rough timing are all in it. The general range of
 * warm-up times holds the differences between engines already.
 */
const HEAT_ENDS = {
  vehicle: [0.6, 1.6],
  nearest: [0.6, 1.6],
  general: [0.8, 1.25],
  computed: [0.6, 1.6],
} as const;
/** Least and most the heater takes. */
const HEATERS = { off: [0, 0.1], on: [0.3, 1], unknown: [0, 1] } as const;
/** A thermostat starts within 2 K of its stamp (maker's page); a degree more for the sensor. */
export const STAMP_TOLERANCE = 3;
/** Stuck open by less than this often still holds, and no drive tells it from a sound one. */
const STUCK_OPEN_LEAST = 0.3;
/** The wax follows late and the model knows the moment of nothing: the band takes in its surroundings, s. */
const BLUR = 25;

/** @param outside K @returns undefined without road speed, or when a figure is out of the model's range */
export function expectedBand(
  grid: Grid,
  vehicle: TraceVehicle,
  outside: number,
  start: number,
  heater: HeaterSetting,
): Band | undefined {
  const drive = modelDrive(grid, outside, start);
  if (!drive) return undefined;
  const { cold, hot } = endsOf(vehicle, heater);
  const run = ({ figures, conditions }: End) => warmUp(figures, drive, inRange(conditions));
  const runs = [run(cold), run(hot), run({ ...hot, conditions: { ...hot.conditions, air: 1 } })];
  const blur = Math.round(BLUR / grid.step);
  const open = run({ ...hot, conditions: { ...hot.conditions, air: 0.8, leak: STUCK_OPEN_LEAST } });
  return {
    low: slidingExtreme(pointwise(runs, Math.min), blur, Math.min),
    high: slidingExtreme(pointwise(runs, Math.max), blur, Math.max),
    openHigh: slidingExtreme(open, blur, Math.max),
  };
}

/**
 * The coldest a sound engine could have been from a point of the log on, had it been there as warm as this one was.
 *
 * @param outside K @param at point of the grid @returns K by point from there on; undefined in a gap of the log,
 * without road speed, or out of the model's range
 */
export function leastFrom(
  grid: Grid,
  vehicle: TraceVehicle,
  outside: number,
  heater: HeaterSetting,
  at: number,
): Float64Array | undefined {
  const start = grid.smooth[at] ?? Number.NaN;
  // In a gap of the log nobody knows how warm it was.
  const drive = Number.isFinite(start) ? modelDrive(grid, outside, start) : undefined;
  if (!drive) return undefined;
  const { figures, conditions } = endsOf(vehicle, heater).cold;
  const rest = { ...drive, speed: drive.speed.subarray(at), running: drive.running?.subarray(at) };
  return warmUp(figures, rest, inRange(conditions));
}

interface End {
  figures: WarmUpVehicle;
  conditions: WarmUpConditions;
}

function endsOf(vehicle: TraceVehicle, heater: HeaterSetting): Record<'cold' | 'hot', End> {
  const { low, high } = engineEnds(vehicle);
  const [lessHeat, moreHeat] = HEAT_ENDS[vehicle.warmUpTime.from];
  const [least, most] = HEATERS[heater];
  return {
    cold: {
      figures: low.figures,
      conditions: { heat: low.heat * lessHeat, heater: most, air: 1.5, leak: 0, shift: -STAMP_TOLERANCE },
    },
    hot: {
      figures: high.figures,
      conditions: { heat: high.heat * moreHeat, heater: least, air: 0.6, leak: 0, shift: STAMP_TOLERANCE },
    },
  };
}

function inRange(conditions: WarmUpConditions): WarmUpConditions {
  return { ...conditions, heat: Math.min(8, Math.max(0.1, conditions.heat)) };
}

/** The logged drive as the model takes it. @returns undefined without road speed, or out of the model's range */
export function modelDrive(grid: Grid, outside: number, start: number): WarmUpDrive | undefined {
  const { speed, rpm } = grid.signals;
  if (!speed) return undefined;
  const filled = filledSpeed(speed);
  if (outside < 200 || outside > 340 || filled.some((each) => each < 0 || each > 110)) return undefined;
  return {
    step: second(grid.step),
    speed: filled,
    running: rpm && Uint8Array.from(rpm, (each) => (each < 50 ? 0 : 1)),
    start: kelvin(Math.min(445, Math.max(205, start))),
    outside: kelvin(outside),
  };
}

/** The coldest and the hottest engine the vehicle's figures allow. */
export function engineEnds(
  vehicle: TraceVehicle,
): Record<'low' | 'high', { figures: WarmUpVehicle; heat: number }> {
  const end = (which: 'low' | 'high') => {
    const opens = kelvin(vehicle.opens[which]);
    const fullyOpen = kelvin(Math.max(opens + 5, vehicle.fullyOpen[which]));
    const on = vehicle.fanOn[which] + (which === 'high' ? 2 : -2);
    const off = Math.min(on - 1, vehicle.fanOff[which] - (which === 'high' ? 0 : 2));
    const figures: WarmUpVehicle = { opens, fullyOpen, fan: { on: kelvin(on), off: kelvin(off) } };
    const slowest = which === 'low' ? vehicle.warmUpTime.high : vehicle.warmUpTime.low;
    return { figures, heat: fitted(figures, slowest) };
  };
  return { low: end('low'), high: end('high') };
}

const fits = new Map<string, number>();

function fitted(figures: WarmUpVehicle, time: number): number {
  const key = `${figures.opens} ${figures.fullyOpen} ${time}`;
  const known = fits.get(key) ?? fitHeat(figures, second(Math.min(3600, Math.max(60, time))));
  fits.set(key, known);
  return known;
}

/** Gaps keep the last known speed. */
function filledSpeed(speed: Float64Array): Float64Array {
  let last = 0;
  return speed.map((each) => {
    if (Number.isFinite(each)) last = each;
    return last;
  });
}

function pointwise(runs: readonly Float64Array[], pick: (...values: number[]) => number): Float64Array {
  return Float64Array.from(runs[0] ?? [], (_, at) => pick(...runs.map((run) => run[at] ?? Number.NaN)));
}

/** Least or greatest within so many points on each side. */
function slidingExtreme(
  values: Float64Array,
  half: number,
  pick: (a: number, b: number) => number,
): Float64Array {
  // Two passes of block-wise running extremes (van Herk 1992, Gil and Werman 1993): the time does not grow with the width.
  const width = 2 * half + 1;
  const padded = Float64Array.from(
    { length: values.length + 2 * half },
    (_, at) => values[Math.min(values.length - 1, Math.max(0, at - half))] ?? Number.NaN,
  );
  const forward = padded.slice();
  const backward = padded.slice();
  for (let at = 1; at < padded.length; at++)
    if (at % width !== 0) forward[at] = pick(forward[at - 1] ?? 0, padded[at] ?? 0);
  for (let at = padded.length - 2; at >= 0; at--)
    if ((at + 1) % width !== 0) backward[at] = pick(backward[at + 1] ?? 0, padded[at] ?? 0);
  return values.map((_, at) => pick(backward[at] ?? 0, forward[at + width - 1] ?? 0));
}
