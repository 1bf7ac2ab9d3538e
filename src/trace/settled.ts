/** The stretches at speed, each once the temperature has settled. */
import { extentOf, type Grid, middleOf, riseOver } from './grid.ts';
import type { Drive, Stretch } from './stretches.ts';

/** One stretch at speed, once the temperature has settled. */
export interface SettledStretch extends Stretch {
  /** Middle of the last minutes, K. */
  level: number;
  /** Least and greatest in them, K. */
  low: number;
  high: number;
  /** Rise at the end, K/s. */
  rise: number;
  /** Highest before it, K. */
  before: number;
}

/** The first minutes at speed still carry what was before, s. */
const SETTLING = 120;
/** Slower than this is settled, K/s: 0.6 K a minute. */
export const SETTLED_RISE = 0.01;

/** Each stretch at speed that was long enough to settle, with where it settled, in K. */
export function settledAtSpeed(grid: Grid, drive: Drive): SettledStretch[] {
  const { smooth, step } = grid;
  const points = (seconds: number) => Math.round(seconds / step);
  return drive.atSpeed
    .map(({ from, to }): SettledStretch => {
      // The stretch ends with slowing down; what the temperature does then is no longer the speed's doing.
      const end = Math.max(from, to - points(20));
      const first = Math.max(from + points(SETTLING), end - points(180));
      const { low, high } = extentOf(smooth, first, end);
      return {
        from,
        to: end,
        level: middleOf(smooth, first, end),
        low,
        high,
        rise: riseOver(grid, Math.max(from + points(SETTLING / 2), end - points(180)), end),
        before: extentOf(smooth, 0, from).high,
      };
    })
    .filter(({ level, rise }) => Number.isFinite(level) && Number.isFinite(rise));
}
