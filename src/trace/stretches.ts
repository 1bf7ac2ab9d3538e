/** The drive cut into stretches that mean something: standing, and at speed. */
import type { Grid } from './grid.ts';
import { runningMean } from './grid.ts';

/** From and to are points of the grid, ends included. */
export interface Stretch {
  from: number;
  to: number;
}

/** Slower than this is standing, m/s. */
const STANDING = 1;
/** Faster than this, for three minutes and more, is at speed, m/s: 54 km/h. */
const AT_SPEED = 15;
const SHORTEST_STANDING = 60;
const SHORTEST_AT_SPEED = 180;

export interface Drive {
  standing: Stretch[];
  atSpeed: Stretch[];
  /** Seconds at speed altogether. */
  secondsAtSpeed: number;
}

/** @returns undefined when the log has no road speed */
export function driveOf({ signals, step }: Grid): Drive | undefined {
  const { speed } = signals;
  if (!speed) return undefined;
  const even = runningMean(speed, Math.round(10 / step));
  const standing = stretchesWhere(
    speed.length,
    (at) => (speed[at] ?? 9) < STANDING,
    SHORTEST_STANDING / step,
  );
  const atSpeed = stretchesWhere(speed.length, (at) => (even[at] ?? 0) > AT_SPEED, SHORTEST_AT_SPEED / step);
  return {
    standing,
    atSpeed,
    secondsAtSpeed: atSpeed.reduce((sum, { from, to }) => sum + (to - from) * step, 0),
  };
}

/**
 * Stretches in which something holds.
 * @param length points of the grid
 * @param shortest points between the ends of one that counts
 */
export function stretchesWhere(length: number, holds: (at: number) => boolean, shortest: number): Stretch[] {
  const found: Stretch[] = [];
  let from = -1;
  for (let at = 0; at <= length; at++) {
    const inside = at < length && holds(at);
    if (inside && from === -1) from = at;
    if (!inside && from !== -1) {
      if (at - from >= shortest) found.push({ from, to: at - 1 });
      from = -1;
    }
  }
  return found;
}

/** Whether two stretches have a point in common. */
export function overlaps(a: Stretch, b: Stretch): boolean {
  return a.from <= b.to && b.from <= a.to;
}
