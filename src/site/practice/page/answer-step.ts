/** One step of a finished case: what was seen, what was believed before it, what a master would have done. */
import { shareText } from '../../../diagnosis/reason.ts';
import { SOMETHING_ELSE } from '../../../model/kinds.ts';
import { element } from '../../browser/element.ts';
import { inSentence } from '../../text/in-sentence.ts';
import type { Planner } from '../../walk/page/planner.ts';
import { type RoundHost, seenRow } from './round-view.ts';

/** @param at tests done before this step; at the last of them the cause was named */
export function stepRow(
  host: Pick<RoundHost, 'bench' | 'round' | 'words' | 'tests'>,
  planner: Planner,
  named: string,
  at: number,
): HTMLLIElement {
  const { round, words, tests } = host;
  const before = tests.slice(0, at);
  const test = tests[at];
  const believed = round
    .belief(before)
    .map(
      ({ cause, share }) =>
        `${shareText(share)} ${cause === SOMETHING_ELSE ? 'something else' : inSentence(words.cause(cause))}`,
    )
    .join(', ');
  const { test: wise, why } = round.advice(before, planner);
  const would = wise === undefined ? why : wise === test ? `The same. ${why}` : `${words.test(wise)}. ${why}`;
  const because = test === undefined ? undefined : round.why(test);
  return element(
    'li',
    {},
    ...done(),
    element(
      'dl',
      {},
      ...(because === undefined ? [] : line('Why it showed that', because)),
      ...line(at === 0 ? 'Believed at the start' : 'Believed before', believed),
      ...line('A master', would),
    ),
  );

  function done(): Node[] {
    if (test === undefined) return [element('b', {}, `You named: ${words.cause(named)}`)];
    const seen = seenRow(host, test, round.minutes(tests)[at] ?? 0, at);
    return [...seen.childNodes];
  }
}

const line = (name: string, text: string) => [element('dt', {}, name), element('dd', {}, text)];
