import { within } from './out-of-range.ts';
import type { CubicMetre } from './units.ts';

/** More than any road vehicle holds, m3. */
export const LARGEST_SYSTEM = 0.2;

/** Draining less than this share each time is no flushing. */
const SMALLEST_SHARE = 0.05;
/** Beyond this count the answer would be another method. */
const MOST_FLUSHES = 1000;

/**
 * Share of the old coolant left after draining, filling with water and running warm a number of times.
 *
 * Perfect mixing in between: (1 - drained/capacity)^n. A core that no flow reaches keeps more.
 * @param capacity of the full system, 0.0001 to 0.2 m3
 * @param drained each time, 5 % of the capacity to all of it
 * @param flushes 0 to 1,000, whole
 * @throws OutOfRange on any of them
 */
export function oldCoolantLeft(capacity: CubicMetre, drained: CubicMetre, flushes: number): number {
  const times = Math.round(within('number of flushes', flushes, 0, MOST_FLUSHES, '1'));
  return (1 - shareDrained(capacity, drained)) ** times;
}

/**
 * How many times to drain and fill until less than a share of the old coolant is left.
 *
 * @param capacity of the full system, 0.0001 to 0.2 m3
 * @param drained each time, 5 % of the capacity to all of it
 * @param below share of old coolant wanted at the end, 0.001 to 1
 * @throws OutOfRange on any of them
 */
export function flushesToBelow(capacity: CubicMetre, drained: CubicMetre, below: number): number {
  const wanted = within('old coolant left', below, 0.001, 1, '1');
  const kept = 1 - shareDrained(capacity, drained);
  let flushes = 0;
  while (kept ** flushes >= wanted) flushes++;
  return flushes;
}

function shareDrained(capacity: CubicMetre, drained: CubicMetre): number {
  const all = within('system capacity', capacity, 1e-4, LARGEST_SYSTEM, 'm3');
  return within('drained volume', drained, SMALLEST_SHARE * all, all, 'm3') / all;
}
