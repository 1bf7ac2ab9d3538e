/** Drives a car and writes down each second of it. */
import { type HeaterAir, heaterAir, radiatorAir } from './air.ts';
import type { Car } from './car.ts';
import { capacitiesOf, heatAbove, moveHeat, partsOf, type Surroundings } from './circuit.ts';
import { coolantOf } from './coolant-state.ts';
import type { Drive, Moment } from './drive.ts';
import { type EngineHeat, engineHeat } from './engine.ts';
import { turnFan } from './fan.ts';
import { type Flow, makeFlow } from './flow.ts';
import { type Random, randomOf } from './random.ts';
import { OPEN_SHOWS, SHORTED_SHOWS, scanTable } from './signals.ts';
import { type State, stateAt } from './state.ts';
import { liftAfter, opensAt } from './thermostat.ts';
import { fill, ventAndLeak } from './vessel.ts';

/** One second of a drive. Temperatures K, pressures Pa absolute, flows m3/s, volumes m3. */
export interface Sample {
  /** s since the beginning. */
  readonly time: number;
  readonly speed: number;
  readonly rpm: number;
  readonly load: number;
  /** W. */
  readonly fuel: number;
  readonly toCoolant: number;
  readonly head: number;
  readonly low: number;
  /** Coolant where the returns meet. */
  readonly mixed: number;
  readonly upperHose: number;
  readonly lowerHose: number;
  readonly slice1: number;
  readonly slice2: number;
  readonly slice3: number;
  readonly slice4: number;
  readonly heater: number;
  readonly tank: number;
  readonly cabin: number;
  /** Air at the vents with the flap where it stands. */
  readonly vent: number;
  readonly intake: number;
  /** What the controller reads; undefined when it knows its sensor to be faulty. */
  readonly reading: number | undefined;
  /** What a scan tool shows, whole kelvins above −40 °C. */
  readonly scan: number;
  /** Temperature that the needle stands for. */
  readonly gauge: number;
  readonly lift: number;
  readonly fan: number;
  readonly fanAir: number;
  readonly radiatorConductance: number;
  readonly pressure: number;
  readonly liquid: number;
  readonly gasInCircuit: number;
  readonly exhaust: number;
  readonly flow: number;
  readonly radiatorFlow: number;
  readonly heaterFlow: number;
  readonly ventFlow: number;
}

export interface CarRun {
  readonly samples: readonly Sample[];
  /** Energy book, J: what the engine gave, less what went outside, with steam and into warmth. Near 0. */
  readonly unaccounted: number;
  readonly given: number;
}

/** Skin of a standing engine: draught falls with the difference, and gearbox and bay that warmed with it give back. Set by a soak of ten hours. */
const SOAK_EXPONENT = 0.8;
const SOAK_REFERENCE = 60;
const SOAK_FACTOR = 0.9;
/** Below this no coolant boils under any pressure a system can have, K. */
const MAY_BOIL = 340;
/** Air at the intake of a standing car, beside the difference to the coolant. */
const BAY = 0.5;

/**
 * Drives a car.
 *
 * @param seed for what comes by chance: gas past the sensor, a loose contact
 * @param every s between samples kept, 1 and more
 */
export function runCar(car: Car, drive: Drive, seed = 1, every = 1): CarRun {
  const { values, condition } = car;
  const coolant = coolantOf(condition.mixture ?? values.mixture);
  const capacities = capacitiesOf(car, coolant.heatPerVolume);
  const state = stateAt(drive.start, drive.pressure);
  state.cabin = drive.outside + 0.3 * (drive.start - drive.outside);
  fill(car, coolant, state, drive.pressure);
  const begun = heatAbove(capacities, state, drive.outside);
  const findFlow = makeFlow(car);
  const flow: Flow = { total: 0, radiator: 0, heater: 0, byPass: 0, vent: 0 };
  const signals = makeSignals(car, state, randomOf(seed, 'signals'));
  const boiling = remembered(coolant.boilsAt);
  const samples: Sample[] = [];
  let before = drive.moments[0]?.speed ?? 0;
  let { reading, scan } = signals(0);
  let started = 0;
  for (let time = 0; time < drive.moments.length; time++) {
    const moment = drive.moments[time];
    if (!moment) break;
    started = moment.running ? started + 1 : 0;
    const heat = engineHeat(car, drive, moment, moment.speed - before, started, state);
    before = moment.speed;
    findFlow(state, heat.rpm, moment.running, moment.hot, flow);
    const fanAir = turnFan(car, state, moment, reading, heat.rpm);
    const rad = radiatorAir(car, state, moment, drive.outside, fanAir, flow.radiator);
    const cabin = heaterAir(car, moment, flow.heater);
    const opens = opensAt(car, heat.load, state.head);
    const around: Surroundings = {
      toMetal: heat.toMetal,
      toBlock: heat.toBlock,
      outside: drive.outside,
      radiator: rad.conductance,
      airBefore: rad.air,
      heater: cabin.conductance,
      cabinAir: cabin.carries,
      skin: skinOf(car, moment, state, drive.outside),
      boilsAt: state.head > MAY_BOIL ? boiling(state.pressure) : MAY_BOIL + 100,
      carries: coolant.heatPerVolume,
    };
    const boiledBefore = state.boiled;
    const count = partsOf(capacities, car, flow, around);
    const part = 1 / count;
    const slow = 1 + (state.gasHead > 0.1e-3 ? 2 : 0);
    for (let at = 0; at < count; at++) {
      if (at > 0) findFlow(state, heat.rpm, moment.running, moment.hot, flow);
      moveHeat(car, capacities, state, flow, around, part);
      const sensed = condition.turnedRound
        ? state.lowerHose
        : car.layout.thermostat === 'inlet side'
          ? state.mixed
          : state.head;
      state.wax += (part * (sensed - state.wax)) / (values.waxLag * slow);
      state.lift = liftAfter(car, state.lift, state.wax, opens, part);
    }
    ventAndLeak(car, coolant, state, flow, drive.pressure, heat.load, state.boiled - boiledBefore);
    ({ reading, scan } = signals(1));
    if (time % every !== 0) continue;
    const second = { time, started, heat, fanAir, radiator: rad.conductance, cabin, reading, scan };
    samples.push(sampleOf(second, moment, drive, state, flow));
  }
  const kept = heatAbove(capacities, state, drive.outside) - begun;
  return { samples, given: state.given, unaccounted: state.given - state.gone - state.boiled - kept };
}

/** What one second of the drive worked out, beside the state of the car. */
interface Second {
  time: number;
  /** Seconds since the engine was started, 0 while it stands. */
  started: number;
  heat: EngineHeat;
  fanAir: number;
  /** Conductance of the radiator, W/K. */
  radiator: number;
  cabin: HeaterAir;
  reading: number | undefined;
  scan: number;
}

function sampleOf(second: Second, moment: Moment, drive: Drive, state: State, flow: Flow): Sample {
  const { time, started, heat, fanAir, radiator, cabin, reading, scan } = second;
  const { outside } = drive;
  const given = cabin.carries > 0 ? (cabin.conductance * (state.heater - outside)) / cabin.carries : 0;
  const bay = BAY * Math.max(0, state.head - outside) * Math.exp(-moment.speed / 6);
  return {
    time,
    speed: moment.speed,
    rpm: heat.rpm,
    load: heat.load,
    fuel: heat.fuel,
    toCoolant: heat.toMetal + heat.toBlock,
    head: state.head,
    low: state.low,
    mixed: state.mixed,
    upperHose: state.upperHose,
    lowerHose: state.lowerHose,
    slice1: state.slice1,
    slice2: state.slice2,
    slice3: state.slice3,
    slice4: state.slice4,
    heater: state.heater,
    tank: state.tank,
    cabin: state.cabin,
    vent: outside + given,
    intake: outside + 3 + bay * Math.min(1, started / 900),
    reading,
    scan,
    gauge: state.gauge,
    lift: state.lift,
    fan: state.fanStage,
    fanAir,
    radiatorConductance: radiator,
    pressure: state.pressure,
    liquid: state.liquid,
    gasInCircuit: state.gasHead + state.gasHeater + state.gasRadiator,
    exhaust: state.exhaust,
    flow: flow.total,
    radiatorFlow: flow.radiator,
    heaterFlow: flow.heater,
    ventFlow: flow.vent,
  };
}

/** A boiling point asked for each second, worked out anew once the pressure has moved by 200 Pa: 0.05 K. */
function remembered(boilsAt: (pressure: number) => number): (pressure: number) => number {
  let [at, boils] = [0, 0];
  return (pressure) => {
    if (Math.abs(pressure - at) > 200) [at, boils] = [pressure, boilsAt(pressure)];
    return boils;
  };
}

/** Through the skin, W/K. */
function skinOf(
  { values, condition }: Car,
  { running, speed }: Moment,
  { block }: State,
  outside: number,
): number {
  if (running) return (values.skin + values.skinBySpeed * speed) * condition.skin;
  const difference = Math.max(1, block - outside);
  return values.skin * SOAK_FACTOR * (difference / SOAK_REFERENCE) ** SOAK_EXPONENT * condition.skin;
}

/** Gas past the sensor, K colder for so many seconds, and how often while gas sits in the head. */
const GAS_COLDER = 13;
const GAS_EACH_SECOND = 0.015;
/** A loose contact comes and goes: chance in a second of going, and of coming back. */
const CONTACT_GOES = 0.008;
const CONTACT_COMES = 0.15;

/** Sensor, controller and needle, moved on by a second at each call. */
function makeSignals(
  car: Car,
  state: State,
  random: Random,
): (seconds: number) => { reading: number | undefined; scan: number } {
  const { values, condition } = car;
  const table = scanTable(car);
  let gas = 0;
  let open = false;
  return (seconds) => {
    if (seconds > 0 && state.gasHead > 0.05e-3 && gas <= 0 && random.chance(GAS_EACH_SECOND))
      gas = random.between(4, 25);
    gas -= seconds;
    const around = state.head - (gas > 0 ? GAS_COLDER : 0);
    state.sensor += (1 - Math.exp(-seconds / values.sensorLag)) * (around - state.sensor);
    if (condition.sensor === 'loose contact' && seconds > 0)
      open = random.chance(open ? 1 - CONTACT_COMES : CONTACT_GOES);
    const reading = open ? undefined : table(state.sensor);
    const shows = reading ?? (condition.sensor === 'shorted' ? SHORTED_SHOWS : OPEN_SHOWS);
    state.gauge +=
      (1 - Math.exp(-seconds / values.gaugeLag)) *
      ((condition.gauge === 'wrong' ? state.sensor - 25 : shows) - state.gauge);
    const whole = Math.round(Math.min(488.15, Math.max(OPEN_SHOWS, shows)) - 273.15);
    return { reading, scan: whole + 273.15 };
  };
}
