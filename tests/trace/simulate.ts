/** One simulated road test by number: car, day, drive, logger, and the vehicle's figures as a shop would have them. */
import { readQuantity } from '../../src/model/quantity.ts';
import type { VehicleFigures } from '../../src/trace/vehicle.ts';
import { type Car, drive, FAULTS, type Fault, makeCar } from './car.ts';
import { type Random, randomOf } from './random.ts';
import { driveOver, type Leg, randomLegs } from './route.ts';
import type { Truth } from './score.ts';
import { type LogStyle, randomStyle, writeLog } from './write-log.ts';

/** Causes on the shelf that are this fault. */
const CAUSES: Record<Fault, readonly string[]> = {
  none: [],
  'thermostat stuck open': ['thermostat-stuck-open'],
  'thermostat opens early': ['thermostat-opens-early'],
  'thermostat stuck shut': ['thermostat-stuck-shut'],
  'thermostat opens late': ['thermostat-opens-late', 'thermostat-stuck-shut'],
  'pump moves nothing': ['pump-impeller-failed'],
  'air in the system': ['trapped-air'],
  'fan dead': ['fan-motor-dead'],
  'radiator blocked': ['radiator-fins-blocked', 'radiator-blocked-inside'],
  'sensor reads low': ['sensor-reads-low'],
  'sensor jumps': ['sensor-intermittent'],
  'sensor open': ['sensor-open-circuit'],
  'sensor stands still': ['sensor-open-circuit', 'sensor-intermittent'],
};

export interface Simulated {
  fault: Fault;
  truth: Truth;
  /** °C. */
  outside: number;
  text: string;
  sheet: VehicleFigures | undefined;
  car: Car;
  legs: Leg[];
}

/** The drive the page asks for: from cold, town, ten minutes at one speed, then standing until the fan has gone. */
function recipe(random: Random): Leg[] {
  return [
    { kind: 'stand', seconds: random.between(30, 180) },
    { kind: 'town', seconds: random.between(240, 480) },
    { kind: 'road', seconds: random.between(600, 720), speed: random.between(70, 100) },
    { kind: 'stand', seconds: random.between(600, 1200) },
  ];
}

/** @param asAsked the drive the page asks for, from cold, road speed logged; otherwise any drive and logger */
export function simulate(seed: number, asAsked = false): Simulated {
  const random = randomOf(seed);
  // Half of the cars brought in on suspicion have nothing wrong with their cooling.
  const fault = random.chance(0.4) ? 'none' : random.pick(FAULTS);
  const car = makeCar(random, fault);
  const outside = random.between(-25, 40);
  const legs = asAsked ? recipe(random) : randomLegs(random);
  const startAt =
    asAsked || random.chance(0.75)
      ? outside + random.between(-1, 3)
      : random.between(Math.min(50, car.opens), car.opens);
  const readings = drive(car, driveOver(legs, outside, random), startAt, random);
  const asked = readings.filter(({ coolant }) => coolant > car.fanOn + 1).length;
  return {
    fault,
    truth: {
      causes: CAUSES[fault],
      ...(fault === 'fan dead' && { fanAsked: asked }),
      ...(fault === 'radiator blocked' && { needsRadiator: true }),
    },
    outside,
    text: writeLog(readings, asAsked ? complete(randomStyle(random)) : randomStyle(random), random),
    sheet: sheetOf(car, random),
    car,
    legs,
  };
}

/** Figures as a vehicle record holds them; for a quarter of the cars there are none. */
export function sheetOf(car: Car, random: Random): VehicleFigures | undefined {
  if (random.chance(0.25)) return undefined;
  const figures: VehicleFigures['figures'] = {
    ...figure('thermostat.opens', `${car.opens} °C`, 'temperature'),
    ...(random.chance(0.7) && figure('fan.on', `${Math.round(car.fanOn)} °C`, 'temperature')),
    ...(random.chance(0.7) && figure('fan.off', `${Math.round(car.fanOff)} °C`, 'temperature')),
    ...(random.chance(0.5) && figure('warning.lamp', '116 °C', 'temperature')),
    ...(random.chance(0.6) && figure('warm-up.time', `${warmUpMinutes(car, random)} min`, 'time')),
  };
  const layout = { power: 'combustion', thermostat: car.inletSide ? 'inlet side' : 'outlet side' };
  return { title: 'Simulated', layout, figures };
}

function figure(path: string, text: string, dimension: 'temperature' | 'time'): VehicleFigures['figures'] {
  const read = readQuantity(text, dimension);
  if (!read.ok) throw new Error(text);
  return { [path]: { quantity: read.quantity } };
}

/** What a shop would have timed on a sound one of these at 20 °C, a sixth off. */
function warmUpMinutes(car: Car, random: Random): number {
  const sound: Car = { ...car, fault: 'none', leak: 0, shift: 0, sensorOffset: 0, heater: 0.2 };
  const legs: Leg[] = [{ kind: 'town', seconds: 2400 }];
  const readings = drive(sound, driveOver(legs, 20, randomOf(7)), 20, randomOf(7));
  const reached = readings.find(({ coolant }) => coolant >= car.opens)?.time ?? 2400;
  return Math.max(2, Math.round((reached / 60) * random.between(0.85, 1.15)));
}

function complete(style: LogStyle): LogStyle {
  return { ...style, columns: { ...style.columns, speed: true, rpm: true, intake: true } };
}
