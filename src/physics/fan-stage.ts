import { within } from './out-of-range.ts';
import { findWhere } from './root.ts';
import { type Ampere, ampere, type Ohm, type Volt, volt, type Watt, watt } from './units.ts';

/**
 * Share of its voltage that a brushed fan motor loses in its own winding and brushes at full speed: its stalled current is three to
 * ten times the running one. From memory of makers' sheets.
 */
export const WINDING_SHARE = { least: 0.1, usual: 0.2, most: 0.35 } as const;

/** A brushed motor with a fan on it, as it runs at full speed. */
export interface FanMotor {
  /** At its plug, at full speed, 5 to 30 V. */
  readonly rated: Volt;
  /** Drawn then, 0.5 to 150 A. */
  readonly current: Ampere;
}

/** How it runs on less. */
export interface FanRuns {
  /** At the motor's plug. */
  readonly volts: Volt;
  /** Mean current of the motor. */
  readonly current: Ampere;
  /** Speed and air beside full speed: air goes with the speed. */
  readonly speed: number;
  /** Power on the shaft beside full speed. */
  readonly power: number;
}

/**
 * Speed and current of a fan motor on another voltage.
 *
 * Fan laws (air with the speed, torque with its square, power with its cube; ISO 5801) on a motor whose back voltage goes with the
 * speed and whose winding takes its share: V = V0 ((1 − e) s + e s²), I = I0 s². Within a tenth of the speed for a winding of 0.1 to 0.35, down to four tenths of the volts.
 * @param volts at its plug, 0 to 1.4 of the rated
 * @param winding share as `WINDING_SHARE`
 * @throws OutOfRange on any figure
 */
export function fanOnVolts(motor: FanMotor, volts: Volt, winding: number = WINDING_SHARE.usual): FanRuns {
  return runsAt(motor, speedFor(motor, volts, 0, winding), winding);
}

/**
 * How a fan motor runs behind a series resistor.
 *
 * As `fanOnVolts`, with the resistor's own drop: U = V0 ((1 − e) s + e s²) + R I0 s².
 * @param supply before the resistor, 5 to 30 V
 * @param resistor 0 to 10 ohm
 * @throws OutOfRange on any figure
 */
export function fanBehindResistor(
  motor: FanMotor,
  supply: Volt,
  resistor: Ohm,
  winding: number = WINDING_SHARE.usual,
): FanRuns & { readonly heat: Watt } {
  const r = within('series resistor', resistor, 0, 10, 'ohm');
  const runs = runsAt(motor, speedFor(motor, supply, r, winding), winding);
  return { ...runs, heat: watt(runs.current ** 2 * r) };
}

/**
 * How a fan motor runs on a chopped supply, its current carried on between the pulses by a diode: the mean voltage counts.
 *
 * @param duty share of the time that the supply is on, 0 to 1
 * @returns with the mean current of the supply line, which is the motor's times the duty
 * @throws OutOfRange on any figure
 */
export function fanOnDuty(
  motor: FanMotor,
  supply: Volt,
  duty: number,
  winding: number = WINDING_SHARE.usual,
): FanRuns & { readonly fromBattery: Ampere } {
  const on = within('duty', duty, 0, 1, '1');
  const runs = fanOnVolts(motor, volt(supply * on), winding);
  return { ...runs, fromBattery: ampere(runs.current * on) };
}

function speedFor(motor: FanMotor, supply: number, resistor: number, winding: number): number {
  const rated = within('rated voltage', motor.rated, 5, 30, 'V');
  const current = within('current at full speed', motor.current, 0.5, 150, 'A');
  const volts = within('voltage', supply, 0, 1.4 * rated, 'V');
  const e = within('share of the winding', winding, 0, 0.9, '1');
  if (volts === 0) return 0;
  return findWhere((s) => rated * ((1 - e) * s + e * s * s) + resistor * current * s * s, volts, 0, 1.5);
}

function runsAt({ rated, current }: FanMotor, s: number, e: number): FanRuns {
  return {
    volts: volt(rated * ((1 - e) * s + e * s * s)),
    current: ampere(current * s * s),
    speed: s,
    power: s ** 3,
  };
}

/** Current beside the expected one: right within the first, past the second it is a fault. The record of the fan's current goes by the same. Common practice, no source. */
export const CURRENT_RIGHT_WITHIN = 0.25;
export const CURRENT_WRONG_FROM = 0.35;
/** Missing at the motor's own plug: from here on it is starved, V. The same record. Common practice, no source. */
export const STARVED_FROM = 1;
