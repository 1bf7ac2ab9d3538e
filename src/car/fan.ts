/** The fan: who asks for it, through what it is fed, what air it draws. */
import type { Car } from './car.ts';
import type { Moment } from './drive.ts';
import type { State } from './state.ts';

/** V at the battery with the engine running, and standing. */
export const CHARGING = 13.8;
export const STANDING = 12.5;
/** Resistance of the motor by stage, ohm: 11 A and 25 A at 13.8 V. Common practice, no source. */
const MOTOR = [1.25, 0.55] as const;
/** Sound wires, fuse, relay and joints together, ohm. */
const SOUND_PATH = 0.012;
/** A switch in the radiator sits where it is cooler: it works this far below a controller's figures, K. */
const SWITCH_BELOW = 2;

/** Figures of the fan, K. */
export function fanFigures({ values }: Car): { on: number; off: number; fast: number } {
  const on = values.stamp + values.fanOn;
  return { on, off: on - values.fanOff, fast: on + values.fanFast };
}

/**
 * Stage asked for, 0 to 2.
 *
 * @param reading what the controller takes the coolant to be, K; undefined with a sensor it knows to be faulty
 */
export function stageAsked(car: Car, state: State, moment: Moment, reading: number | undefined): 0 | 1 | 2 {
  const { layout, condition } = car;
  const most = layout.fan === 'electric, two stages' ? 2 : 1;
  if (condition.fanCommand === 'to earth') return most;
  if (condition.fanCommand === 'open') return 0;
  const bySwitch = layout.fanSwitchedBy === 'switch in the radiator';
  if (bySwitch && condition.fanSwitch === 'closed') return most;
  if (bySwitch && condition.fanSwitch === 'open') return moment.airConditioning ? 1 : 0;
  // A controller that has lost its sensor cools what it can.
  if (!bySwitch && reading === undefined) return most;
  const felt = bySwitch ? state.slice2 + SWITCH_BELOW : (reading ?? state.head);
  const { on, off, fast } = fanFigures(car);
  const one = felt > (state.fanStage > 0 ? off : on);
  const two = most === 2 && felt > (state.fanStage === 2 ? on : fast);
  if (two) return 2;
  return one || moment.airConditioning ? 1 : 0;
}

export interface FanFeed {
  /** Stage it turns at, 0 when it stands. */
  readonly stage: 0 | 1 | 2;
  /** A, and V across the motor. */
  readonly current: number;
  readonly volts: number;
  /** V lost between battery and motor, and between motor and battery earth. */
  readonly dropFeed: number;
  readonly dropEarth: number;
}

const STANDS: FanFeed = { stage: 0, current: 0, volts: 0, dropFeed: 0, dropEarth: 0 };

/** What the motor gets when a stage is asked for. @param supply V */
export function feedOf({ condition, layout }: Car, asked: 0 | 1 | 2, supply: number): FanFeed {
  const stuckOn = condition.fanRelay === 'stuck on';
  const most = layout.fan === 'electric, two stages' ? 2 : 1;
  const stage = stuckOn ? most : asked;
  if (stage === 0 || condition.fanFuse === 'blown') return STANDS;
  if (condition.fanRelay === 'stuck off') return STANDS;
  if (condition.fanMotor === 'dead') return { ...STANDS, volts: supply };
  const motor = most === 1 ? MOTOR[1] : MOTOR[stage - 1 === 0 ? 0 : 1];
  const feed = SOUND_PATH + condition.fanFeed;
  const current = supply / (motor + feed + condition.fanEarth);
  return {
    stage,
    current,
    volts: current * motor,
    dropFeed: current * feed,
    dropEarth: current * condition.fanEarth,
  };
}

/** Grip of a viscous clutch: from this air behind the radiator, over so many kelvin, following with a lag. K, s. */
const GRIPS_AT = 328;
const GRIPS_OVER = 15;
const GRIP_LAG = 25;
const LOOSE = 0.2;
/** Engine speed at which a locked clutch draws the air of the table's first fan stage, rpm. */
const CLUTCH_REFERENCE = 1300;
const CLUTCH_MOST = 2500;

/** Moves the fan a second on and gives the air it draws at the face, m/s. Changes `state`. */
export function turnFan(
  car: Car,
  state: State,
  moment: Moment,
  reading: number | undefined,
  rpm: number,
): number {
  const { values, layout, condition } = car;
  if (layout.fan === 'viscous clutch') {
    const behind = state.slice4 - 8;
    const wanted = Math.min(1, Math.max(LOOSE, (behind - GRIPS_AT) / GRIPS_OVER));
    state.grip += (wanted - state.grip) / GRIP_LAG;
    const grip = condition.clutch === 'seized' ? 1 : Math.max(0.08, state.grip * condition.clutchGrip);
    state.fanStage = grip > 0.6 ? 1 : 0;
    return (values.fanAir * condition.fanAir * grip * Math.min(rpm, CLUTCH_MOST)) / CLUTCH_REFERENCE;
  }
  const asked = moment.running ? stageAsked(car, state, moment, reading) : 0;
  const { stage, volts } = feedOf(car, asked, moment.running ? CHARGING : STANDING);
  state.fanStage = stage === 0 && asked > 0 ? asked : stage;
  if (stage === 0 || condition.fanMotor === 'dead') return 0;
  const full = layout.fan === 'electric, one stage' || stage === 1 ? values.fanAir : values.fanFastAir;
  const sound = feedOf(
    { ...car, condition: { ...condition, fanFeed: 0, fanEarth: 0 } },
    stage,
    CHARGING,
  ).volts;
  return full * condition.fanAir * Math.min(1, volts / sound);
}
