import { type PropertyClass, STRENGTH } from './bolt.ts';
import { within } from './out-of-range.ts';
import { pitchDiameter, stressArea, stressDiameter, type Thread } from './thread.ts';
import { type Newton, type NewtonMetre, newton, newtonMetre } from './units.ts';

/** Share of the yield strength that tightening may use up, pull and twist together. VDI 2230. */
const SHARE_OF_YIELD = 0.9;

/** Friction coefficients between which a formula for metal threads makes sense: waxed to dry and rusty. */
const FRICTION_LIMITS = [0.04, 0.4] as const;

/** More than any wrench gives, N·m; whether a bolt can take it is another question. */
const HIGHEST_TORQUE = 1e5;

/**
 * Clamp load at which a bolt being tightened has used 90 % of its yield strength, pull and twist together.
 *
 * VDI 2230 part 1, assembly preload; within 0.6 % of its printed table for fine threads.
 * @param friction in the thread, 0.04 to 0.4
 * @returns N
 * @throws OutOfRange on friction
 */
export function assemblyPreload(thread: Thread, propertyClass: PropertyClass, friction: number): Newton {
  const mu = checkFriction(friction);
  const d2 = pitchDiameter(thread);
  // Thread flank angle 60 degrees: friction counts 1/cos 30 = 1.155 times.
  const twist = 1.5 * (d2 / stressDiameter(thread)) * (thread.pitch / (Math.PI * d2) + 1.155 * mu);
  const pull = SHARE_OF_YIELD * STRENGTH[propertyClass].yield * stressArea(thread);
  return newton(pull / Math.sqrt(1 + 3 * twist ** 2));
}

/**
 * Torque that gives the assembly preload.
 *
 * VDI 2230 part 1, same friction in the thread and under a hexagon head.
 * @param friction 0.04 to 0.4
 * @returns N·m
 * @throws OutOfRange on friction
 */
export function tighteningTorque(
  thread: Thread,
  propertyClass: PropertyClass,
  friction: number,
): NewtonMetre {
  return newtonMetre(assemblyPreload(thread, propertyClass, friction) * leverOf(thread, friction));
}

/**
 * Torque at which a bolt of the least strength allowed breaks while it is tightened.
 *
 * The tightening torque of VDI 2230 part 1, all of the minimum tensile strength of ISO 898-1 in the place of 90 % of yield.
 * @param friction 0.04 to 0.4
 * @returns N·m
 * @throws OutOfRange on friction
 */
export function breakingTorque(thread: Thread, propertyClass: PropertyClass, friction: number): NewtonMetre {
  const { tensile, yield: yields } = STRENGTH[propertyClass];
  return newtonMetre(
    (tighteningTorque(thread, propertyClass, friction) * tensile) / (SHARE_OF_YIELD * yields),
  );
}

/**
 * Clamp load from a torque, whatever the bolt can bear.
 *
 * VDI 2230 part 1, torque equation. Real joints scatter by 25 to 30 % about it.
 * @param torque 0 to 100,000 N·m
 * @param friction 0.04 to 0.4
 * @returns N
 * @throws OutOfRange on torque or friction
 */
export function clampLoad(thread: Thread, torque: NewtonMetre, friction: number): Newton {
  return newton(within('torque', torque, 0, HIGHEST_TORQUE, 'N·m') / leverOf(thread, friction));
}

/**
 * Nut factor K of the short torque equation T = K d F for a friction.
 *
 * @param friction 0.04 to 0.4
 * @throws OutOfRange on friction
 */
export function nutFactor(thread: Thread, friction: number): number {
  return leverOf(thread, friction) / thread.diameter;
}

/**
 * Clamp load by the short torque equation F = T/(K d).
 *
 * Textbook form; K stands for friction, pitch and head together, about 0.2 for dry zinc-plated steel.
 * @param torque 0 to 100,000 N·m
 * @param factor K, 0.05 to 0.6
 * @returns N
 * @throws OutOfRange on torque or factor
 */
export function clampLoadByNutFactor(thread: Thread, torque: NewtonMetre, factor: number): Newton {
  const k = within('nut factor', factor, 0.05, 0.6, '1');
  return newton(within('torque', torque, 0, HIGHEST_TORQUE, 'N·m') / (k * thread.diameter));
}

/** Where a tightening torque goes, as shares of the whole that sum to 1. */
export interface TorqueShares {
  /** Climbs the helix: the only part that stretches the bolt. */
  readonly clamp: number;
  /** Rubs in the thread. */
  readonly thread: number;
  /** Rubs under the head. */
  readonly head: number;
}

/**
 * Where a tightening torque goes.
 *
 * VDI 2230 part 1, torque equation, term by term; same friction in the thread and under the head.
 * @param friction 0.04 to 0.4
 * @throws OutOfRange on friction
 */
export function torqueShares(thread: Thread, friction: number): TorqueShares {
  const levers = leversOf(thread, friction);
  const whole = leverOf(thread, friction);
  return { clamp: levers.clamp / whole, thread: levers.thread / whole, head: levers.head / whole };
}

/** Torque by clamp load, m. VDI 2230. */
function leverOf(thread: Thread, friction: number): number {
  const levers = leversOf(thread, friction);
  return levers.clamp + levers.thread + levers.head;
}

/** The three terms of it, m: helix, thread friction, head friction. */
function leversOf(thread: Thread, friction: number): TorqueShares {
  const mu = checkFriction(friction);
  const headRadius = (thread.bearingFace + thread.clearanceHole) / 4;
  return { clamp: 0.16 * thread.pitch, thread: 0.58 * pitchDiameter(thread) * mu, head: headRadius * mu };
}

function checkFriction(friction: number): number {
  return within('friction coefficient', friction, FRICTION_LIMITS[0], FRICTION_LIMITS[1], '1');
}
