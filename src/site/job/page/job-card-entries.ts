/** What is written down at the car, line by line: readings, litres, remarks, what is to be followed up. */
import type { Job } from '../../../model/job.ts';
import { LITRE_WAYS } from '../../../model/job-limits.ts';
import { button, element } from '../../browser/element.ts';
import { newId } from '../../browser/ids.ts';
import type { CardOnPage } from './card-on-page.ts';
import { closeItem, withFollowUp, withOpenItem } from './follow-up.ts';
import { litresSentence, readLitres } from './litres.ts';

/** The readings, each with a way to take it off. */
export function showReadings(card: CardOnPage): void {
  showRows(card, '.readings', card.job.readings, ({ id, what, value }) =>
    row(card, [element('span', {}, what), element('b', {}, value)], what, (job) => ({
      ...job,
      readings: job.readings.filter((each) => each.id !== id),
    })),
  );
}

/** What went out and in, and the sum of it. */
export function showLitres(card: CardOnPage): void {
  showRows(card, '.litres', card.job.litres, ({ id, way, litres }) =>
    row(card, [element('span', {}, way), element('b', {}, `${litres} l`)], way, (job) => ({
      ...job,
      litres: job.litres.filter((each) => each.id !== id),
    })),
  );
  card.place('.litres-sum').textContent = litresSentence(card.job.litres) ?? '';
}

/** The remarks, each with a way to take it off. */
export function showRemarks(card: CardOnPage): void {
  showRows(card, '.remarks', card.job.remarks, ({ id, text }) =>
    row(card, [element('span', {}, text)], text.slice(0, 40), (job) => ({
      ...job,
      remarks: job.remarks.filter((each) => each.id !== id),
    })),
  );
}

/** What is still to be done, with a field for what came of it. */
export function showOpen(card: CardOnPage): void {
  const rows = (card.job.open ?? []).map(({ id, what, done }) => {
    if (done) return element('li', {}, element('span', {}, what), element('b', {}, done.value));
    const field = element('input', { type: 'text', maxlength: '200', 'aria-label': `Reading: ${what}` });
    const close = button('Done', () =>
      card.change((job) => closeItem(job, id, field.value.trim() || 'done')),
    );
    close.setAttribute('aria-label', `Done: ${what}`);
    return element('li', {}, element('span', {}, what), field, close);
  });
  card.place('.open-items').replaceChildren(...rows);
}

/** Takes the typed reading onto the card. */
export function addReading(card: CardOnPage): void {
  const what = card.input('.reading-what');
  const value = card.input('.reading-value');
  if (what.value.trim() === '' || value.value.trim() === '') {
    card.say('.reading-says', 'What was measured, and what it read, with the unit.');
    (what.value.trim() === '' ? what : value).focus();
    return;
  }
  card.say('.reading-says', '');
  const reading = {
    id: newId('reading'),
    at: new Date().toISOString(),
    what: what.value.trim(),
    value: value.value.trim(),
  };
  card.change((job) => ({ ...job, readings: [...job.readings, reading] }));
  what.value = '';
  value.value = '';
  what.focus();
}

/** Takes the typed litres onto the card; filling leaves the level of the next morning open. */
export function addLitres(card: CardOnPage): void {
  const field = card.input('.litres-amount');
  const litres = readLitres(field.value);
  if (litres === undefined) {
    card.say('.litres-says', 'Litres as read off the jug, such as 3.4; more than 0 and at most 60.');
    field.focus();
    return;
  }
  card.say('.litres-says', '');
  const chosen = card.querySelector<HTMLSelectElement>('.litres-way')?.value;
  const way = LITRE_WAYS.find((each) => each === chosen) ?? 'filled';
  const entry = { id: newId('litres'), at: new Date().toISOString(), way, litres };
  card.change((job) => withFollowUp({ ...job, litres: [...job.litres, entry] }));
  field.value = '';
  field.focus();
}

/** Takes the typed remark onto the card. */
export function addRemark(card: CardOnPage): void {
  const field = card.input('.remark-text');
  const text = field.value.trim();
  if (text === '') return;
  const remark = { id: newId('remark'), at: new Date().toISOString(), text };
  card.change((job) => ({ ...job, remarks: [...job.remarks, remark] }));
  field.value = '';
  field.focus();
}

/** Takes onto the card what is still to be done. */
export function addOpen(card: CardOnPage): void {
  const field = card.input('.open-what');
  const what = field.value.trim();
  if (what === '') return;
  card.change((job) => withOpenItem(job, what));
  field.value = '';
  field.focus();
}

function showRows<T>(
  card: CardOnPage,
  selector: string,
  entries: readonly T[],
  row: (entry: T) => Node,
): void {
  card.place(selector).replaceChildren(...entries.map(row));
}

function row(card: CardOnPage, parts: Node[], name: string, without: (job: Job) => Job): Node {
  const off = button('Remove', () => card.change(without), 'quiet');
  off.setAttribute('aria-label', `Remove: ${name}`);
  return element('li', {}, ...parts, off);
}

/** In a line of fields the Enter key does what the button at its end does. */
export function enterAdds(event: KeyboardEvent): void {
  if (event.key !== 'Enter' || !(event.target instanceof HTMLInputElement)) return;
  const press = event.target.closest('.add-line')?.querySelector('button');
  if (!press) return;
  event.preventDefault();
  press.click();
}
