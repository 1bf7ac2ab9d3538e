import type { Records } from './shelf.ts';

/**
 * Causes that a walk can end at: those of every symptom's list and of every tree.
 * @returns where it was found first, in words, by cause
 */
export function walkCauses(records: Records): Map<string, string> {
  const found = new Map<string, string>();
  const add = (cause: string, from: string): void => {
    if (!found.has(cause)) found.set(cause, from);
  };
  for (const { id, data } of records.tree.values()) {
    for (const step of Object.values(data.steps))
      if (step.prove !== undefined) add(step.prove, `tree "${id}"`);
    for (const end of Object.values(data.ends)) for (const cause of end.causes) add(cause, `tree "${id}"`);
  }
  for (const { id, data } of records.symptom.values())
    for (const cause of Object.keys(data.causes)) add(cause, `symptom "${id}"`);
  return found;
}
