/** What the numbers say beside a walk: causes ranked, the quickest next step. */
import type { NextStep } from '../../../diagnosis/next-step.ts';
import { button, element } from '../../browser/element.ts';
import type { Diagnosis } from './diagnose.ts';
import { rankingList } from './ranking-list.ts';
import type { WalkWords } from './walk-words.ts';

export interface Likely {
  diagnosis: Diagnosis;
  /** No answer yet. */
  isStart: boolean;
  /** A cause is proven: nothing is left to ask. */
  isProven: boolean;
  /** Key of what is asked now. */
  asked: string | undefined;
}

/**
 * @param titles of the causes
 * @param ask asks a test out of turn
 */
export function likelyParts(
  { diagnosis, isStart, isProven, asked }: Likely,
  titles: Record<string, string>,
  words: WalkWords,
  ask: (test: string) => void,
): Node[] {
  const { step, reason } = diagnosis;
  const { action } = step.best;
  const parts: Node[] = [
    element('h2', {}, isStart ? 'Likely at the start' : 'Likely now'),
    rankingList(step.ranked, titles, window.headertank.root),
  ];
  if (isProven || action.kind === 'pass-on') return parts;
  parts.push(
    element('h3', {}, 'Quickest by the numbers'),
    element('p', {}, element('b', {}, nameOf(action, words)), element('br'), reason.sentence),
  );
  if (action.kind === 'test' && action.test !== asked)
    parts.push(button('Do this one now', () => ask(action.test)));
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

function nameOf(action: NextStep['best']['action'], words: WalkWords): string {
  if (action.kind === 'test') return words.test(action.test);
  return action.kind === 'prove' ? `Prove: ${words.cause(action.cause)}` : 'Pass it on';
}
