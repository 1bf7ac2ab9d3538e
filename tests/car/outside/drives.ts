/** Drives on which cars are held against the outside figures; each car drives each of them once. */
import type { Car } from '../../../src/car/car.ts';
import { type Drive, driveOf, type Leg, town } from '../../../src/car/drive.ts';
import { randomOf } from '../../../src/car/random.ts';
import { type CarRun, runCar, type Sample } from '../../../src/car/run.ts';
import { kelvinOf } from './row.ts';

/** A run that is made once for each car. */
export function once(drive: Drive, every = 1): (car: Car) => CarRun {
  const made = new WeakMap<Car, CarRun>();
  return (car) => {
    const known = made.get(car);
    if (known) return known;
    const run = runCar(car, drive, 1, every);
    made.set(car, run);
    return run;
  };
}

const KMH = 1 / 3.6;
const random = () => randomOf(5, 'route');

/** Standing at idle for 40 minutes, 28 °C. */
export const idle = once(driveOf(kelvinOf(28), [{ seconds: 2400 }]));
/** Town at a mean of about 18 km/h, 27 °C. */
export const slowTown = once(driveOf(kelvinOf(27), [{ seconds: 15 }, ...town(random(), 1200, 26 * KMH)]));
/** Mixed driving of a test phase: 22 °C, mean about 40 km/h, 505 s cold and the same again hot. */
const PHASE: Leg[] = [{ seconds: 20 }, ...town(random(), 485, 55 * KMH)];
const hot = [...PHASE, ...PHASE, ...PHASE, ...PHASE];
export const phases = once(driveOf(kelvinOf(22), hot));
export const phasesInFrost = once(driveOf(kelvinOf(-6.7), hot));
/** A trip of a diesel in mixed traffic, mean of about 38 km/h, heater by the weather. */
export const trip = (outside: number, blower: number) =>
  once(
    driveOf(
      kelvinOf(outside),
      [
        { seconds: 20, blower, hot: blower > 0 ? 1 : 0 },
        ...town(random(), 2400, 52 * KMH, { blower, hot: blower > 0 ? 1 : 0 }),
      ],
      kelvinOf(outside + 8),
    ),
    2,
  );
/** Steady speeds, warm. */
export const cruise = (speed: number, outside: number, blower = 0) =>
  once(
    driveOf(
      kelvinOf(outside),
      [{ seconds: 1800, speed: speed * KMH, blower, hot: blower > 0 ? 1 : 0 }],
      kelvinOf(60),
    ),
    2,
  );

/** UN Regulation 83, type I test: four town parts and one outside town, 1,180 s. Straight between these points, from memory. */
const TOWN_PART: [number, number][] = [
  [11, 0],
  [15, 15],
  [23, 15],
  [28, 0],
  [49, 0],
  [61, 32],
  [85, 32],
  [96, 0],
  [117, 0],
  [143, 50],
  [155, 50],
  [163, 35],
  [176, 35],
  [188, 0],
  [195, 0],
];
const OUTSIDE_TOWN: [number, number][] = [
  [20, 0],
  [61, 70],
  [111, 70],
  [119, 50],
  [188, 50],
  [201, 70],
  [251, 70],
  [286, 100],
  [316, 100],
  [336, 120],
  [346, 120],
  [380, 0],
  [400, 0],
];
function straight(points: readonly [number, number][]): number[] {
  const speeds: number[] = [];
  let [time, speed] = [0, 0];
  for (const [until, to] of points) {
    for (let at = time; at < until; at++)
      speeds.push(speed + ((at + 1 - time) / (until - time)) * (to - speed));
    [time, speed] = [until, to];
  }
  return speeds;
}
const CYCLE = [...Array.from({ length: 4 }, () => straight(TOWN_PART)).flat(), ...straight(OUTSIDE_TOWN)];
export const CYCLE_LENGTH = CYCLE.length;
const standing = driveOf(kelvinOf(25), [{ seconds: CYCLE.length }]);
export const cycle = once({
  ...standing,
  moments: standing.moments.map((moment, at) => ({ ...moment, speed: (CYCLE[at] ?? 0) * KMH })),
});

/** First second at or above a temperature of the scan figure, °C; NaN when never. */
export function timeTo({ samples }: CarRun, celsius: number): number {
  return samples.find(({ head }) => head >= kelvinOf(celsius))?.time ?? Number.NaN;
}

/** Samples from one second up to another. */
export function between({ samples }: CarRun, from: number, to: number): readonly Sample[] {
  return samples.filter(({ time }) => time >= from && time < to);
}

export function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** @param share 0 to 1 */
export function quantile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
}
