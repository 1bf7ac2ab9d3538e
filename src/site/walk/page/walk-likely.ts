/** What the numbers say beside a walk: the quickest next step. */
import type { NextStep } from '../../../diagnosis/next-step.ts';
import { button, element } from '../../browser/element.ts';
import type { Diagnosis } from './planner.ts';
import type { WalkWords } from './walk-words.ts';

export interface Likely {
  diagnosis: Diagnosis;
  /** A cause is proven: nothing is left to ask. */
  isProven: boolean;
  /** Key of what is asked now. */
  asked: string | undefined;
}

/**
 * @param proofOf the test that would prove a cause next
 * @param ask asks a test out of turn
 */
export function likelyParts(
  { diagnosis, isProven, asked }: Likely,
  words: WalkWords,
  proofOf: (cause: string) => string | undefined,
  ask: (test: string) => void,
): Node[] {
  const { step, reason } = diagnosis;
  const { action } = step.best;
  if (isProven || action.kind === 'pass-on') return [];
  const parts: Node[] = [
    element('h3', {}, 'Quickest by the numbers'),
    element('p', {}, element('b', {}, nameOf(action, words)), element('br'), reason.sentence),
  ];
  const test = action.kind === 'test' ? action.test : proofOf(action.cause);
  if (test !== undefined && test !== asked) parts.push(button('Do this one now', () => ask(test)));
  parts.push(numbers(step, words));
  return parts;
}

/** The figures behind the reason, one tap away. */
function numbers(step: NextStep, words: WalkWords): Node {
  const rows = step.considered
    .slice(0, 6)
    .map(({ action, own, minutes }) =>
      element(
        'tr',
        {},
        element('td', {}, nameOf(action, words)),
        element('td', {}, `${Math.round(own)} min`),
        element('td', {}, `${Math.round(minutes)} min`),
      ),
    );
  const head = ['First do', 'Itself', 'To a proven cause'].map((text) =>
    element('th', { scope: 'col' }, text),
  );
  return element(
    'details',
    {},
    element('summary', {}, 'The numbers'),
    element('table', {}, element('thead', {}, element('tr', {}, ...head)), element('tbody', {}, ...rows)),
  );
}

/** What is to be done, in words. */
export function nameOf(action: NextStep['best']['action'], words: WalkWords): string {
  if (action.kind === 'test') return words.test(action.test);
  return action.kind === 'prove' ? `Prove: ${words.cause(action.cause)}` : 'Pass it on';
}
