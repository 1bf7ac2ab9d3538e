/** What stands above everything that is written on the card: the cards there are, this one's car, complaint and answers. */
import { dayText } from '../../../model/day.ts';
import type { Job } from '../../../model/job.ts';
import '../../browser/page-globals.ts';
import { button, element } from '../../browser/element.ts';
import { saveFile } from '../../browser/save-file.ts';
import { isOwnId, vehicleAddress } from '../../vehicle/own-id.ts';
import type { CardOnPage } from './card-on-page.ts';
import { stillOpen } from './follow-up.ts';
import { priceLines } from './for-customer.ts';
import { sheetLinks } from './job-card-sheets.ts';
import { tellBack } from './job-card-transfer.ts';
import { jobs } from './job-store.ts';
import { jobTitle } from './new-job.ts';
import { isOnShelf } from './on-shelf.ts';
import { earlierJobs, isCalled } from './same-car.ts';

/** Cards that stand in the list unasked. */
const MOST = 8;

/** The cards of this device, those in work first, and what can be done with them. */
export function showCards(card: CardOnPage): void {
  const all = jobs.list();
  const typed = card.input('.find-card').value.trim();
  const found = all.filter((job) => isCalled(job, typed));
  const sorted = [...found.filter(({ finished }) => !finished), ...found.filter(({ finished }) => finished)];
  const shown = typed === '' ? sorted.slice(0, MOST) : sorted;
  const rows = shown.map((job) => {
    const open = stillOpen(job);
    const link = element('a', { href: `#${job.id}` }, jobTitle(job));
    if (job.id === card.job.id) link.setAttribute('aria-current', 'true');
    return element(
      'li',
      {},
      link,
      job.finished ? ' finished' : '',
      open.length > 0 ? ` Still open: ${open.join('; ')}` : '',
    );
  });
  const lost = jobs.unreadable().map(({ id, text }) =>
    element(
      'li',
      {},
      'One card here cannot be read by this version. ',
      button('Save it as it is', () => saveFile(`${id}.json`, text, 'application/json'), 'quiet'),
      ' ',
      button('Remove it', () => void removeLost(card, id), 'quiet'),
    ),
  );
  card.place('.cards').replaceChildren(...rows, ...lost);
  card.place('.has-cards').hidden = all.length + lost.length === 0;
  card.place('.find-line').hidden = all.length < 3;
  card.say('.cards-more', moreCards(found.length, shown.length, typed));
  card.place('.export-all').hidden = all.length === 0;
  card.place('.clear-all').hidden = all.length + lost.length === 0;
  const isKept = jobs.get(card.job.id) !== undefined;
  card.place('.remove-card').hidden = !isKept;
  card.place('.finish').hidden = !isKept || card.job.finished !== undefined;
  for (const [sheet, link] of sheetLinks(card)) link.href = `#${card.job.id}/${sheet}`;
}

async function removeLost(card: CardOnPage, id: string): Promise<void> {
  tellBack(card, 'The card that cannot be read is removed.', await jobs.removeUnreadable(id));
}

function moreCards(found: number, shown: number, typed: string): string {
  if (typed !== '') return found === 0 ? `No card here answers to “${typed}”.` : `${found} found.`;
  return found > shown ? `And ${found - shown} more: type a part of the plate or the name.` : '';
}

/** Says that a job is finished, with the way back. */
export function showFinished(card: CardOnPage): void {
  const { finished } = card.job;
  card.place('.finished').replaceChildren(
    ...(finished
      ? [
          element(
            'p',
            { class: 'note-line' },
            `Finished ${dayText(finished)}. Walks and calculators put nothing on it any more. `,
            button('Open it again', () => void card.change(({ finished: _, ...job }) => job)),
          ),
        ]
      : []),
  );
}

/** Vehicle and complaint, with ways to their pages. */
export function showVehicle(card: CardOnPage): void {
  const { vehicle: chosen, root } = window.headertank;
  const { vehicle, complaint } = card.job;
  const take = card.place('.take-vehicle');
  take.hidden = !chosen || chosen.id === vehicle?.id;
  take.textContent = `Use ${chosen?.title ?? ''}`;
  const link = (address: string, title: string) => element('a', { href: new URL(address, root).href }, title);
  card
    .place('.vehicle')
    .replaceChildren(
      ...(vehicle
        ? vehicleWords(vehicle, link)
        : ['none yet; choose it under Vehicles, or take the chosen one']),
    );
  card
    .place('.complaint')
    .replaceChildren(
      complaint ? link(`symptoms/${complaint.id}.html`, complaint.title) : 'none yet; a walk brings it along',
    );
  showEarlier(card);
  card.say('.price', priceLines({ ...card.job, agreed: '' }).join(' '));
}

type Link = (address: string, title: string) => HTMLElement;

function vehicleWords({ id, title }: { id: string; title: string }, link: Link): (Node | string)[] {
  if (isOnShelf(id))
    return [link(vehicleAddress(id), title), ...(isOwnId(id) ? [', your own, not on the shelf'] : [])];
  const gone = isOwnId(id)
    ? 'It was typed on one device and is not on this one'
    : 'It is no longer on the shelf';
  return [`${title}. ${gone}: its figures are not here, and what the card has of it stays.`];
}

/** Earlier jobs of the same car, and what is known of it from them. */
function showEarlier(card: CardOnPage): void {
  const { job } = card;
  const earlier = earlierJobs(job, jobs.list());
  const [last] = earlier;
  const rows = earlier.map((each) => {
    const what = [each.complaint?.title, each.proven && `proven: ${each.proven.title}`].filter(Boolean);
    return element(
      'li',
      {},
      element('a', { href: `#${each.id}` }, dayText(each.opened)),
      ` ${what.join('; ') || each.said.slice(0, 80) || 'no complaint written'}`,
    );
  });
  const isMissing = last && ((!job.customer && last.customer) || (!job.vehicle && last.vehicle));
  card
    .place('.earlier')
    .replaceChildren(
      ...(last
        ? [
            element('p', {}, element('b', {}, 'This car was here before')),
            element('ul', { class: 'plain-list' }, ...rows),
            ...(isMissing
              ? [
                  button(
                    'Take over customer and vehicle',
                    () => void card.change((now) => withCar(now, last)),
                    'quiet',
                  ),
                ]
              : []),
          ]
        : []),
    );
}

/** The card with the customer and the vehicle of an earlier one, where it has none. */
function withCar(job: Job, { customer, telephone, vehicle }: Job): Job {
  const who = { customer: job.customer || customer, telephone: job.telephone || telephone };
  return {
    ...job,
    ...(who.customer && { customer: who.customer }),
    ...(who.telephone && { telephone: who.telephone }),
    ...(vehicle && !job.vehicle && { vehicle }),
  };
}

/** What a walk has asked and proven. */
export function showAnswers(card: CardOnPage): void {
  const { answers, proven } = card.job;
  const rows = answers.map(({ asked, answer }) =>
    element('li', {}, element('span', { class: 'soft' }, asked), ' ', element('b', {}, answer)),
  );
  card
    .place('.answers-given')
    .replaceChildren(
      ...(rows.length > 0
        ? [element('ul', { class: 'plain-list' }, ...rows)]
        : [element('p', { class: 'soft' }, 'None. At the foot of a walk: “To the job card”.')]),
      ...(proven ? [element('p', {}, 'Proven: ', element('b', {}, proven.title))] : []),
    );
}
