import { LARGEST_SYSTEM } from './flushing.ts';
import { within } from './out-of-range.ts';
import { type CubicMetre, cubicMetre, type VolumeFraction, volumeFraction } from './units.ts';

const SMALLEST_SYSTEM = 1e-4;

/** Strengths nearer than this cannot be told apart by any workshop instrument. */
const SAME_STRENGTH = 1e-6;

/** A full system whose mixture is to change. */
export interface CorrectionQuestion {
  /** What the full system holds, 0.0001 to 0.2 m3. */
  readonly capacity: CubicMetre;
  /** Strength found. */
  readonly is: VolumeFraction;
  /** Strength wanted. */
  readonly wanted: VolumeFraction;
  /** Strength of what is added: 1 concentrate, 0 water, between them a ready mix. */
  readonly adding: VolumeFraction;
}

/** What to drain and add, or why it cannot be done. */
export type Correction =
  | { readonly verdict: 'right already' }
  | { readonly verdict: 'drain and add'; readonly drain: CubicMetre; readonly add: CubicMetre }
  /** What is added lies on the wrong side of the strength wanted; the best it can reach is its own strength. */
  | { readonly verdict: 'not reachable'; readonly needs: 'stronger' | 'weaker' };

/**
 * How much to drain from a full system and replace so that it gets the strength wanted.
 *
 * Mass balance on volumes before mixing, V (wanted - is)/(adding - is). The 1 % by which water and glycol shrink on mixing is ignored.
 * @throws OutOfRange on any of the figures
 */
export function correctMixture(question: CorrectionQuestion): Correction {
  const capacity = checkVolume('system capacity', question.capacity);
  const is = checkFraction('strength found', question.is);
  const wanted = checkFraction('strength wanted', question.wanted);
  const adding = checkFraction('strength of what is added', question.adding);
  if (Math.abs(wanted - is) < SAME_STRENGTH) return { verdict: 'right already' };
  const share = (wanted - is) / (adding - is);
  if (!(share > 0 && share <= 1))
    return { verdict: 'not reachable', needs: wanted > is ? 'stronger' : 'weaker' };
  const drain = cubicMetre(capacity * share);
  return { verdict: 'drain and add', drain, add: drain };
}

/** A system that was drained in part and is to be filled. */
export interface FillQuestion {
  /** What the full system holds, 0.0001 to 0.2 m3. */
  readonly capacity: CubicMetre;
  /** What stayed inside, up to the capacity. */
  readonly remaining: CubicMetre;
  /** Strength of what stayed; 0 after flushing with water. */
  readonly remainingStrength: VolumeFraction;
  readonly wanted: VolumeFraction;
  /** The stronger of the two that are filled, 1 for concentrate. */
  readonly strong: VolumeFraction;
  /** The weaker, 0 for water. */
  readonly weak: VolumeFraction;
}

/** What to fill, or why it cannot be done. */
export type Fill =
  | { readonly verdict: 'fill'; readonly strong: CubicMetre; readonly weak: CubicMetre }
  | {
      readonly verdict: 'not reachable';
      /** What stayed inside is too weak, or too strong, for what there is room to add. */
      readonly remainder: 'too weak' | 'too strong';
      /** Nearest strength that can be had by filling with one of the two alone. */
      readonly nearest: VolumeFraction;
      /** Most that may stay inside for the strength wanted; absent when even an empty system would not do. */
      readonly mayRemain?: CubicMetre;
    };

/**
 * How much of a strong and a weak liquid to fill after a part drain.
 *
 * Mass balance on volumes before mixing.
 * @throws OutOfRange on any of the figures, and when strong is not stronger than weak
 */
export function fillAfterDrain(question: FillQuestion): Fill {
  const capacity = checkVolume('system capacity', question.capacity);
  const remaining = within('volume left inside', question.remaining, 0, capacity, 'm3');
  const left = checkFraction('strength of what stayed inside', question.remainingStrength);
  const wanted = checkFraction('strength wanted', question.wanted);
  const weak = checkFraction('strength of the weaker liquid', question.weak);
  const strong = within('strength of the stronger liquid', question.strong, weak + SAME_STRENGTH, 1, '1');
  const room = capacity - remaining;
  const strongVolume = (wanted * capacity - left * remaining - weak * room) / (strong - weak);
  if (strongVolume >= -SAME_STRENGTH * capacity && strongVolume <= room + SAME_STRENGTH * capacity) {
    const filled = Math.min(Math.max(strongVolume, 0), room);
    return { verdict: 'fill', strong: cubicMetre(filled), weak: cubicMetre(room - filled) };
  }
  const limiting = strongVolume > room ? strong : weak;
  return {
    verdict: 'not reachable',
    remainder: strongVolume > room ? 'too weak' : 'too strong',
    nearest: volumeFraction((left * remaining + limiting * room) / capacity),
    ...mayRemain(capacity, left, wanted, limiting),
  };
}

function mayRemain(
  capacity: number,
  left: number,
  wanted: number,
  limiting: number,
): { mayRemain?: CubicMetre } {
  const share = (limiting - wanted) / (limiting - left);
  return share >= 0 && share <= 1 ? { mayRemain: cubicMetre(capacity * share) } : {};
}

function checkVolume(name: string, volume: CubicMetre): number {
  return within(name, volume, SMALLEST_SYSTEM, LARGEST_SYSTEM, 'm3');
}

function checkFraction(name: string, fraction: VolumeFraction): number {
  return within(name, fraction, 0, 1, '1');
}
