/**
 * The same car warmed up twice, once sound and once with its thermostat stuck most of the way open: in the bay, on
 * the road, in the bay again. Every figure of the car is invented; the arithmetic is that of src/physics/warm-up.ts,
 * in steps short enough for the thermostat and the fan to follow.
 */
import { benchTest } from '../../physics/bench-test.ts';
import { fromCelsius, type Kelvin, metre, second, toCelsius, watt } from '../../physics/units.ts';
import { lumpTemperature } from '../../physics/warm-up.ts';

/** The invented car: heat in W, heat per kelvin in J/K, loss in W/K. */
const CAR = {
  opens: 88,
  capacity: 45e3,
  surroundings: 20,
  fan: { on: 97, off: 92 },
  bay: { heat: 6e3, body: 25, radiator: 52, fanned: 260 },
  road: { heat: 12e3, body: 40, radiator: 320, fanned: 320 },
} as const;

/** Share of full opening at which the other thermostat is stuck. */
export const STUCK_OPEN = 0.7;

/** Minutes at which the car goes out and comes back, and at which the log ends. */
export const OUT = 12;
export const BACK = 24;
export const END = 33;

const STEP = 5;

export interface LogPoint {
  minute: number;
  celsius: number;
  /** 0 shut, 1 fully open. */
  open: number;
  fan: boolean;
}

/** A log every 5 s. @param stuck share of opening it is stuck at; left out, it works */
export function warmUpLog(stuck?: number): LogPoint[] {
  const log: LogPoint[] = [];
  let now: Kelvin = fromCelsius(CAR.surroundings);
  let fan = false;
  for (let seconds = 0; seconds <= END * 60; seconds += STEP) {
    const minute = seconds / 60;
    const celsius = toCelsius(now);
    const open = stuck ?? openingAt(celsius);
    fan = celsius >= CAR.fan.on || (fan && celsius > CAR.fan.off);
    log.push({ minute, celsius, open, fan });
    const { heat, body, radiator, fanned } = minute >= OUT && minute < BACK ? CAR.road : CAR.bay;
    const lump = {
      capacity: CAR.capacity,
      loss: body + open * (fan ? fanned : radiator),
      heat: watt(heat),
      surroundings: fromCelsius(CAR.surroundings),
    };
    now = lumpTemperature(lump, now, second(STEP));
  }
  return log;
}

/** Opening of the sound thermostat, straight from its stamp to the trade's fully open. */
function openingAt(celsius: number): number {
  const fully = toCelsius(benchTest(fromCelsius(CAR.opens), metre(0)).fullyOpen.lowest) + 5;
  return Math.min(1, Math.max(0, (celsius - CAR.opens) / (fully - CAR.opens)));
}

/** What a log showed last before a minute. @throws RangeError when it begins later */
export function lastBefore(log: readonly LogPoint[], minute: number): LogPoint {
  const found = log.findLast((each) => each.minute < minute);
  if (!found) throw new RangeError(`The log has nothing before minute ${minute}.`);
  return found;
}
