/** What stands above everything that is written on the card: the cards there are, this one's vehicle, complaint and answers. */
import { stillOpen } from './follow-up.ts';
import { jobs } from './job-store.ts';
import { jobTitle } from './new-job.ts';
import { isOnShelf } from './on-shelf.ts';
import '../../browser/page-globals.ts';
import { button, element } from '../../browser/element.ts';
import { saveFile } from '../../browser/save-file.ts';
import type { CardOnPage } from './card-on-page.ts';
import { sheetLinks } from './job-card-sheets.ts';

/** The cards of this device, and what can be done with them. */
export function showCards(card: CardOnPage): void {
  const all = jobs.list();
  const rows = all.map((job) => {
    const open = stillOpen(job);
    const link = element('a', { href: `#${job.id}` }, jobTitle(job));
    if (job.id === card.job.id) link.setAttribute('aria-current', 'true');
    return element('li', {}, link, open.length > 0 ? ` Still open: ${open.join('; ')}` : '');
  });
  const lost = jobs.unreadable().map(({ id, text }) =>
    element(
      'li',
      {},
      'One card here cannot be read by this version. ',
      button('Save it as it is', () => saveFile(`${id}.json`, text, 'application/json'), 'quiet'),
    ),
  );
  card.place('.cards').replaceChildren(...rows, ...lost);
  card.place('.has-cards').hidden = rows.length + lost.length === 0;
  for (const name of ['.export-all', '.clear-all']) card.place(name).hidden = all.length === 0;
  card.place('.remove-card').hidden = !jobs.get(card.job.id);
  for (const [sheet, link] of sheetLinks(card)) link.href = `#${card.job.id}/${sheet}`;
}

/** Vehicle and complaint, with ways to their pages. */
export function showVehicle(card: CardOnPage): void {
  const { vehicle: chosen, root } = window.headertank;
  const { vehicle, complaint } = card.job;
  const take = card.place('.take-vehicle');
  take.hidden = !chosen || chosen.id === vehicle?.id;
  take.textContent = `Use ${chosen?.title ?? ''}`;
  const link = (folder: string, { id, title }: { id: string; title: string }) =>
    element('a', { href: new URL(`${folder}/${id}.html`, root).href }, title);
  card
    .place('.vehicle')
    .replaceChildren(
      !vehicle
        ? 'none yet; choose it under Vehicles, or take the chosen one'
        : isOnShelf(vehicle.id)
          ? link('vehicles', vehicle)
          : `${vehicle.title}. It is no longer on the shelf: its figures are not here, and what the card has of it stays.`,
    );
  card
    .place('.complaint')
    .replaceChildren(complaint ? link('symptoms', complaint) : 'none yet; a walk brings it along');
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
