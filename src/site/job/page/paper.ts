/** The sheets a card becomes: built as text, never as markup, and printed as they stand on the screen. */

import { dayText } from '../../../model/day.ts';
import type { Job } from '../../../model/job.ts';
import { element } from '../../browser/element.ts';
import { timeText } from '../../text/day-and-time.ts';
import type { KeptPicture, LayOutSheet, Letterhead } from '../card-parts.ts';
import type { PartsOf } from '../planned.ts';
import { beforeAndAfter, priceLines, readingsForCustomer } from './for-customer.ts';
import { litresForCustomer, litresSentence } from './litres.ts';
import { partsNodes } from './parts-nodes.ts';

export const layOutSheet: LayOutSheet = (sheet, job, head, { parts, pictures }) => {
  const papers = {
    customer: () => customerPaper(job, head, pictures),
    card: () => cardPaper(job, head, pictures),
    intake: () => intakePaper(job, head),
    parts: () => partsPaper(job, head, parts),
  };
  return papers[sheet]();
};

/** For the workshop: everything the card has. */
function cardPaper(job: Job, head: Letterhead, pictures: readonly KeptPicture[]): Node[] {
  return [
    ...heading(head, 'Job card', job),
    facts([
      ['Job', job.name],
      ['Customer', [job.customer, job.telephone].filter(Boolean).join(', ')],
      ['Plate', job.plate],
      ['Odometer', job.distance],
      ['Vehicle', job.vehicle?.title ?? ''],
      ['Wanted back', job.wanted ?? ''],
      ['Complaint', job.complaint?.title ?? ''],
    ]),
    ...words('The customer says', job.said),
    ...listed(
      'Asked at the counter',
      (job.told ?? []).map(({ asked, answer }) => [asked, answer]),
    ),
    ...listed(
      'Asked and answered',
      job.answers.map(({ asked, answer }) => [asked, answer]),
    ),
    ...words('Proven', job.proven?.title ?? ''),
    ...words('Price', priceLines(job).join('\n')),
    ...listed(
      'Readings',
      job.readings.map(({ what, value, at }) => [`${what} (${timeText(at)})`, value]),
    ),
    ...compared(job),
    ...words('Litres', litresSentence(job.litres) ?? ''),
    ...listed(
      'Tightened',
      Object.values(job.torques).map(({ what, figure, at }) => [what, `${figure}, ticked ${timeText(at)}`]),
    ),
    ...listed(
      'Steps ticked',
      Object.values(job.steps ?? {}).map(({ title, done }) => [title, String(done.length)]),
    ),
    ...listed(
      'To follow up',
      (job.open ?? []).map(({ what, done }) => [what, done?.value ?? 'open']),
    ),
    ...words('Remarks', job.remarks.map(({ text }) => text).join('\n')),
    ...words('Found', job.found),
    ...words('Done', job.did),
    ...words('To watch', job.watch),
    ...shown(job.pictures ?? [], pictures),
    signed('Worked on by', 'Looked over by'),
  ];
}

/** For the parts counter: everything the job needs, by what it is for. */
function partsPaper(job: Job, head: Letterhead, parts: readonly PartsOf[]): Node[] {
  return [
    ...heading(head, 'Parts list', job),
    facts([
      ['Job', job.name],
      ['Plate', job.plate],
      ['Vehicle', job.vehicle?.title ?? ''],
      ['For', job.proven?.title ?? ''],
    ]),
    ...(parts.length > 0 ? partsNodes(parts, 'h3') : [element('p', {}, 'Nothing is listed for it.')]),
  ];
}

/** What the customer signs when the car is left: his words, his answers, and what may be spent. */
function intakePaper(job: Job, head: Letterhead): Node[] {
  const lines: [string, string][] = [
    ['Customer', job.customer ?? ''],
    ['Telephone', job.telephone ?? ''],
    ['Plate', job.plate],
    ['Odometer', job.distance],
    ['Vehicle', job.vehicle?.title ?? ''],
    ['Wanted back', job.wanted ?? ''],
  ];
  return [
    ...heading(head, 'Taken in', job),
    // A line to write on where the card has nothing.
    element(
      'dl',
      { class: 'facts' },
      ...lines.flatMap(([name, value]) => [
        element('dt', {}, name),
        element('dd', value === '' ? { class: 'empty' } : {}, value),
      ]),
    ),
    ...words('The customer says', job.said || (job.complaint?.title ?? '')),
    ...listed(
      'Asked',
      (job.told ?? []).map(({ asked, answer }) => [asked, answer]),
    ),
    ...words('Price', priceLines({ ...job, limit: '' }).join('\n')),
    element(
      'p',
      {},
      'Without a call no more than: ',
      element('b', {}, job.limit || '______________________'),
    ),
    element('p', {}, 'The work is agreed up to this amount. Anything beyond it is asked for first.'),
    signed('Customer, date', 'For the workshop'),
    element('p', { class: 'sheet-footer' }, head.footer),
  ];
}

/** For the customer, in plain words: values and no commands, of each kind the last. */
function customerPaper(job: Job, head: Letterhead, pictures: readonly KeptPicture[]): Node[] {
  const remarks = job.remarks.filter(({ customer }) => customer);
  return [
    ...heading(head, 'What we found, did and measured', job),
    facts([
      ['Customer', job.customer ?? ''],
      ['Vehicle', job.vehicle?.title ?? ''],
      ['Plate', job.plate],
      ['Odometer', job.distance],
    ]),
    ...words('You told us', job.said || (job.complaint?.title ?? '')),
    ...words('What we found', job.found || (job.proven ? `${job.proven.title}.` : '')),
    ...words('What we did', [job.did, ...remarks.map(({ text }) => text)].join('\n')),
    ...compared(job),
    ...listed(
      'What we measured',
      readingsForCustomer(job.readings).map(({ what, value }) => [what, value]),
    ),
    ...words('Coolant', litresForCustomer(job.litres) ?? ''),
    ...words('What to watch', job.watch),
    ...words('Price', priceLines(job).join('\n')),
    ...shown(
      (job.pictures ?? []).filter(({ customer }) => customer),
      pictures,
    ),
    signed('Handed over by', 'Taken back by, date'),
    element('p', { class: 'sheet-footer' }, head.footer),
  ];
}

/** Before and after the repair, side by side. */
function compared({ proofs }: Job): Node[] {
  const rows = beforeAndAfter(proofs);
  if (!rows || rows.length === 0) return [];
  const head = ['', 'Before', 'After', 'Right is'].map((name) => element('th', { scope: 'col' }, name));
  const lines = rows.map(({ what, before, after, wanted }) =>
    element(
      'tr',
      {},
      element('th', { scope: 'row' }, what),
      ...[before, after, wanted].map((each) => element('td', {}, each)),
    ),
  );
  return [
    element('h3', {}, 'Before and after'),
    element(
      'table',
      { class: 'before-after' },
      element('thead', {}, element('tr', {}, ...head)),
      element('tbody', {}, ...lines),
    ),
  ];
}

function shown(entries: NonNullable<Job['pictures']>, pictures: readonly KeptPicture[]): Node[] {
  const figures = entries.flatMap(({ id, what, wide, high }) => {
    const kept = pictures.find((each) => each.id === id);
    if (!kept) return [];
    const picture = element('img', {
      src: kept.address,
      alt: what,
      width: String(wide),
      height: String(high),
    });
    return [element('figure', {}, picture, element('figcaption', {}, what))];
  });
  return figures.length > 0 ? [element('div', { class: 'card-pictures' }, ...figures)] : [];
}

/** Lines to sign on, side by side, never alone on a last page. */
function signed(...who: string[]): HTMLElement {
  return element('div', { class: 'signs' }, ...who.map((each) => element('p', { class: 'sign' }, each)));
}

function heading({ shop, hours }: Letterhead, title: string, { opened }: Job): Node[] {
  return [
    element('p', { class: 'letterhead' }, element('b', {}, shop), element('br'), hours),
    element('h2', { tabindex: '-1' }, title),
    element('p', { class: 'soft' }, dayText(opened)),
  ];
}

function facts(rows: [string, string][]): HTMLElement {
  const filled = rows.filter(([, value]) => value !== '');
  return element(
    'dl',
    { class: 'facts' },
    ...filled.flatMap(([name, value]) => [element('dt', {}, name), element('dd', {}, value)]),
  );
}

function words(title: string, text: string): Node[] {
  if (text.trim() === '') return [];
  return [
    element('h3', {}, title),
    ...text
      .split('\n')
      .filter((line) => line.trim() !== '')
      .map((line) => element('p', {}, line)),
  ];
}

function listed(title: string, rows: [string, string][]): Node[] {
  if (rows.length === 0) return [];
  const lines = rows.map(([name, value]) =>
    element('tr', {}, element('th', { scope: 'row' }, name), element('td', {}, value)),
  );
  return [element('h3', {}, title), element('table', {}, element('tbody', {}, ...lines))];
}
