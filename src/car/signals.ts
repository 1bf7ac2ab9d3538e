/** What the car itself says of its temperature: sensor, circuit, controller, needle. */
import { sensorVoltage } from '../physics/sensor-circuit.ts';
import { curveFromB } from '../physics/thermistor.ts';
import { fromCelsius, kelvin, ohm, volt } from '../physics/units.ts';
import type { Car } from './car.ts';

/** 2.2 kohm at 20 °C, B 3,500 K: a common family. Common practice, no source. */
const CURVE = curveFromB({ temperature: fromCelsius(20), resistance: ohm(2200) }, 3500);
const PULL_UP = { supply: volt(5), resistance: ohm(2200) };
/** Nearer to either end of its supply than this the controller calls the circuit faulty, V. */
const OUT_OF_RANGE = [0.08, 4.92] as const;
const COLDEST = 223.15;
const HOTTEST = 453.15;

/** Resistance of a sound sensor at a temperature, ohm. @param temperature K, 213 to 473 */
export function sensorOhms(temperature: number): number {
  return CURVE.resistanceAt(kelvin(Math.min(HOTTEST, Math.max(COLDEST, temperature))));
}

/** Ohms between the pins of this car's sensor, plug off. Infinity when open. */
export function ohmsAtPins({ condition }: Car, temperature: number): number {
  if (condition.sensor === 'open') return Number.POSITIVE_INFINITY;
  if (condition.sensor === 'shorted') return 0.5;
  const own = sensorOhms(temperature) + condition.series;
  return Number.isFinite(condition.parallel) ? 1 / (1 / own + 1 / condition.parallel) : own;
}

/** Temperature that this many ohms belong to by the sensor's curve, K; undefined where no sensor of this curve gets. */
export function temperatureOf(ohms: number): number | undefined {
  const [low, high] = [sensorOhms(HOTTEST), sensorOhms(COLDEST)];
  return ohms < low || ohms > high ? undefined : CURVE.temperatureAt(ohm(ohms));
}

/**
 * What the controller makes of its sensor, K; undefined when it knows the circuit to be faulty.
 *
 * Thermistor, pull-up of 2.2 kohm, 5 V.
 */
export function scanOf(car: Car, temperature: number): number | undefined {
  const ohms = ohmsAtPins(car, temperature);
  if (!Number.isFinite(ohms)) return undefined;
  const volts = sensorVoltage(PULL_UP, ohm(ohms));
  if (volts < OUT_OF_RANGE[0] || volts > OUT_OF_RANGE[1]) return undefined;
  return temperatureOf(ohms);
}

/** `scanOf` as a table between whole kelvins, for a car whose sensor is driven for hours. */
export function scanTable(car: Car): (temperature: number) => number | undefined {
  const { series, parallel, sensor } = car.condition;
  if (sensor === 'open' || sensor === 'shorted') return () => undefined;
  if (series === 0 && !Number.isFinite(parallel)) return (temperature) => temperature;
  const from = Math.floor(COLDEST);
  const values = Array.from({ length: Math.ceil(HOTTEST) - from + 1 }, (_, at) => scanOf(car, from + at));
  return (temperature) => {
    const at = Math.min(values.length - 1, Math.max(0, temperature - from));
    const low = values[Math.floor(at)];
    const high = values[Math.min(values.length - 1, Math.floor(at) + 1)];
    return low === undefined || high === undefined ? undefined : low + (at % 1) * (high - low);
  };
}

/** The needle stands still between these, K. Common practice. */
export const NEEDLE_STILL = [348.15, 378.15] as const;
/** What a scan tool shows with an open and a shorted sensor, K: the ends of the byte; −40 °C and, often, 140 °C. */
export const OPEN_SHOWS = 233.15;
export const SHORTED_SHOWS = 413.15;
