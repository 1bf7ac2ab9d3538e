/** Air through the radiator and through the heater. */
import type { Car } from './car.ts';
import type { Moment } from './drive.ts';
import type { State } from './state.ts';

/** Heat capacity of a cubic metre of air, J/(m3 K): 1.15 kg at 1,006 J/(kg K). */
const AIR = 1157;
/** Flow that the water side of the tubes is stated for, m3/s; with flow to the power 0.6, as turbulent tubes do. */
const WATER_REFERENCE = 40 / 60e3;
const WATER_EXPONENT = 0.6;
/** However dirty, some air finds its way. */
const LEAST_FINS = 0.01;
/** Blocked tubes leave their fins to their neighbours: the air side keeps this much. */
const FIN_SHARE = 0.4;
/** Gas on top of a radiator that leaves none of its tubes wet, m3. */
const RADIATOR_VOLUME = 2e-3;
/** Speed at which the standing warmth of the bay has blown away, m/s. */
const BLOWN_AWAY = 4;
/** The condenser in front, air conditioning on, K; more without its own fan standing. */
const CONDENSER = 5;
const CONDENSER_STANDING = 12;

export interface RadiatorAir {
  /** Heat the radiator gives off for each kelvin above the air, W/K. */
  readonly conductance: number;
  /** Air before it, K. */
  readonly air: number;
  /** Speed at the face, m/s. */
  readonly face: number;
}

/** @param fan air speed at the face by the fan alone, m/s. @param flow coolant through the radiator, m3/s */
export function radiatorAir(
  { values, condition }: Car,
  state: State,
  moment: Moment,
  outside: number,
  fan: number,
  flow: number,
): RadiatorAir {
  const driven = Math.hypot(values.ram * moment.speed, fan);
  const fins = Math.max(LEAST_FINS, condition.fins);
  const face = Math.max(values.stillAir, driven) * fins;
  const carries = values.face * face * AIR;
  const wet = Math.max(0.05, 1 - state.gasRadiator / RADIATOR_VOLUME) * condition.tubes;
  const airSide = values.airSide * values.face * Math.sqrt(face) * fins * (FIN_SHARE + (1 - FIN_SHARE) * wet);
  const waterSide =
    values.waterSide * values.face * wet * (Math.max(flow, 1e-6) / WATER_REFERENCE) ** WATER_EXPONENT;
  const through = 1 / (1 / airSide + 1 / waterSide);
  const hot = Math.max(0, Math.min(1, (state.head - outside) / 65));
  const standing = Math.exp(-moment.speed / BLOWN_AWAY);
  const condenser = moment.airConditioning
    ? CONDENSER + (condition.condenserFan ? 0 : CONDENSER_STANDING * standing)
    : 0;
  return {
    conductance: carries * (1 - Math.exp(-through / carries)),
    air: outside + values.bayWarmth * hot * standing + condenser,
    face,
  };
}

export interface HeaterAir {
  /** Heat taken for each kelvin the core stands above the outside, W/K. */
  readonly conductance: number;
  /** Heat the air flow carries for each kelvin, W/K. */
  readonly carries: number;
}

/** With the blower off the core loses this to what is round it, W/K. */
const STILL_CORE = 2;
const CORE_WATER = 1500;
const CORE_FLOW = 8 / 60e3;

/** @param flow coolant through the heater, m3/s */
export function heaterAir({ values, condition, layout }: Car, moment: Moment, flow: number): HeaterAir {
  const blown = moment.blower * condition.cabinAir;
  const carries = values.blower * blown;
  if (carries < 1) return { conductance: STILL_CORE, carries: 0 };
  const flap = condition.flap ?? (layout.heater === 'valve-controlled' ? 1 : moment.hot);
  const airSide = values.heaterAir * Math.sqrt(blown);
  const waterSide = CORE_WATER * (Math.max(flow, 1e-7) / CORE_FLOW) ** 0.4 * Math.max(0.1, condition.core);
  const through = 1 / (1 / airSide + 1 / waterSide);
  return { conductance: STILL_CORE + flap * carries * (1 - Math.exp(-through / carries)), carries };
}
