/** A car on the bench of a shop: what the data sheet says of it, and who reads the tools. */
import { type Car, SOUND } from './car.ts';
import { driveOf } from './drive.ts';
import { fanFigures } from './fan.ts';
import { type Random, randomOf } from './random.ts';
import { runCar } from './run.ts';

/** Figures of the sound car as a data sheet has them. K, Pa gauge, m3, s. */
export interface DataSheet {
  readonly opens: number;
  readonly fullyOpen: number;
  readonly cruise: readonly [number, number];
  readonly lowLimit: number;
  readonly fanOn: number;
  readonly fanOff: number;
  readonly warning: number;
  readonly capOpens: number;
  readonly capacity: number;
  /** Glycol by mass. */
  readonly mixture: number;
  /** A, full speed. */
  readonly fanCurrent: number;
  /** Cold start to opening at 20 °C, mixed driving. */
  readonly warmUpTime: number;
}

const CELSIUS = 273.15;
/** Common practice: too low at cruise begins this far below the stamp. */
const LOW_BELOW = 9;
/** Common practice. */
const WARNING_ABOVE_FAN = 18;
/** A sound thermostat is called fully open this far above its stamp. */
const FULLY_OPEN = 12;
/** What the sound cars of the table do at speed, either side of the stamp. */
const CRUISE = [-3, 7] as const;

const whole = (kelvin: number) => Math.round(kelvin - CELSIUS) + CELSIUS;

const sheets = new WeakMap<Car['values'], DataSheet>();

/** The data sheet of a car as it left the maker: whole degrees, and a warm-up somebody timed on a sound one. */
export function sheetOf(car: Car): DataSheet {
  const known = sheets.get(car.values);
  if (known) return known;
  const { values } = car;
  const { on, off } = fanFigures(car);
  const sheet: DataSheet = {
    opens: values.stamp,
    fullyOpen: values.stamp + FULLY_OPEN,
    cruise: [values.stamp + CRUISE[0], values.stamp + CRUISE[1]],
    lowLimit: values.stamp - LOW_BELOW,
    fanOn: whole(on),
    fanOff: whole(off),
    warning: whole(on + WARNING_ABOVE_FAN),
    capOpens: Math.round(values.cap / 1e4) * 1e4,
    capacity: values.coolant,
    mixture: values.mixture,
    fanCurrent:
      car.layout.fan === 'electric, two stages' || car.layout.fan === 'electric, one stage' ? 24.5 : 0,
    warmUpTime: warmUpOf(car),
  };
  sheets.set(values, sheet);
  return sheet;
}

const TOWN = 50 / 3.6;
const MIXED = Array.from({ length: 15 }, () => [
  { seconds: 30, blower: 0.2, hot: 1 },
  { seconds: 90, speed: TOWN, blower: 0.2, hot: 1 },
]).flat();

function warmUpOf(car: Car): number {
  const { samples } = runCar({ ...car, condition: SOUND }, driveOf(CELSIUS + 20, MIXED), 1, 5);
  return samples.find(({ head }) => head >= car.values.stamp)?.time ?? 1800;
}

/** All that a test needs. */
export interface Bench {
  readonly car: Car;
  /** The same car with nothing wrong. */
  readonly sound: Car;
  readonly sheet: DataSheet;
  /** K. */
  readonly outside: number;
  readonly seed: number;
  readonly random: Random;
}

/** A car on the bench of one test: its own random numbers, so that the same test on the same car reads the same. */
export function benchOf(car: Car, seed: number, test: string, outside: number): Bench {
  return {
    car,
    sound: { ...car, condition: SOUND },
    sheet: sheetOf(car),
    outside,
    seed,
    random: randomOf(seed, test),
  };
}

/** What a tool shows, in the unit printed on it, and which outcome of the record that is. */
export interface ToolReading<Outcome extends string> {
  readonly outcome: Outcome;
  readonly shows: Readonly<Record<string, number | string>>;
}

/** One standard deviation of a reader with each tool. Common practice, no source. */
export const NOISE = {
  /** K; rubber by infrared, and the back of a hand. */
  rubber: 2,
  hand: 5,
  /** bar. */
  pressure: 0.02,
  /** s. */
  time: 5,
  /** l, poured and measured. */
  litres: 0.2,
  /** mm in a bottle. */
  level: 5,
  /** V, and share of the reading. */
  volts: 0.02,
  clamp: 0.05,
  ohms: 0.02,
  /** Glycol by volume, points. */
  refractometer: 2,
} as const;

export const celsius = (kelvin: number) => kelvin - CELSIUS;

/** Nearest step of what a tool shows. */
export function shown(value: number, step: number): number {
  return Math.round(value / step) * step;
}
