/** Pressure, gas and liquid: the tank with its cap, what leaks out, what combustion blows in. Called once a second. */
import type { Car, GasPlace } from './car.ts';
import type { Coolant } from './coolant-state.ts';
import type { Flow } from './flow.ts';
import type { State } from './state.ts';

const GAS_CONSTANT = 8.314;
/** Least room for gas, m3: below it the system is full of liquid and the cap passes that. */
const LEAST_ROOM = 0.02e-3;
/** Coolant the tank can give before the circuit draws air, m3. */
const TANK_GIVES = 0.7e-3;
/** Gas that leaves a pocket, at the flow of 20 l/min, m3/s. */
const PURGE = 8e-6;
const PURGE_FLOW = 20 / 60e3;
/** Volume of a mole at 20 °C and one atmosphere, m3. */
const MOLE = 0.02405;
/** Heat to boil a cubic metre of coolant, J/m3: water's 2.26 MJ/kg and its density; the steam is nearly all water. */
const LATENT = 2.2e9;
/** A leak below this over-pressure only weeps, Pa. */
const WEEPS = 500;

/** Volume of the whole system, m3: coolant and air, cold. */
function brimOf({ values }: Car): number {
  return values.coolant + values.air;
}

/** Fills a car at the temperature of its start. */
export function fill(car: Car, coolant: Coolant, state: State, outsidePressure: number): void {
  const { condition, values } = car;
  state.liquid = Math.max(0.5e-3, values.coolant - condition.missing - condition.pocket);
  const drawn = Math.max(0, condition.missing - TANK_GIVES);
  put(state, 'heater', Math.min(0.3e-3, 0.3 * drawn));
  put(state, 'head', drawn - state.gasHeater);
  put(state, condition.pocketIn, condition.pocket);
  const room = roomOf(car, coolant, state, state.head);
  const dry = outsidePressure - coolant.vapourPressure(state.head);
  state.gas = (dry * room) / (GAS_CONSTANT * state.head);
  state.pressure = outsidePressure;
}

function put(state: State, place: GasPlace, volume: number): void {
  if (place === 'head') state.gasHead += volume;
  else if (place === 'heater') state.gasHeater += volume;
  else state.gasRadiator += volume;
}

function roomOf(car: Car, coolant: Coolant, state: State, temperature: number): number {
  return Math.max(LEAST_ROOM, brimOf(car) - state.liquid * coolant.swells(temperature));
}

/** Mean temperature of the liquid: most of it is in engine and radiator. */
function meanOf(s: State): number {
  return (
    0.25 * (s.low + s.head) +
    0.1 * (s.upperHose + s.lowerHose) +
    0.05 * (s.slice1 + s.slice2 + s.slice3 + s.slice4) +
    0.1 * s.tank
  );
}

/** Pressure of gas and vapour in a room that gives, Pa absolute. (P - pv)(room + give (P - P0)) = n R T */
export function pressureOf(
  room: number,
  give: number,
  gas: number,
  temperature: number,
  vapour: number,
  outside: number,
): number {
  const least = room + give * (vapour - outside);
  const work = gas * GAS_CONSTANT * temperature;
  const dry = (-least + Math.sqrt(least * least + 4 * give * work)) / (2 * give);
  return vapour + dry;
}

/** A second of the vessel. Changes `state`. @param load share of full load. @param steam heat boiled off since the last, J */
export function ventAndLeak(
  car: Car,
  coolant: Coolant,
  state: State,
  flow: Flow,
  outsidePressure: number,
  load: number,
  steam: number,
): void {
  const { values, condition } = car;
  blowIn(car, state, load);
  purge(car, state, flow);
  state.liquid = Math.max(0.2e-3, state.liquid - steam / LATENT);
  const vapour = coolant.vapourPressure(state.tank);
  let room = roomOf(car, coolant, state, meanOf(state));
  const pressure = () => pressureOf(room, values.give, state.gas, state.tank, vapour, outsidePressure);
  let now = pressure();
  const opens = outsidePressure + values.cap * condition.cap * condition.capStamp;
  if (now > opens) {
    if (room > LEAST_ROOM * 1.01) {
      const stretched = room + values.give * (opens - outsidePressure);
      state.gas = Math.min(
        state.gas,
        (Math.max(0, opens - vapour) * stretched) / (GAS_CONSTANT * state.tank),
      );
    } else state.liquid -= Math.min(0.02e-3, state.liquid * 0.01);
    now = Math.min(opens, pressure());
  } else if (now < outsidePressure - condition.vacuum) {
    const held = outsidePressure - condition.vacuum;
    state.gas =
      (Math.max(0, held - vapour) * (room + values.give * (held - outsidePressure))) /
      (GAS_CONSTANT * state.tank);
    now = held;
  }
  const over = now - outsidePressure;
  if (condition.leak > 0 && over > WEEPS && state.head < condition.leakBelow) {
    state.liquid = Math.max(0.2e-3, state.liquid - condition.leak * Math.sqrt(over / values.cap));
    room = roomOf(car, coolant, state, meanOf(state));
  }
  state.pressure = now;
}

/** Combustion gas: grows with load, and three tenths of it finds the heater. */
function blowIn({ condition }: Car, state: State, load: number): void {
  if (condition.gas <= 0 || state.head < condition.gasAbove || load <= 0) return;
  const volume = condition.gas * (0.8 + 4 * load);
  state.gas += volume / MOLE;
  state.exhaust += volume / MOLE;
  state.gasHead += 0.7 * volume;
  state.gasHeater += 0.3 * volume;
}

/** Pockets find the tank the quicker the more coolant moves. */
function purge({ condition }: Car, state: State, flow: Flow): void {
  const most = PURGE * condition.vent;
  const by = (branch: number) => most * Math.min(2, branch / PURGE_FLOW);
  state.gasHead = Math.max(0, state.gasHead - by(flow.total));
  state.gasHeater = Math.max(0, state.gasHeater - 2 * by(flow.heater));
  state.gasRadiator = Math.max(0, state.gasRadiator - by(flow.radiator));
}
