/** A car: how it is laid out, what its parts measure, and what state they are in. SI inside. */

import { type Values, valuesOf } from './parameters.ts';
import { type Random, randomOf } from './random.ts';

/** How the circuit is laid out; words as on the shelf where it has them. */
export interface CarLayout {
  readonly fuel: 'petrol' | 'diesel';
  readonly thermostat: 'inlet side' | 'outlet side';
  readonly kind: 'plain wax' | 'by-pass closing' | 'map-controlled';
  readonly fan: 'electric, one stage' | 'electric, two stages' | 'viscous clutch';
  readonly fanSwitchedBy: 'engine controller' | 'switch in the radiator' | 'none';
  readonly pump: 'belt' | 'electric';
  readonly heater: 'always flowing' | 'valve-controlled' | 'auxiliary pump';
}

/** Where gas can sit. */
export type GasPlace = 'head' | 'heater' | 'radiator';

/** State of the parts. A sound car has `SOUND`; a fault changes some of it. */
export interface Condition {
  /** Lift of the thermostat never under, never over: 0 shut, 1 fully open. */
  readonly liftFloor: number;
  readonly liftCeiling: number;
  /** Thermostat works this far above its stamp, K. */
  readonly shift: number;
  /** Its stamp is this far off the right one, K: it works as stamped. */
  readonly wrongStamp: number;
  /** Stuck on its seat until this far above its opening, K; then it jumps. */
  readonly sticks: number;
  /** Passage past the seat or the seal, beside that of the radiator. */
  readonly seatPassage: number;
  /** By-pass stays open however far the thermostat opens. */
  readonly byPassStays: boolean;
  /** The element hangs in the radiator's return: it is the wrong way round. */
  readonly turnedRound: boolean;
  /** Heater of a map-controlled thermostat: as ordered, always on, or never. */
  readonly mapHeater: 'ordered' | 'always' | 'never';
  /** Share of its flow the pump makes; the rest of the head is lost. */
  readonly pump: number;
  /** Share lost to a slipping belt at 3,000 rpm, growing with engine speed. */
  readonly beltSlip: number;
  /** Engine speed above which a hose draws flat, rpm. */
  readonly hoseClosesAt: number;
  /** Open share of tubes, heater core and heater valve. */
  readonly tubes: number;
  readonly core: number;
  readonly valve: number;
  readonly heaterPump: boolean;
  /** Air that passes the fins, and the share of it the fan still draws. */
  readonly fins: number;
  readonly fanAir: number;
  readonly clutch: 'works' | 'seized';
  readonly clutchGrip: number;
  readonly condenserFan: boolean;
  /** Share of the blower's air; position the flap stands at, 0 cold to 1 hot. */
  readonly cabinAir: number;
  readonly flap: number | undefined;
  /** Heat lost by the skin beside the usual. */
  readonly skin: number;
  /** Drag of a brake, N. */
  readonly drag: number;
  /** Heat to the walls beside the usual, and what full load adds to that. */
  readonly heat: number;
  readonly heatByLoad: number;
  /** Coolant missing, m3. */
  readonly missing: number;
  /** Gas at the start and where, m3 at outside pressure; whether it finds its way out. */
  readonly pocket: number;
  readonly pocketIn: GasPlace;
  readonly vent: number;
  /** Opening pressure of the cap beside its stamp; vacuum it needs to let air in, Pa. */
  readonly cap: number;
  /** Stamp of the cap beside the right one: it opens as stamped. */
  readonly capStamp: number;
  readonly vacuum: number;
  /** Combustion gas at idle, m3/s at 20 °C and 101,325 Pa, and the coolant temperature above which it comes, K. */
  readonly gas: number;
  readonly gasAbove: number;
  /** Coolant lost at the opening pressure of the cap, m3/s, where, and below which temperature, K. */
  readonly leak: number;
  readonly leakSeen: boolean;
  readonly leakBelow: number;
  /** Glycol by mass in place of the car's own. */
  readonly mixture: number | undefined;
  /** Ohms in series with the sensor and beside it. */
  readonly series: number;
  readonly parallel: number;
  readonly sensor: 'works' | 'open' | 'shorted' | 'loose contact';
  readonly gauge: 'works' | 'wrong';
  /** Parts of the fan's circuit. */
  readonly fanMotor: 'works' | 'dead';
  readonly fanRelay: 'works' | 'stuck off' | 'stuck on';
  /** Resistance in the feed and in the earth of the fan, ohm. */
  readonly fanFeed: number;
  readonly fanEarth: number;
  readonly fanFuse: 'whole' | 'blown';
  readonly fanCommand: 'works' | 'open' | 'to earth';
  readonly fanSwitch: 'works' | 'open' | 'closed';
}

export const SOUND: Condition = {
  liftFloor: 0,
  liftCeiling: 1,
  shift: 0,
  wrongStamp: 0,
  sticks: 0,
  seatPassage: 0,
  byPassStays: false,
  turnedRound: false,
  mapHeater: 'ordered',
  pump: 1,
  beltSlip: 0,
  hoseClosesAt: Number.POSITIVE_INFINITY,
  tubes: 1,
  core: 1,
  valve: 1,
  heaterPump: true,
  fins: 1,
  fanAir: 1,
  clutch: 'works',
  clutchGrip: 1,
  condenserFan: true,
  cabinAir: 1,
  flap: undefined,
  skin: 1,
  drag: 0,
  heat: 1,
  heatByLoad: 0,
  missing: 0,
  pocket: 0,
  pocketIn: 'head',
  vent: 1,
  cap: 1,
  capStamp: 1,
  vacuum: 5e3,
  gas: 0,
  gasAbove: 0,
  leak: 0,
  leakSeen: true,
  leakBelow: 1000,
  mixture: undefined,
  series: 0,
  parallel: Number.POSITIVE_INFINITY,
  sensor: 'works',
  gauge: 'works',
  fanMotor: 'works',
  fanRelay: 'works',
  fanFeed: 0,
  fanEarth: 0,
  fanFuse: 'whole',
  fanCommand: 'works',
  fanSwitch: 'works',
};

export interface Car {
  readonly layout: CarLayout;
  /** m3. */
  readonly displacement: number;
  readonly values: Values;
  readonly condition: Condition;
}

const USUAL_LAYOUT: CarLayout = {
  fuel: 'petrol',
  thermostat: 'outlet side',
  kind: 'by-pass closing',
  fan: 'electric, two stages',
  fanSwitchedBy: 'engine controller',
  pump: 'belt',
  heater: 'always flowing',
};

/** The car every parameter of which has its usual figure. @param displacement m3 */
export function usualCar(layout: Partial<CarLayout> = {}, displacement = 1.6e-3): Car {
  const whole = { ...USUAL_LAYOUT, ...layout };
  return {
    layout: whole,
    displacement,
    values: stamped(
      valuesOf(whole.fuel, displacement, ([, usual]) => usual),
      whole,
    ),
    condition: SOUND,
  };
}

/** What is known of a car before it is drawn. */
export interface KnownFigures {
  readonly layout?: Partial<CarLayout>;
  /** m3. */
  readonly displacement?: number;
  /** Stamp of the thermostat, K. */
  readonly stamp?: number;
}

/**
 * A sound car drawn inside the ranges of the table: the same seed, the same car.
 *
 * @param known what is not left to chance
 */
export function drawCar(seed: number, known: KnownFigures = {}): Car {
  const random = randomOf(seed, 'car');
  const layout = { ...drawLayout(random), ...known.layout };
  const drawn = random.around(1, 1.6, 2.6) * 1e-3;
  const displacement = known.displacement ?? drawn;
  const values = valuesOf(layout.fuel, displacement, ([low, usual, high]) => random.around(low, usual, high));
  const fitted = stamped(values, layout);
  return {
    layout,
    displacement,
    values: known.stamp === undefined ? fitted : { ...fitted, stamp: known.stamp },
    condition: SOUND,
  };
}

/** Stamps are whole degrees; a map-controlled thermostat is stamped for its start without current. */
function stamped(values: Values, { kind }: CarLayout): Values {
  const plain = Math.round(values.stamp - 273.15) + 273.15;
  return { ...values, stamp: kind === 'map-controlled' ? plain + MAP_ABOVE_PLAIN : plain };
}

/** A map-controlled thermostat without current opens this far above a plain one, K; with current as far below that. */
export const MAP_ABOVE_PLAIN = 15;

function drawLayout(random: Random): CarLayout {
  const fan = random.chance(0.12)
    ? 'viscous clutch'
    : random.chance(0.5)
      ? 'electric, two stages'
      : 'electric, one stage';
  const bySwitch = random.chance(0.25);
  return {
    fuel: random.chance(0.4) ? 'diesel' : 'petrol',
    thermostat: random.chance(0.45) ? 'inlet side' : 'outlet side',
    kind: random.chance(0.15) ? 'map-controlled' : random.chance(0.7) ? 'by-pass closing' : 'plain wax',
    fan,
    fanSwitchedBy:
      fan === 'viscous clutch' ? 'none' : bySwitch ? 'switch in the radiator' : 'engine controller',
    pump: random.chance(0.1) ? 'electric' : 'belt',
    heater: random.chance(0.2)
      ? 'valve-controlled'
      : random.chance(0.1)
        ? 'auxiliary pump'
        : 'always flowing',
  };
}
