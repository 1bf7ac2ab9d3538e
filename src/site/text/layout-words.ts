/** A layout condition in words: "heater valve-controlled; an electric fan". */
import { LAYOUT_FEATURES, LAYOUT_LABELS, type LayoutCondition } from '../../model/layout.ts';
import { inSentence } from './in-sentence.ts';

/** Values that have one name together. */
const TOGETHER: readonly (readonly [LayoutCondition, string])[] = [
  [{ power: ['combustion', 'hybrid'] }, 'an engine'],
  [{ thermostat: ['inlet side', 'outlet side'] }, 'a thermostat'],
  [{ fan: ['electric, one stage', 'electric, two stages', 'electric, pulse-width'] }, 'an electric fan'],
  [{ pump: ['accessory belt', 'timing belt'] }, 'a coolant pump driven by a belt'],
];

/** A condition as a mechanic says it, its features one after the other. */
export function layoutWords(condition: LayoutCondition): string {
  return LAYOUT_FEATURES.flatMap((feature) => {
    const values = condition[feature];
    if (!values) return [];
    const [, name] = TOGETHER.find(([other]) => isSame(other[feature], values)) ?? [];
    return [name ?? `${inSentence(LAYOUT_LABELS[feature])} ${values.join(' or ')}`];
  }).join('; ');
}

function isSame(some: readonly string[] | undefined, others: readonly string[]): boolean {
  return some?.length === others.length && some.every((value) => others.includes(value));
}
