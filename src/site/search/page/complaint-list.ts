/** Complaints as somebody at the counter reads them out: may it be driven, minutes to book, because of which words. */
import { button, element } from '../../browser/element.ts';
import type { PageLink, PartingQuestion } from '../complaint-data.ts';
import type { Recognition, ShownComplaint } from './complaints.ts';
import { capital } from './results-list.ts';
import '../../browser/page-globals.ts';

const DRIVE = {
  yes: 'Yes',
  'short and watched': 'Short and watched',
  'no, stop': 'No. Stop.',
} as const;

const ELSEWHERE = 'This does not sound like cooling. The nearest on this shelf:';

/**
 * What is shown above the other pages; nothing when the words tell nothing.
 * @param answer called with the complaint that an answer means
 */
export function complaintParts(
  recognition: Recognition,
  answer: (question: PartingQuestion, means: string) => void,
): HTMLElement[] {
  const { pages, complaints, isSure, isElsewhere, question } = recognition;
  const shown = isSure ? complaints.slice(0, 1) : complaints;
  return [
    ...(pages.length > 0
      ? [element('ol', { class: 'search-results first-pages' }, ...pages.map(pageItem))]
      : []),
    ...(isElsewhere && pages.length === 0 && shown.length > 0
      ? [element('p', { class: 'elsewhere' }, ELSEWHERE)]
      : []),
    ...(question && !isSure && !isElsewhere ? [questionPart(question, answer)] : []),
    ...(shown.length > 0
      ? [
          element(
            'ol',
            { class: `search-results complaints${isSure ? ' sure' : ''}` },
            ...shown.map((complaint) => complaintItem(complaint, recognition)),
          ),
        ]
      : []),
  ];
}

function pageItem({ kind, title, address }: PageLink): HTMLLIElement {
  return element(
    'li',
    {},
    element('p', { class: 'kind' }, capital(kind)),
    element('a', { href: new URL(address, window.headertank.root).href }, title),
  );
}

function questionPart(
  question: PartingQuestion,
  answer: (question: PartingQuestion, means: string) => void,
): HTMLElement {
  return element(
    'div',
    { class: 'parting', role: 'group', 'aria-label': question.ask },
    element('p', {}, element('b', {}, question.ask)),
    element(
      'p',
      { class: 'answers' },
      ...question.answers.map(({ text, means }) => button(text, () => answer(question, means))),
    ),
  );
}

function complaintItem(
  { id, title, address, drive, minutes, because }: ShownComplaint,
  { mended, isElsewhere, pages }: Recognition,
) {
  const { root, vehicle } = window.headertank;
  const own = vehicle?.bookings?.[id];
  const book =
    vehicle?.bookings && !own ? `Not on ${vehicle.short}` : `Book ${own?.[1] ?? minutes} min to find it`;
  return element(
    'li',
    {},
    element('p', { class: 'kind' }, 'Symptom'),
    element('a', { href: new URL(address, root).href }, title),
    // Brakes that squeal must not read “May it be driven? Yes” because a belt's noise is the nearest.
    ...(isElsewhere && pages.length === 0
      ? []
      : [
          element(
            'p',
            { class: drive === 'no, stop' ? 'drive stop' : 'drive' },
            element('span', {}, 'May it be driven? ', element('b', {}, DRIVE[drive])),
            element('span', {}, book),
          ),
        ]),
    ...(because.length > 0
      ? [
          element(
            'p',
            { class: 'soft' },
            `because of ${because.map((words) => quoted(words, mended)).join(', ')}`,
          ),
        ]
      : []),
  );
}

/** As typed, with what it was read as where that differs. */
function quoted(words: string, mended: Recognition['mended']): string {
  const slips = mended.filter(({ from }) => words.split(' ').includes(from));
  const read = slips.map(({ to }) => to).join(' ');
  return read === '' ? `“${words}”` : `“${words}” (${read})`;
}
