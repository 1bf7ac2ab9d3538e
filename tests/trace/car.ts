/**
 * A made-up car and what its coolant does on the road: seven lumps of heat, written for the tests alone. It shares no
 * code with the reader and is built differently from src/physics/warm-up-model.ts: cylinder metal, engine coolant,
 * block and oil, heater core and three slices of radiator, a wax element with a temperature of its own, a sensor with
 * a lag. Everything °C, s, W, m/s.
 */
import type { Random } from './random.ts';

export const FAULTS = [
  'none',
  'thermostat stuck open',
  'thermostat opens early',
  'thermostat stuck shut',
  'thermostat opens late',
  'pump moves nothing',
  'air in the system',
  'fan dead',
  'radiator blocked',
  'sensor reads low',
  'sensor jumps',
  'sensor open',
  'sensor stands still',
] as const;
export type Fault = (typeof FAULTS)[number];

export interface Car {
  fault: Fault;
  /** Stamp on the thermostat, and how far it is off. */
  opens: number;
  tolerance: number;
  lift: number;
  hysteresis: number;
  inletSide: boolean;
  fanOn: number;
  fanOff: number;
  /** Size of engine and car: heat capacity and losses, heat, mass. */
  size: number;
  idleHeat: number;
  mass: number;
  dragArea: number;
  radiator: number;
  /** 0 to 1: blower and heater. */
  heater: number;
  waxLag: number;
  sensorLag: number;
  /** What the fault does, its severity. */
  leak: number;
  shift: number;
  sensorOffset: number;
  substitute: number;
}

export function makeCar(random: Random, fault: Fault): Car {
  const opens = random.pick([80, 82, 83, 85, 87, 88, 89, 90, 92]);
  const fanOn = opens + random.between(8, 14);
  const diesel = random.chance(0.35);
  const [size, mass, dragArea] = [
    random.between(0.75, 1.6),
    random.between(950, 2100),
    random.between(0.55, 1.1),
  ];
  const idleHeat = random.between(2300, 4200) * (diesel ? 0.7 : 1);
  // A maker sizes the radiator to hold at 140 km/h on a day of 40 °C.
  const needed =
    heatOf({ idleHeat, mass, dragArea, size }, 39, 0) / (opens + 6 - 40) / (38 * 39 ** 0.85 * size);
  return {
    fault,
    opens,
    tolerance: random.between(-2, 2),
    lift: random.between(11, 17),
    hysteresis: random.between(2, 5),
    inletSide: random.chance(0.45),
    fanOn,
    fanOff: fanOn - random.between(4, 6),
    size,
    idleHeat,
    mass,
    dragArea,
    radiator: Math.max(needed, random.between(0.8, 1.3)),
    heater: random.pick([0, 0, 0.2, 0.5, 1]),
    waxLag: random.between(6, 18),
    sensorLag: random.between(2, 7),
    leak: fault === 'thermostat stuck open' ? random.between(0.3, 1) : 0,
    shift:
      fault === 'thermostat opens early'
        ? -random.between(12, 28)
        : fault === 'thermostat opens late'
          ? random.between(10, 20)
          : 0,
    sensorOffset: fault === 'sensor reads low' ? -random.between(9, 18) : 0,
    substitute: random.pick([60, 80, 90]),
  };
}

/** One moment of a drive, at least every second. */
export interface Moment {
  time: number;
  speed: number;
  outside: number;
  /** Engine running. */
  runs: boolean;
}

export interface Reading extends Moment {
  coolant: number;
  outlet: number;
  intake: number;
  rpm: number;
  load: number;
  fan: boolean;
}

const STEP = 0.25;

/** Drives the car; the driver gives up when the engine is far too hot. */
export function drive(car: Car, moments: readonly Moment[], startAt: number, random: Random): Reading[] {
  const first = moments[0];
  if (!first) return [];
  const capacity = 1000 * car.size;
  let [metal, coolant, block, heater, wax, sensor] = Array<number>(6).fill(startAt) as [
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  const cold = startAt > first.outside + 30 ? first.outside + 0.6 * (startAt - first.outside) : startAt;
  let slices: [number, number, number] = [cold, cold, cold];
  let lift = 0;
  let fan = false;
  let speed = first.speed;
  let bubble = 0;
  const readings: Reading[] = [];
  const stands =
    car.fault === 'sensor stands still'
      ? { after: random.between(0, 300), at: random.chance(0.5) ? car.substitute : undefined }
      : undefined;
  let held: number | undefined;
  let jumping = 0;
  for (const moment of moments) {
    const { runs, outside } = moment;
    const ahead = readings.at(-1);
    const span = ahead ? moment.time - ahead.time : STEP;
    const gain = (moment.speed - speed) / Math.max(span, STEP);
    const heat = runs ? heatOf(car, speed, gain) : 0;
    const steps = Math.max(1, Math.round(span / STEP));
    const dt = span / steps;
    for (let step = 0; step < steps; step++) {
      speed = moment.speed;
      const pumped = pumpOf(car, runs, speed);
      const wanted = liftAt(car, wax, lift);
      lift += ((wanted - lift) * dt) / 4;
      const open = Math.max(car.leak, lift);
      const flow = pumped * open;
      const entering = coolant;
      const air = airOver(car, speed, fan) / 3;
      slices = slices.map((slice, at) => {
        const upstream = at === 0 ? entering : (slices[at - 1] ?? entering);
        return slice + (dt / (2300 * car.size)) * (flow * (upstream - slice) - air * (slice - outside));
      }) as [number, number, number];
      const back = slices[2];
      const blower = runs ? 95 * car.heater * Math.min(1, car.size) : 2;
      const wet = car.fault === 'pump moves nothing' ? 0.25 : car.fault === 'air in the system' ? 0.6 : 1;
      const toCoolant = (runs ? 950 : 300) * car.size * wet * (metal - coolant);
      const toHeater = Math.min(pumped * 0.12, 160) * (coolant - heater);
      metal +=
        (dt / (17 * capacity)) *
        (heat -
          toCoolant -
          160 * car.size * (metal - block) -
          (5 + 0.4 * speed) * car.size * (metal - outside));
      coolant +=
        (dt / (15 * capacity)) *
        (toCoolant - flow * (coolant - back) - toHeater - 260 * car.size * (coolant - block));
      block +=
        (dt / (23 * capacity)) *
        (160 * car.size * (metal - block) +
          260 * car.size * (coolant - block) -
          (6 + 0.5 * speed) * car.size * (block - outside));
      heater += (dt / 3000) * (toHeater - blower * (heater - outside));
      const sensed = car.inletSide ? coolant - 0.22 * open * (coolant - back) : coolant;
      wax += ((sensed - wax) * dt) / car.waxLag;
      fan = fanAsked(car, fan, coolant) && runs;
      if (car.fault === 'air in the system' && coolant > car.opens - 5 && random.chance(0.012 * dt))
        bubble = random.between(8, 40);
      bubble -= dt;
      // In a bubble the sensor sits in vapour and cooler metal; out of it the hot coolant strikes it.
      const around =
        bubble > 0
          ? coolant - 14
          : car.fault === 'pump moves nothing'
            ? 0.75 * coolant + 0.25 * metal
            : coolant;
      sensor += ((around - sensor) * dt) / car.sensorLag;
    }
    if (jumping <= 0 && car.fault === 'sensor jumps' && random.chance(0.01 * Math.max(1, span)))
      jumping = random.between(1, 25);
    jumping -= span;
    let shown = sensor + car.sensorOffset;
    if (car.fault === 'sensor jumps' && jumping > 0) shown = random.pick([-40, shown - 30, shown - 45]);
    if (car.fault === 'sensor open') shown = -40;
    if (stands && moment.time >= stands.after) {
      held ??= stands.at ?? shown;
      shown = held;
    }
    readings.push({
      ...moment,
      coolant: shown,
      outlet: slices[2],
      intake: outside + 4 + 8 * Math.exp(-speed / 8) * (metal > 60 ? 1 : 0.1),
      rpm: runs ? (speed < 1 ? 820 : 1300 + 45 * speed + 30 * random.normal()) : 0,
      load: Math.min(100, Math.max(12, (heat / 300) * 1)),
      fan,
    });
    if (coolant > 126) break;
  }
  return readings;
}

function heatOf(
  { idleHeat, mass, dragArea, size }: Pick<Car, 'idleHeat' | 'mass' | 'dragArea' | 'size'>,
  speed: number,
  gain: number,
): number {
  const road = (0.011 * mass * 9.81 + 0.6 * dragArea * speed * speed + mass * Math.max(0, gain)) * speed;
  return idleHeat * size + 1.05 * road + 25 * speed;
}

function pumpOf({ fault, size }: Car, runs: boolean, speed: number): number {
  const works = fault === 'pump moves nothing' ? 0.02 : fault === 'air in the system' ? 0.12 : 1;
  return (runs ? 1000 + 75 * speed : 15) * size * works;
}

function liftAt(car: Car, wax: number, lift: number): number {
  if (car.fault === 'thermostat stuck shut') return 0;
  const start = car.opens + car.tolerance + car.shift;
  const share = (temperature: number) => {
    const x = Math.min(1, Math.max(0, (temperature - start) / car.lift));
    return x * x * (3 - 2 * x) * 0.6 + 0.4 * x;
  };
  return Math.min(share(wax + car.hysteresis), Math.max(share(wax), lift));
}

function airOver({ radiator, size, fault }: Car, speed: number, fan: boolean): number {
  const blocked = fault === 'radiator blocked' ? 0.16 : 1;
  return (12 + 38 * speed ** 0.85 + (fan ? 340 : 0)) * radiator * size * blocked;
}

function fanAsked({ fault, fanOn, fanOff }: Car, fan: boolean, coolant: number): boolean {
  if (fault === 'fan dead') return false;
  if (fault === 'sensor open' || fault === 'sensor stands still') return fault === 'sensor open';
  return coolant > (fan ? fanOff : fanOn);
}
