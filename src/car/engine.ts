/** Fuel, and where its heat goes. */
import type { Car } from './car.ts';
import type { Drive, Moment } from './drive.ts';

export interface EngineHeat {
  /** W. */
  readonly fuel: number;
  readonly toMetal: number;
  readonly toBlock: number;
  readonly rpm: number;
  /** Share of the fuel at full load. */
  readonly load: number;
}

const GRAVITY = 9.81;
const DRIVELINE = 0.92;
/** Rotating parts, beside the mass. */
const ROTATING = 1.06;
/** Of the friction, to coolant by the liners and to block with oil. */
const FRICTION_TO_METAL = 0.4;
const FRICTION_TO_BLOCK = 0.45;
/** Heat to the walls grows with fuel to this power, and falls as they warm. */
const WALL_EXPONENT = 0.68;
/** Cold oil: friction more by this at 80 K below 90 °C. Set by the cold against the hot first phase of the city cycle. */
const COLD_FRICTION = 1.2;
/** A cold petrol engine warms its catalyst first: this much more fuel, gone with this time. */
const CATALYST = 0.7;
const CATALYST_TIME = 25;
/** Fuel at full load, W per m3. */
const FULL_LOAD = 140e6;

/**
 * Heat of one second.
 *
 * Willans line for the fuel; a power law of the fuel for the walls. Level checked against cruise and idle fuel of the
 * outside figures.
 * @param gain acceleration, m/s2
 * @param since s since the start
 */
export function engineHeat(
  car: Car,
  drive: Drive,
  moment: Moment,
  gain: number,
  since: number,
  temperature: { readonly metal: number; readonly block: number; readonly head: number },
): EngineHeat {
  const { values, condition, displacement, layout } = car;
  if (!moment.running) return { fuel: 0, toMetal: 0, toBlock: 0, rpm: 0, load: 0 };
  const petrol = layout.fuel === 'petrol';
  const coldStart = petrol && drive.start < 313 ? CATALYST * Math.exp(-since / CATALYST_TIME) : 0;
  const rpm = moment.rpm ?? engineSpeed(car, moment.speed, temperature.head, coldStart);
  const cold = Math.max(0, (363.15 - temperature.block) / 80);
  const pressure = values.friction + values.frictionSlope * (rpm / 3000) ** 2;
  const friction = ((pressure * displacement * rpm) / 120) * (1 + COLD_FRICTION * cold * Math.sqrt(cold));
  const demand =
    roadPower(car, drive, moment, gain) + values.accessories + (moment.airConditioning ? 1500 : 0);
  const work = demand + friction;
  // Overrun: the wheels turn the engine and no fuel goes in.
  const fuel = work > 0 ? (work / values.indicated) * (1 + coldStart) : 0;
  const load = fuel / (FULL_LOAD * displacement);
  const walls = values.wallFactor * 1e3 * (fuel / 1e3) ** WALL_EXPONENT * sizeOf(car);
  const late = condition.heat * (1 + condition.heatByLoad * Math.min(1, load));
  return {
    fuel,
    toMetal: walls * late * (1 - (temperature.metal - 373.15) / 900) + FRICTION_TO_METAL * friction,
    toBlock: FRICTION_TO_BLOCK * friction,
    rpm,
    load,
  };
}

/** The power law is stated for 1.6 l: twice the engine with twice the fuel loses twice the heat. */
function sizeOf({ displacement }: Car): number {
  return (displacement / 1.6e-3) ** (1 - WALL_EXPONENT);
}

function roadPower(
  { values, condition }: Car,
  { outside, pressure }: Drive,
  moment: Moment,
  gain: number,
): number {
  const { speed, slope } = moment;
  if (speed <= 0) return 0;
  const density = pressure / (287 * outside);
  const force =
    values.mass * GRAVITY * (values.rolling + slope) +
    0.5 * density * values.dragArea * speed * speed +
    values.mass * ROTATING * gain +
    condition.drag;
  return (force * speed) / (force > 0 ? DRIVELINE : 1 / DRIVELINE);
}

/** Idle cold to hot, or the highest gear that keeps the engine above lugging. */
function engineSpeed({ values, layout }: Car, speed: number, head: number, coldStart: number): number {
  const cold = Math.min(1.2, Math.max(0, (333.15 - head) / 60));
  const idle = values.idle + 280 * cold + (layout.fuel === 'petrol' ? 1200 * coldStart : 0);
  if (speed < 1.5) return idle;
  const lowest = layout.fuel === 'petrol' ? 1450 : 1250;
  const top = (values.gearing / 25) * speed;
  const gear = GEARS.find((ratio) => top * ratio >= lowest) ?? LOWEST_GEAR;
  return Math.max(idle, top * gear);
}

/** Gears beside the top one. */
const LOWEST_GEAR = 4.6;
const GEARS = [1, 1.28, 1.72, 2.6, LOWEST_GEAR] as const;
