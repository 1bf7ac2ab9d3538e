import type { Thread } from './thread.ts';
import { nutFactor } from './tightening.ts';
import { type NewtonMetre, newtonMetre } from './units.ts';

/**
 * Friction of a thread and head as a workshop finds them, with the class of VDI 2230 part 1 (table A5, from memory) whose span it lies in; measured
 * by ISO 16047. Dry is a clean, plated bolt as delivered.
 */
export const FRICTION = {
  paste: { coefficient: 0.08, class: 'A', span: [0.04, 0.1] },
  oiled: { coefficient: 0.1, class: 'B', span: [0.08, 0.16] },
  usual: { coefficient: 0.14, class: 'B', span: [0.08, 0.16] },
  dry: { coefficient: 0.16, class: 'C', span: [0.14, 0.24] },
} as const;

/** How a thread is found. */
export type Lubrication = keyof typeof FRICTION;

/**
 * Torque that gives the same clamp load at another friction.
 *
 * Torque equation of VDI 2230 part 1: at one load the torque goes with the nut factor. Friction of one state scatters by a quarter, and so does this.
 * @param given 0 N·m and more, for a thread as `meant`
 */
export function torqueAtFriction(
  thread: Thread,
  given: NewtonMetre,
  meant: Lubrication,
  found: Lubrication,
): NewtonMetre {
  const factor = (state: Lubrication) => nutFactor(thread, FRICTION[state].coefficient);
  return newtonMetre((given * factor(found)) / factor(meant));
}
