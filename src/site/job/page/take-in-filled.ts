/** What the open card knows goes onto the take-in sheet of its complaint; the rest stays a line to write on. */
import type { Job } from '../../../model/job.ts';
import { element } from '../../browser/element.ts';
import '../../browser/page-globals.ts';
import { jobTitle } from './new-job.ts';
import { openCard } from './open-card.ts';

const says = element('p', { class: 'no-print soft', role: 'status' });

/** Writes the sheet anew. A card that is about another complaint leaves it empty. */
export function fillTakeIn(): void {
  const paper = document.querySelector('.paper');
  const complaint = document.querySelector<HTMLElement>('[data-booking]')?.dataset.booking;
  const open = openCard();
  const card = open?.complaint && open.complaint.id !== complaint ? undefined : open;
  const words: Record<string, string | undefined> = card ? wordsOf(card) : {};
  for (const place of document.querySelectorAll<HTMLElement>('[data-card]'))
    place.textContent = words[place.dataset.card ?? ''] ?? '';
  const answers = new Map(card?.told?.map(({ asked, answer }) => [asked, answer]));
  for (const item of document.querySelectorAll('.paper ol > li')) {
    const line = item.querySelector('.empty');
    if (line) line.textContent = answers.get(item.querySelector('b')?.textContent ?? '') ?? '';
  }
  paper?.before(says);
  says.replaceChildren(
    ...(card
      ? [
          'Filled in from the card ',
          element('a', { href: new URL(`job.html#${card.id}`, window.headertank.root).href }, jobTitle(card)),
          '.',
        ]
      : []),
  );
}

function wordsOf({ customer, telephone, plate, distance, wanted, said, limit }: Job) {
  return { customer, telephone, plate, distance, wanted, said, limit };
}
