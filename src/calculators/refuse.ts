/** How a calculator refuses what it cannot work with. */
import type { Refusal } from './declaration.ts';

/**
 * @param name the input that the message stands at
 * @param message what is wrong and what to do
 */
export function refuse(name: string, message: string): Refusal {
  return { refused: { name, message } };
}
