/** The sheets a card becomes: built as text, never as markup, and printed as they stand on the screen. */

import { dayText } from '../../../model/day.ts';
import type { Job } from '../../../model/job.ts';
import { element } from '../../browser/element.ts';
import { timeText } from '../../text/day-and-time.ts';
import type { PartsOf } from '../planned.ts';
import { litresForCustomer, litresSentence } from './litres.ts';
import { partsNodes } from './plan-for-card.ts';

/** What every sheet of this workshop carries. */
export interface Letterhead {
  shop: string;
  hours: string;
  footer: string;
}

/** For the workshop: everything the card has. */
export function cardPaper(job: Job, head: Letterhead): Node[] {
  return [
    ...heading(head, 'Job card', job),
    facts([
      ['Job', job.name],
      ['Plate', job.plate],
      ['Odometer', job.distance],
      ['Vehicle', job.vehicle?.title ?? ''],
      ['Complaint', job.complaint?.title ?? ''],
    ]),
    ...words('The customer says', job.said),
    ...listed(
      'Asked and answered',
      job.answers.map(({ asked, answer }) => [asked, answer]),
    ),
    ...words('Proven', job.proven?.title ?? ''),
    ...listed(
      'Readings',
      job.readings.map(({ what, value, at }) => [`${what} (${timeText(at)})`, value]),
    ),
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
    signed('Worked on by', 'Looked over by'),
  ];
}

/** For the parts counter: everything the job needs, by what it is for. */
export function partsPaper(job: Job, head: Letterhead, parts: readonly PartsOf[]): Node[] {
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

/** For the customer, in plain words. */
export function customerPaper(job: Job, head: Letterhead): Node[] {
  return [
    ...heading(head, 'What we found, did and measured', job),
    facts([
      ['Vehicle', job.vehicle?.title ?? ''],
      ['Plate', job.plate],
      ['Odometer', job.distance],
    ]),
    ...words('You told us', job.said || (job.complaint?.title ?? '')),
    ...words('What we found', job.found || (job.proven ? `${job.proven.title}.` : '')),
    ...words('What we did', job.did),
    ...listed(
      'What we measured',
      job.readings.map(({ what, value }) => [what, value]),
    ),
    ...words('Coolant', litresForCustomer(job.litres) ?? ''),
    ...words('What to watch', job.watch),
    signed('Worked on by', 'Handed over by'),
    element('p', { class: 'sheet-footer' }, head.footer),
  ];
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
