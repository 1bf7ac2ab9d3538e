/** The level a log held. */
import type { ColdSide } from './cold-side.ts';

/** Middle of what it held, K; NaN where it held nothing. */
export function levelOf(cold: ColdSide): number {
  return cold.is === 'opens' ? cold.held.level : (cold.settled?.level ?? Number.NaN);
}
