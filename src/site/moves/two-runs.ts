/** The same half hour driven by a sound car and by one with a fault, as the simulated car has it. Pure. */
import { type Car, SOUND } from '../../car/car.ts';
import { driveOf } from '../../car/drive.ts';
import { runCar, type Sample } from '../../car/run.ts';

/** What is shown of one car at one moment. Temperatures in °C. */
export interface CarMoment {
  head: number;
  upperHose: number;
  /** Radiator from the inlet on. */
  slices: readonly [number, number, number, number];
  lowerHose: number;
  heater: number;
  /** What a scan tool shows. */
  scan: number;
  /** Of the thermostat, 0 shut to 1. */
  lift: number;
  isFanOn: boolean;
}

/** A picture each half minute. */
export interface TwoRuns {
  sound: readonly CarMoment[];
  faulty: readonly CarMoment[];
}

/** Seconds between two pictures. */
export const EVERY = 30;
/** Minutes shown: in the bay, on the road, in the bay again. */
export const OUT = 8;
export const BACK = 20;
export const END = 30;

/** K; a mild day. */
const OUTSIDE = 288.15;
const ROAD = 80 / 3.6;

const DRIVE = driveOf(OUTSIDE, [
  { seconds: OUT * 60, blower: 0.2, hot: 0.5 },
  { seconds: (BACK - OUT) * 60, speed: ROAD, blower: 0.2, hot: 0.5 },
  { seconds: (END - BACK) * 60 + 1, blower: 0.2, hot: 0.5 },
]);

/** @param car with its fault; beside it the same car with none */
export function twoRuns(car: Car): TwoRuns {
  const shown = (driven: Car) => runCar(driven, DRIVE, 1, EVERY).samples.map(shownOf);
  return { sound: shown({ ...car, condition: SOUND }), faulty: shown(car) };
}

const celsius = (kelvin: number) => kelvin - 273.15;

function shownOf(sample: Sample): CarMoment {
  return {
    head: celsius(sample.head),
    upperHose: celsius(sample.upperHose),
    slices: [celsius(sample.slice1), celsius(sample.slice2), celsius(sample.slice3), celsius(sample.slice4)],
    lowerHose: celsius(sample.lowerHose),
    heater: celsius(sample.heater),
    scan: celsius(sample.scan),
    lift: sample.lift,
    isFanOn: sample.fan > 0,
  };
}
