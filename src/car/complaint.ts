/**
 * Whether a customer would bring this car in with a complaint: its own drive on such a day must show it. Ids are the
 * shelf's; nothing is read from there.
 *
 * Without this, mild faults that nobody would notice spoil every trial, and no cause would need the day that brings it
 * out. What a customer notices, by the needle and by the air at the vents, is common practice, no source.
 */
import { sheetOf } from './bench.ts';
import { type Car, SOUND } from './car.ts';
import { type Drive, driveOf, type Leg } from './drive.ts';
import type { Random } from './random.ts';
import { runCar, type Sample } from './run.ts';

interface Complaint {
  /** Outside on the days on which it is complained of, °C. */
  readonly days: readonly [number, number];
  /** Whether the customer sees it. @param also what else the day brings: air conditioning on or off */
  readonly shows: (car: Car, outside: number, seed: number, also: boolean) => boolean;
}

const CELSIUS = 273.15;
const KMH = 1 / 3.6;
const WARM = CELSIUS + 82;
/** K above the fan's figure at which a driver sees the needle leave its place, and K at which he knows it is hot. */
const SEEN_HOT = 6;
/** Air that does not warm anybody, K above outside, and the least that is called warm. */
const COLD_AIR = 25;
const WARM_AIR = CELSIUS + 30;

/** Minutes to a warm needle beside the sound car's that a customer calls too long. */
const TOO_LONG = 1.5;

function drive(car: Car, how: Drive, seed: number): readonly Sample[] {
  return runCar(car, how, seed).samples;
}

/** Highest needle between two seconds. */
function top(samples: readonly Sample[], from = 0, to = samples.length): number {
  return Math.max(...samples.slice(from, to).map(({ gauge }) => gauge));
}

const mean = (samples: readonly Sample[], of: (sample: Sample) => number) =>
  samples.reduce((sum, sample) => sum + of(sample), 0) / samples.length;

const MIXED: Leg[] = Array.from({ length: 12 }, () => [
  { seconds: 30, blower: 0.3, hot: 1 },
  { seconds: 90, speed: 50 * KMH, blower: 0.3, hot: 1 },
]).flat();

/** Vent at the end of a quarter of an hour of town, standing, and after a minute and a half of revs. */
function vents(car: Car, outside: number, seed: number): { standing: number; revved: number } {
  const heat = { blower: 0.5, hot: 1 };
  const samples = drive(
    car,
    driveOf(outside, [
      { seconds: 900, speed: 45 * KMH, ...heat },
      { seconds: 240, ...heat },
      { seconds: 90, rpm: 2500, ...heat },
    ]),
    seed,
  );
  return { standing: samples[1135]?.vent ?? outside, revved: samples.at(-1)?.vent ?? outside };
}

export const COMPLAINTS = {
  'reads-low-at-cruise': {
    days: [-25, 25],
    shows: (car, outside, seed) => {
      const legs = [{ seconds: 1200, speed: 90 * KMH, blower: 0.5, hot: 1 }];
      const samples = drive(car, driveOf(outside, legs, WARM), seed);
      return mean(samples.slice(-300), ({ gauge }) => gauge) < sheetOf(car).lowLimit;
    },
  },
  'never-warms-up': {
    days: [-25, 25],
    shows: (car, outside, seed) => {
      const { lowLimit } = sheetOf(car);
      const warm = (which: Car) =>
        drive(which, driveOf(outside, MIXED), seed).find(({ gauge }) => gauge >= lowLimit)?.time;
      const own = warm(car);
      const usual = warm({ ...car, condition: SOUND }) ?? 1440;
      return own === undefined || own > TOO_LONG * usual;
    },
  },
  'hot-in-traffic': {
    days: [15, 40],
    shows: (car, outside, seed, airConditioning) => {
      const hot = sheetOf(car).fanOn + SEEN_HOT;
      const legs = [
        { seconds: 600, speed: 80 * KMH, airConditioning },
        { seconds: 1200, airConditioning },
      ];
      const samples = drive(car, driveOf(outside, legs, WARM), seed);
      return top(samples, 300, 600) < hot && top(samples, 600) >= hot;
    },
  },
  'hot-under-load': {
    days: [15, 40],
    shows: (car, outside, seed, airConditioning) => {
      const hot = sheetOf(car).fanOn + SEEN_HOT;
      const legs = [
        { seconds: 600, speed: 40 * KMH, airConditioning },
        { seconds: 900, speed: 90 * KMH, slope: 0.06, rpm: 3300, airConditioning },
      ];
      const samples = drive(car, driveOf(outside, legs, WARM), seed);
      return top(samples, 0, 600) < hot && top(samples, 600) >= hot;
    },
  },
  'hot-within-minutes': {
    days: [-5, 30],
    shows: (car, outside, seed) => {
      const samples = drive(car, driveOf(outside, MIXED.slice(0, 10)), seed);
      return top(samples) >= sheetOf(car).fanOn + SEEN_HOT;
    },
  },
  'no-cabin-heat': {
    days: [-12, 12],
    shows: (car, outside, seed) => {
      const { standing, revved } = vents(car, outside, seed);
      const air = car.condition.cabinAir < 0.6;
      return air || (standing < outside + COLD_AIR && revved < outside + COLD_AIR);
    },
  },
  'heat-only-when-revved': {
    days: [-12, 12],
    shows: (car, outside, seed) => {
      const { standing, revved } = vents(car, outside, seed);
      return standing < WARM_AIR && revved > standing + 10;
    },
  },
  'fan-never-stops': {
    days: [0, 25],
    shows: (car, outside, seed) => {
      const legs = [{ seconds: 240 }, { seconds: 300, speed: 40 * KMH }, { seconds: 240, rpm: 1500 }];
      const samples = drive(car, driveOf(outside, legs), seed);
      if (car.layout.fan !== 'viscous clutch')
        return mean(samples.slice(30), ({ fanAir }) => (fanAir > 0.5 ? 1 : 0)) > 0.9;
      const sound = drive({ ...car, condition: SOUND }, driveOf(outside, legs), seed);
      const roar = (all: readonly Sample[]) => mean(all.slice(-200), ({ fanAir }) => fanAir);
      return roar(samples) > 2 * roar(sound);
    },
  },
} as const satisfies Record<string, Complaint>;

export type ComplaintId = keyof typeof COMPLAINTS;
export const COMPLAINT_IDS = Object.keys(COMPLAINTS) as ComplaintId[];

/** A day on which it might be complained of, K. */
export function drawDay(random: Random, id: ComplaintId): number {
  const [low, high] = COMPLAINTS[id].days;
  return CELSIUS + random.between(low, high);
}

/**
 * Whether the car's own drive shows the complaint.
 * @param outside K
 * @param airConditioning on or off, where the complaint leaves it open
 */
export function complains(
  id: ComplaintId,
  car: Car,
  outside: number,
  seed: number,
  airConditioning: boolean,
): boolean {
  const complaint: Complaint = COMPLAINTS[id];
  return complaint.shows(car, outside, seed, airConditioning);
}
