/** A torque on a thread that is not as the figure means it: oil or paste where it is for dry, dry where it is for oil. */
import type { PropertyClass } from '../physics/bolt.ts';
import { FRICTION, type Lubrication, torqueAtFriction } from '../physics/friction.ts';
import { parseThread } from '../physics/thread.ts';
import { breakingTorque, tighteningTorque } from '../physics/tightening.ts';
import type { NewtonMetre } from '../physics/units.ts';
import type { Answer, ChoiceInput, QuantityFormatter, Values } from './declaration.ts';

export const LUBRICATED: ChoiceInput = {
  kind: 'choice',
  name: 'lubricated',
  label: 'Thread and head here are',
  default: 'as-meant',
  options: [
    { value: 'as-meant', label: 'as the figure means it' },
    { value: 'oiled', label: 'oiled, and it is for dry' },
    { value: 'paste', label: 'with paste, and it is for dry' },
    { value: 'too-dry', label: 'dry, and it is for oiled' },
  ],
};

/** What the figure is for, and what the thread is. */
const STATES: Readonly<Record<string, { meant: Lubrication; found: Lubrication; word: string }>> = {
  oiled: { meant: 'dry', found: 'oiled', word: 'oil' },
  paste: { meant: 'dry', found: 'paste', word: 'paste' },
  'too-dry': { meant: 'oiled', found: 'dry', word: '' },
};

const CLEAN = 'Clean thread and head, blow the hole out (oil in a blind one bursts the casting)';

/** Said of a thread that no standard judges. Undefined where the thread is as meant. */
export function oilOnUnclassed(values: Values): string | undefined {
  const state = STATES[values.choice('lubricated')];
  if (state === undefined) return undefined;
  return state.found === 'dry'
    ? 'It is meant oiled: oil it as the maker says, and do not add torque for the lack of it.'
    : `${CLEAN}. With ${state.word} on it the same torque pulls half as hard again or more, and brass and plastic strip first.`;
}

/** The answer for a thread that is not as the figure means it; undefined where it is. */
export function oilOn(
  values: Values,
  torque: NewtonMetre,
  { name, propertyClass }: { name: string; propertyClass: PropertyClass },
  show: QuantityFormatter,
): Pick<Answer, 'sentence' | 'tone' | 'figures'> | undefined {
  const state = STATES[values.choice('lubricated')];
  const thread = parseThread(name);
  if (state === undefined || thread === undefined) return undefined;
  const same = torqueAtFriction(thread, torque, state.meant, state.found);
  const newton = (value: number) => show.quantity(value, 'N·m', value < 10 && value % 1 !== 0 ? 1 : 0);
  const { coefficient, class: frictionClass } = FRICTION[state.found];
  const figures = [
    {
      label: state.found === 'dry' ? 'Would take, dry' : `The same clamp load with ${state.word}`,
      value: newton(same),
      note: `friction ${coefficient} for ${FRICTION[state.meant].coefficient}, class ${frictionClass} of VDI 2230; scatters by a quarter`,
    },
  ];
  if (state.found === 'dry')
    return {
      sentence: `Dry it clamps a third less: ${newton(torque)} is meant for an oiled thread. Oil it as the maker says. Do not make up for it with torque: a dry thread scatters more and seizes.`,
      tone: 'look',
      figures,
    };
  const yields = tighteningTorque(thread, propertyClass, coefficient);
  if (torque > yields) {
    const breaks = breakingTorque(thread, propertyClass, coefficient);
    const harm =
      torque > breaks
        ? `the weakest ${name} of class ${propertyClass} breaks at about ${newton(breaks)} so`
        : `an ${name} of class ${propertyClass} bears no more than ${newton(yields)}, nine tenths of its yield`;
    return {
      sentence: `Not with ${state.word} on it: ${newton(torque)} is for a clean, dry thread, and with ${state.word} ${harm}. ${CLEAN} and keep ${newton(torque)}. Where ${state.word} has to stay, ${newton(same)} clamps as much, and the maker’s word stands above that.`,
      tone: 'stop',
      figures,
    };
  }
  return {
    sentence: `${newton(torque)} is for a clean, dry thread; with ${state.word} it pulls ${state.found === 'paste' ? 'four fifths' : 'half'} as hard again. ${CLEAN} and keep ${newton(torque)}. Where ${state.word} has to stay, ${newton(same)} clamps as much.`,
    tone: 'look',
    figures,
  };
}
