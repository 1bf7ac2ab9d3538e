import { type KnownLayout, type LayoutCondition, layoutAllows } from '../../model/layout.ts';

/** What a complaint needs of a vehicle, with its words. */
export interface Needs {
  layout: LayoutCondition;
  words: string;
}

/**
 * The sentence for a vehicle that cannot have a complaint, such as a battery-electric car and white exhaust.
 * @returns undefined when it can, or when the vehicle is not known
 */
export function notHere(needs: Needs | undefined, known: KnownLayout): string | undefined {
  if (!needs || layoutAllows(needs.layout, known)) return undefined;
  const why = known.power === 'battery electric' ? 'it has no engine' : `this takes ${needs.words}`;
  return `Not on this vehicle: ${why}.`;
}
