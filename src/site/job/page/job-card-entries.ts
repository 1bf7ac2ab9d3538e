/** What is written down at the car, line by line: readings, litres, remarks, pictures, what is to be followed up. */
import type { Job } from '../../../model/job.ts';
import { LITRE_WAYS } from '../../../model/job-limits.ts';
import { button, element } from '../../browser/element.ts';
import { newId } from '../../browser/ids.ts';
import type { CardOnPage } from './card-on-page.ts';
import { addPictures, showPictures } from './card-pictures.ts';
import { closeItem, withFollowUp, withOpenItem } from './follow-up.ts';
import { beforeAndAfter, isForCustomer } from './for-customer.ts';
import { litresSentence, readLitres } from './litres.ts';
import { type RemovedLine, undoLine } from './undo.ts';

/** The lists of a card whose entries have an id and a moment. */
type ListName = 'readings' | 'litres' | 'remarks' | 'pictures' | 'proofs';

/** What was removed last and can be brought back. */
let removed: RemovedLine | undefined;

/** All lists of the card. */
export function showEntries(card: CardOnPage): void {
  const { readings, litres, remarks } = card.job;
  showRows(
    card,
    '.readings',
    readings.map((each) =>
      row(card, 'readings', each.id, `${each.what} ${each.value}`, [
        element('span', {}, each.what),
        element('b', {}, each.value),
        mark(card, 'readings', each.id, each.what, isForCustomer(each)),
      ]),
    ),
  );
  showRows(
    card,
    '.litres',
    litres.map(({ id, way, litres: amount }) =>
      row(card, 'litres', id, `${way} ${amount} l`, [
        element('span', {}, way),
        element('b', {}, `${amount} l`),
      ]),
    ),
  );
  card.place('.litres-sum').textContent = litresSentence(litres) ?? '';
  showRows(
    card,
    '.remarks',
    remarks.map(({ id, text, customer = false }) =>
      row(card, 'remarks', id, text.slice(0, 40), [
        element('span', {}, text),
        mark(card, 'remarks', id, text.slice(0, 40), customer),
      ]),
    ),
  );
  showProofs(card);
  showOpen(card);
  void showPictures(card, (entries) => {
    const made = new Map(
      entries.map(({ id, what, customer = false }) => [
        id,
        row(card, 'pictures', id, what, [
          element('span', {}, what),
          mark(card, 'pictures', id, what, customer),
        ]),
      ]),
    );
    showRows(card, '.pictures', [...made.values()]);
    return made;
  });
}

/** The proof runs: each as a line, and the last before and after side by side. */
function showProofs(card: CardOnPage): void {
  const { proofs = [] } = card.job;
  showRows(
    card,
    '.proofs',
    proofs.map(({ id, when, says }) =>
      row(card, 'proofs', id, `run ${when} the repair`, [
        element('span', {}, `${when} the repair`),
        element('b', {}, says),
      ]),
    ),
  );
  const rows = beforeAndAfter(proofs) ?? [];
  const head = ['', 'Before', 'After', 'Right is'].map((name) => element('th', { scope: 'col' }, name));
  const lines = rows.map(({ what, before, after, wanted }) =>
    element(
      'tr',
      {},
      element('th', { scope: 'row' }, what),
      ...[before, after, wanted].map((each) => element('td', {}, each)),
    ),
  );
  card
    .place('.proof-table')
    .replaceChildren(
      ...(rows.length > 0
        ? [
            element(
              'table',
              {},
              element('thead', {}, element('tr', {}, ...head)),
              element('tbody', {}, ...lines),
            ),
          ]
        : []),
    );
}

/** What is still to be done, with a field for what came of it. */
function showOpen(card: CardOnPage): void {
  const rows = (card.job.open ?? []).map(({ id, what, done }) => {
    if (done) return element('li', {}, element('span', {}, what), element('b', {}, done.value));
    const field = element('input', { type: 'text', maxlength: '200', 'aria-label': `Reading: ${what}` });
    const close = button('Done', () =>
      card.change((job) => closeItem(job, id, field.value.trim() || 'done')),
    );
    close.setAttribute('aria-label', `Done: ${what}`);
    return element('li', {}, element('span', {}, what), field, close);
  });
  showRows(card, '.open-items', rows);
}

/** Takes the typed reading onto the card. */
export function addReading(card: CardOnPage): void {
  const what = card.input('.reading-what');
  const value = card.input('.reading-value');
  const isEmpty = what.value.trim() === '' || value.value.trim() === '';
  card.fault(
    '.reading-says',
    isEmpty ? 'What was measured, and what it read, with the unit.' : '',
    [what, value].filter((each) => each.value.trim() === ''),
  );
  if (isEmpty) return;
  const reading = {
    id: newId('reading'),
    at: new Date().toISOString(),
    what: what.value.trim(),
    value: value.value.trim(),
  };
  void card.change((job) => ({ ...job, readings: [...job.readings, reading] }));
  what.value = '';
  value.value = '';
  what.focus();
}

/** Takes the typed litres onto the card; filling leaves the level of the next morning open. */
export function addLitres(card: CardOnPage): void {
  const field = card.input('.litres-amount');
  const litres = readLitres(field.value);
  const typed = field.value.trim();
  const says =
    typed === ''
      ? 'Litres as read off the jug, such as 3.4.'
      : `“${typed}” is no amount of a jug: write litres, such as 3.4; more than 0 and at most 60.`;
  card.fault('.litres-says', litres === undefined ? says : '', [field]);
  if (litres === undefined) return;
  const chosen = card.querySelector<HTMLSelectElement>('.litres-way')?.value;
  const way = LITRE_WAYS.find((each) => each === chosen) ?? 'filled';
  const entry = { id: newId('litres'), at: new Date().toISOString(), way, litres };
  void card.change((job) => withFollowUp({ ...job, litres: [...job.litres, entry] }));
  field.value = '';
  field.focus();
}

/** Takes the typed remark onto the card. */
export function addRemark(card: CardOnPage): void {
  const field = card.input('.remark-text');
  const text = field.value.trim();
  if (text === '') return;
  const remark = { id: newId('remark'), at: new Date().toISOString(), text };
  void card.change((job) => ({ ...job, remarks: [...job.remarks, remark] }));
  field.value = '';
  field.focus();
}

/** Takes onto the card what is still to be done. */
export function addOpen(card: CardOnPage): void {
  const field = card.input('.open-what');
  const what = field.value.trim();
  if (what === '') return;
  void card.change((job) => withOpenItem(job, what));
  field.value = '';
  field.focus();
}

/** Takes the chosen pictures onto the card. */
export async function takePictures(card: CardOnPage): Promise<void> {
  const input = card.input('.picture-file');
  const what = card.input('.picture-what');
  const files = [...(input.files ?? [])];
  if (files.length === 0) return;
  const says = await addPictures(card, files, what.value.trim() || 'Picture');
  card.say('.picture-says', says);
  input.value = '';
  what.value = '';
}

/** The rows, and in their place the line that brings back what was removed there. */
function showRows(card: CardOnPage, place: string, rows: readonly Node[]): void {
  const line = removed?.place === place ? [undoLine(removed, () => forgetRemoved())] : [];
  card.place(place).replaceChildren(...rows, ...line);
}

function forgetRemoved(): void {
  removed = undefined;
}

/** Whether the customer reads an entry. */
function mark(
  card: CardOnPage,
  list: 'readings' | 'remarks' | 'pictures',
  id: string,
  what: string,
  on: boolean,
): HTMLElement {
  const box = element('input', { type: 'checkbox', 'aria-label': `For the customer: ${what}` });
  box.checked = on;
  box.addEventListener('change', () => {
    void card.change((job) => ({
      ...job,
      [list]: (job[list] ?? []).map((each) => (each.id === id ? { ...each, customer: box.checked } : each)),
    }));
  });
  return element('label', { class: 'tick for-customer' }, box, element('span', {}, 'customer'));
}

function row(card: CardOnPage, list: ListName, id: string, name: string, parts: Node[]): HTMLElement {
  const off = button('Remove', () => void remove(card, list, id, name), 'quiet');
  off.setAttribute('aria-label', `Remove: ${name}`);
  return element('li', {}, ...parts, off);
}

/** Takes an entry off the card; the way back has the focus. */
async function remove(card: CardOnPage, list: ListName, id: string, name: string): Promise<void> {
  const entry = card.job[list]?.find((each) => each.id === id);
  if (!entry) return;
  const place = `.${list}`;
  removed = {
    place,
    words: `Removed: ${name}`,
    back: () => card.change((job) => withEntry(job, list, entry)),
  };
  await card.change((job) => ({ ...job, [list]: (job[list] ?? []).filter((each) => each.id !== id) }));
  card.place(place).querySelector<HTMLButtonElement>('.undone button')?.focus();
}

/** The card with an entry where it stood: entries stand in the order of their moments. */
function withEntry(job: Job, list: ListName, entry: { id: string; at: string }): Job {
  const others = (job[list] ?? []).filter(({ id }) => id !== entry.id);
  return { ...job, [list]: [...others, entry].sort((a, b) => a.at.localeCompare(b.at)) };
}

/** In a line of fields the Enter key does what the button at its end does. */
export function enterAdds(event: KeyboardEvent): void {
  if (event.key !== 'Enter' || !(event.target instanceof HTMLInputElement)) return;
  const press = event.target.closest('.add-line')?.querySelector('button');
  if (!press) return;
  event.preventDefault();
  press.click();
}
