import { within } from './out-of-range.ts';
import type { Thread } from './thread.ts';
import { type Metre, type Newton, newton } from './units.ts';

/** Shear strength of a tapped hole, Pa: 0.7 of the tensile strength (machine-element handbooks). */
export const SHEAR_STRENGTH = {
  /** Pressure die casting EN AC-46000, tensile strength 240 MPa, from memory. */
  aluminium: 0.7 * 240e6,
  /** Grey iron EN-GJL-250, tensile strength 250 MPa; handbooks give cast iron 1.0 to 1.1 of it, 0.9 taken. */
  'cast iron': 0.9 * 250e6,
  /** Mild steel, tensile strength 400 MPa, 0.6 of it. */
  steel: 0.6 * 400e6,
} as const;

/** Metal a hole may be tapped into. */
export type TappedMetal = keyof typeof SHEAR_STRENGTH;

/** The load that strips a hole may be out by this share either way: castings differ, and no standard gives a strength. */
export const STRIPPING_SCATTER = 0.15;

/**
 * Load at which the thread of a tapped hole shears out.
 *
 * Shear area of the internal thread at nominal dimensions, pi d L/P (P/2 + (d - D2)/sqrt 3); ISO 898 gives no
 * strength for a hole, so the answer is good to about 15 %.
 * @param engagement length of thread that carries, above 0 to 0.1 m
 * @returns N
 * @throws OutOfRange on engagement
 */
export function strippingLoad(thread: Thread, engagement: Metre, into: TappedMetal): Newton {
  const length = within('thread engagement', engagement, 1e-4, 0.1, 'm');
  const { diameter, pitch } = thread;
  // d - D2 of a nominal thread is 0.649519 P.
  const area = ((Math.PI * diameter * length) / pitch) * (pitch / 2 + (0.649519 * pitch) / Math.sqrt(3));
  return newton(area * SHEAR_STRENGTH[into]);
}
