/**
 * How well a whole log can be explained by an engine whose thermostat seals, and by one whose thermostat stands open:
 * the best of a small family of runs of the lumped model each, over what nobody knows (heat, heater, air).
 */
import { second } from '../physics/units.ts';
import { type WarmUpDrive, warmUp } from '../physics/warm-up-model.ts';
import { engineEnds, modelDrive } from './expected-band.ts';
import type { Grid } from './grid.ts';
import type { TraceVehicle } from './vehicle.ts';

/** Root of the mean square between log and best run, K. */
export interface Likeness {
  /** Thermostat seals and opens where it should. */
  sound: number;
  /** Thermostat stands open by a third and more. */
  open: number;
  /** Thermostat seals, but opens 8 to 30 K too low. */
  early: number;
}

/** Heat beside the fitted one: load, gears, wind and a rough timing are all in it. */
const HEATS = [0.5, 0.7, 1, 1.4, 2] as const;
const HEATERS = [0, 0.3, 1] as const;
const AIRS = [0.6, 1.3] as const;
const SHIFTS = [-2, 1] as const;
const EARLY = [-8, -13, -19, -26] as const;
const LEAKS = [0.3, 0.6, 1] as const;
/** Points compared at most: the course of a drive needs no more. */
const POINTS = 1200;
/** s. */
const LONGEST_STEP = 60;

/** A generator so that a page without a worker can stop between runs. */
export function* likenessOf(
  grid: Grid,
  vehicle: TraceVehicle,
  outside: number,
  start: number,
): Generator<void, Likeness | undefined> {
  const drive = modelDrive(grid, outside, start);
  if (!drive) return undefined;
  const coarse = thinned(grid, drive);
  const ends = engineEnds(vehicle);
  const engines = vehicle.opens.low === vehicle.opens.high ? [ends.high] : [ends.low, ends.high];
  const best = {
    sound: Number.POSITIVE_INFINITY,
    open: Number.POSITIVE_INFINITY,
    early: Number.POSITIVE_INFINITY,
  };
  for (const { figures, heat: fitted } of engines)
    for (const times of HEATS) {
      const heat = Math.min(8, Math.max(0.1, fitted * times));
      const against = (conditions: { heater: number; air: number; leak: number; shift: number }) =>
        distance(coarse.coolant, warmUp(figures, coarse.drive, { heat, ...conditions }));
      for (const heater of HEATERS) {
        yield;
        for (const shift of SHIFTS)
          best.sound = Math.min(best.sound, against({ heater, air: 1, leak: 0, shift }));
        for (const shift of EARLY)
          best.early = Math.min(best.early, against({ heater, air: 1, leak: 0, shift }));
        if (heater === 1) continue;
        for (const leak of LEAKS)
          for (const air of AIRS) best.open = Math.min(best.open, against({ heater, air, leak, shift: 0 }));
      }
    }
  return best;
}

interface Coarse {
  drive: WarmUpDrive;
  coolant: Float64Array;
}

function thinned({ smooth, length }: Grid, drive: WarmUpDrive): Coarse {
  // The model takes steps of a minute at most: a log of a day has more points.
  const every = Math.max(1, Math.min(Math.ceil(length / POINTS), Math.floor(LONGEST_STEP / drive.step)));
  const at = (values: Float64Array) =>
    Float64Array.from({ length: Math.ceil(length / every) }, (_, index) => values[index * every] ?? 0);
  return {
    drive: {
      ...drive,
      step: second(drive.step * every),
      speed: at(drive.speed),
      running: drive.running?.filter((_, index) => index % every === 0),
    },
    coolant: Float64Array.from(
      { length: Math.ceil(length / every) },
      (_, index) => smooth[index * every] ?? Number.NaN,
    ),
  };
}

function distance(seen: Float64Array, run: Float64Array): number {
  let sum = 0;
  let count = 0;
  for (let at = 0; at < seen.length; at++) {
    const off = (seen[at] ?? Number.NaN) - (run[at] ?? 0);
    if (Number.isNaN(off)) continue;
    sum += off * off;
    count++;
  }
  return count === 0 ? Number.POSITIVE_INFINITY : Math.sqrt(sum / count);
}
