/** The sheets a card becomes: built as text, never as markup, and printed as they stand on the screen. */
import type { Job } from '../../model/job.ts';
import { element } from '../islands/element.ts';
import { litresSentence } from './litres.ts';

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
      job.readings.map(({ what, value, at }) => [`${what} (${timeOf(at)})`, value]),
    ),
    ...words('Litres', litresSentence(job.litres) ?? ''),
    ...listed(
      'Tightened',
      Object.values(job.torques).map(({ what, figure, at }) => [what, `${figure}, ticked ${timeOf(at)}`]),
    ),
    ...words('Remarks', job.remarks.map(({ text }) => text).join('\n')),
    ...words('Found', job.found),
    ...words('Done', job.did),
    ...words('To watch', job.watch),
    element('p', { class: 'sign' }, 'Worked on by'),
    element('p', { class: 'sign' }, 'Looked over by'),
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
    ...words('Coolant', litresSentence(job.litres) ?? ''),
    ...words('What to watch', job.watch),
    element('p', { class: 'sheet-footer' }, head.footer),
  ];
}

function heading({ shop, hours }: Letterhead, title: string, { opened }: Job): Node[] {
  const day = new Date(opened).toLocaleDateString([], { dateStyle: 'long' });
  return [
    element('p', { class: 'letterhead' }, element('b', {}, shop), element('br'), hours),
    element('h2', { tabindex: '-1' }, title),
    element('p', { class: 'soft' }, day),
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

function timeOf(at: string): string {
  return new Date(at).toLocaleTimeString([], { hour: '2-digit', minute: '2-digit' });
}
