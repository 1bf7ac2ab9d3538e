/** Falls in the first rise that come back as quickly: air or steam passes the sensor while the thermostat is still shut. */
import { extentOf, type Grid } from './grid.ts';
import type { TraceVehicle } from './vehicle.ts';

export interface RiseDips {
  times: number;
  /** s, of the first. */
  at: number;
  /** K, of the deepest. */
  deepest: number;
}

/**
 * Under its opening a full circuit has no colder water to send past the sensor but what the heater or a by-pass held,
 * and from that it comes back no faster than the engine warms. K, within so many seconds.
 */
const DIP = 5;
const DIP_WITHIN = 30;
/** It is back by so much of the fall in so many seconds: a sensor follows within ten. */
const DIP_BACK = 0.7;
const DIP_BACK_WITHIN = 25;
/** Coolant that has hardly warmed cannot be told from the air, K over the start. */
const DIP_WARMED = 15;
/** So far under the opening nothing has come from the radiator, K. */
const STILL_SHUT = 8;
/** A standing engine sorts its water by warmth, and started it mixes, s. */
const RUNS_FOR = 60;

/** Dips of the first rise. @returns undefined when there are none, or the log begins warm */
export function riseDips({ signals, step }: Grid, { opens }: TraceVehicle): RiseDips | undefined {
  const { coolant, rpm } = signals;
  const points = (seconds: number) => Math.max(1, Math.round(seconds / step));
  const begun = (coolant.find(Number.isFinite) ?? Number.POSITIVE_INFINITY) + DIP_WARMED;
  const end = coolant.findIndex((each) => each >= opens.low - STILL_SHUT);
  let dips: RiseDips | undefined;
  let since = RUNS_FOR;
  for (let at = 1; at < end; at++) {
    const here = coolant[at] ?? Number.NaN;
    since = rpm === undefined || (rpm[at] ?? 1000) > 50 ? since + step : 0;
    const top = extentOf(coolant, at - points(DIP_WITHIN), at).high;
    if (top < begun || top - here < DIP || since < RUNS_FOR) continue;
    const lowest = lowestWithin(coolant, at, points(DIP_WITHIN));
    const fall = top - (coolant[lowest] ?? here);
    const back = extentOf(coolant, lowest, lowest + points(DIP_BACK_WITHIN)).high - (coolant[lowest] ?? here);
    if (back >= DIP_BACK * fall)
      dips = {
        times: (dips?.times ?? 0) + 1,
        at: dips?.at ?? at * step,
        deepest: Math.max(dips?.deepest ?? 0, fall),
      };
    at = lowest + points(DIP_BACK_WITHIN);
  }
  return dips;
}

function lowestWithin(values: Float64Array, from: number, most: number): number {
  let lowest = from;
  for (let at = from; at <= from + most && at < values.length; at++)
    if ((values[at] ?? Number.POSITIVE_INFINITY) < (values[lowest] ?? 0)) lowest = at;
  return lowest;
}
