/** From a walk to the job card: complaint, vehicle and every answer, as words. */
import '../../browser/page-globals.ts';
import { element } from '../../browser/element.ts';
import { loadScript } from '../../browser/load-script.ts';
import { unfetched } from '../../browser/unfetched.ts';
import { allAnswers } from './replay.ts';
import type { WalkState } from './walk-state.ts';
import type { WalkWords } from './walk-words.ts';

/** @returns a line that says where they went, or that the card cannot be had */
export async function handOver(
  symptom: string,
  { answers, replayed: { trail, standing } }: WalkState,
  words: WalkWords,
): Promise<HTMLElement> {
  // Without it the line says so.
  await loadScript('hand-over').catch(() => undefined);
  const line = window.headertank.putOnJobCard?.({
    complaint: { id: symptom, title: document.querySelector('h1')?.textContent ?? '' },
    answers: allAnswers(answers, trail).map((entry) => ({
      key: entry.key,
      asked: words.asked(entry.key),
      answer: [words.answer(entry.key, entry.value), words.conclusion(entry)]
        .filter((part) => part !== undefined)
        .join('. '),
    })),
    ...(standing.kind === 'proven' && {
      proven: { id: standing.cause, title: words.cause(standing.cause) },
    }),
  });
  return line ?? element('p', { class: 'note-line', role: 'status' }, unfetched('The job card'));
}
