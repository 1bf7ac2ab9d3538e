/** From a walk to the job card: complaint, vehicle and every answer, as words. */
import '../../browser/page-globals.ts';
import { element } from '../../browser/element.ts';
import { loadScript } from '../../browser/load-script.ts';
import { notFetched } from '../../browser/not-fetched.ts';
import { OTHER } from '../answers.ts';
import type { OtherSeen } from './other-seen.ts';
import { allAnswers } from './replay.ts';
import type { ToldList } from './told-list.ts';
import type { WalkState } from './walk-state.ts';
import type { WalkWords } from './walk-words.ts';

/** @returns a line that says where they went, or that the card cannot be had */
export async function handOver(
  symptom: string,
  { answers, place: { standing, belief }, trail }: WalkState,
  words: WalkWords,
  other: OtherSeen,
  told: ToldList,
): Promise<HTMLElement> {
  // Without it the line says so.
  await loadScript('hand-over').catch(() => undefined);
  const proven = standing.kind === 'proven' ? standing.cause : belief.found[0];
  const line = window.headertank.putOnJobCard?.({
    complaint: { id: symptom, title: document.querySelector('h1')?.textContent ?? '' },
    answers: allAnswers(answers, trail).map(({ key, value, reading }) => ({
      key,
      asked: words.asked(key),
      answer: [words.answer(key, value), reading, value === OTHER ? other.words(key) : undefined]
        .filter((part) => part !== undefined)
        .join(': '),
      // Of a test it is the outcome; a layout's value may have spaces and is none.
      ...(value !== OTHER && isOutcome(key, value) && { outcome: value }),
    })),
    told: told.onCard(answers),
    ...(proven !== undefined && { proven: { id: proven, title: words.cause(proven) } }),
  });
  return line ?? element('p', { class: 'note-line', role: 'status' }, notFetched('The job card'));
}

/** Names of tests and outcomes are ids; those of a layout's features and values are not. */
function isOutcome(key: string, value: string): boolean {
  return [key, value].every((each) => /^[a-z0-9-]+$/.test(each));
}
