import { within } from './out-of-range.ts';
import type { Metre } from './units.ts';

/** Fastest that a car engine or its pump turns, 1/min. */
const FASTEST = 30_000;
/** Pulleys of a belt drive, m. */
const PULLEY = [0.01, 1] as const;

/** A sound ribbed or V belt slips and creeps by up to this share; from the second on it is a fault. Common practice, no source. */
export const SLIPS_TO = 0.03;
export const SLIPS_FROM = 0.06;
/** Pumps turn at so many times the crank; past that the pulleys are looked at again. Common practice, no source. */
export const USUAL_RATIO = [0.7, 2] as const;

/** Two pulleys under one belt, both measured the same way: over the belt, or both in its groove. */
export interface BeltDrive {
  readonly crankPulley: Metre;
  readonly pumpPulley: Metre;
}

/**
 * Turns of the pump for one of the crank, nothing slipping: the belt runs as fast over both.
 *
 * @throws OutOfRange on a pulley under 10 mm or over 1 m
 */
export function driveRatio({ crankPulley, pumpPulley }: BeltDrive): number {
  return (
    within('crank pulley', crankPulley, ...PULLEY, 'm') / within('pump pulley', pumpPulley, ...PULLEY, 'm')
  );
}

/**
 * Speed of the pump, 1/min.
 *
 * n₂ = n₁ d₁/d₂ (1 − slip); textbook of machine elements, such as Khurmi and Gupta, Theory of Machines, 11.4.
 * @param crank 0 to 30,000 1/min
 * @param slip 0 to 1
 * @throws OutOfRange on any figure
 */
export function pumpSpeed(drive: BeltDrive, crank: number, slip: number): number {
  return (
    within('crank speed', crank, 0, FASTEST, '1/min') *
    driveRatio(drive) *
    (1 - within('slip', slip, 0, 1, '1'))
  );
}

/**
 * Share by which the pump is behind the belt; negative where it was read faster.
 *
 * @param crank 1 to 30,000 1/min
 * @param pump 0 to 30,000 1/min
 * @throws OutOfRange on any figure
 */
export function slipOf(drive: BeltDrive, crank: number, pump: number): number {
  const driven = within('crank speed', crank, 1, FASTEST, '1/min') * driveRatio(drive);
  return 1 - within('pump speed', pump, 0, FASTEST, '1/min') / driven;
}

/** Bits of a decimal. */
const SLACK = 1e-9;

/** What a slip says. 'faster' cannot be: a pulley or a speed is read wrong. */
export type SlipVerdict = 'holds' | 'doubtful' | 'slips' | 'faster';

/** Whether a belt holds. @param slip as `slipOf` gives it */
export function judgeSlip(slip: number): SlipVerdict {
  const share = within('slip', slip, -Infinity, 1, '1');
  if (share < -SLIPS_TO - SLACK) return 'faster';
  if (share <= SLIPS_TO + SLACK) return 'holds';
  return share >= SLIPS_FROM - SLACK ? 'slips' : 'doubtful';
}
