/** A layout condition in words: "heater valve-controlled; an electric fan". */
import { LAYOUT_FEATURES, LAYOUT_LABELS, type LayoutCondition } from '../../model/layout.ts';
import { inSentence } from './in-sentence.ts';

/** Values that have one name together. */
const TOGETHER: readonly (readonly [LayoutCondition, string])[] = [
  [{ power: ['combustion', 'hybrid'] }, 'an engine'],
  [{ thermostat: ['inlet side', 'outlet side'] }, 'a thermostat'],
  [{ fan: ['electric, one stage', 'electric, two stages', 'electric, pulse-width'] }, 'an electric fan'],
  [{ pump: ['electric'] }, 'an electric coolant pump'],
  [{ pump: ['accessory belt', 'timing belt'] }, 'a coolant pump driven by a belt'],
  [{ pump: ['accessory belt', 'timing belt', 'chain or gears'] }, 'a coolant pump that the engine drives'],
  [
    { 'oil-cooler': ['on the circuit', 'in the radiator', 'on the circuit and air-cooled'] },
    'an oil cooler with coolant in it',
  ],
  [
    {
      'transmission-cooler': [
        'in the radiator',
        'on the gearbox',
        'on the gearbox, with a valve',
        'in the radiator and air-cooled',
      ],
    },
    'a transmission cooler with coolant in it',
  ],
  [{ 'heater-pump': ['in a heater hose'] }, 'a pump in a heater hose'],
  [{ 'rear-heater': ['on the circuit'] }, 'a rear heater'],
  [{ 'pump-switch': ['sleeve', 'clutch'] }, 'a pump that can be shut off'],
  [{ 'low-temperature-loop': ['own tank', 'shared tank', 'divided tank'] }, 'a low-temperature loop'],
  [{ 'charge-air': ['water-cooled'] }, 'charge air cooled by water'],
  [{ 'gas-vaporiser': ['on the circuit'] }, 'a gas vaporiser'],
  [{ 'after-run-pump': ['fitted'] }, 'an after-run pump'],
  [{ 'grille-shutter': ['fitted'] }, 'a grille shutter'],
  [{ 'second-fan': ['second electric fan', 'condenser fan'] }, 'a second fan'],
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
