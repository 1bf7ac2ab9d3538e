/** Cards off this device and onto it: exported, taken in, finished, removed; what is removed can be brought back. */

import { dayText } from '../../../model/day.ts';
import type { Job } from '../../../model/job.ts';
import { LARGEST_EXPORT } from '../../../model/job-limits.ts';
import { button, element } from '../../browser/element.ts';
import { loadScript } from '../../browser/load-script.ts';
import '../../browser/page-globals.ts';
import { saveFile } from '../../browser/save-file.ts';
import type { DatabaseName } from '../../browser/storage-names.ts';
import { drafts } from '../../note/page/note-drafts.ts';
import type { DeskCard, JobDesk, JobTransfer, PackedPicture } from '../job-transfer.ts';
import type { CardOnPage } from './card-on-page.ts';
import { pictureName, picturesOf, removeCard } from './card-pictures.ts';
import { jobs, openJobId, setOpenJob } from './job-store.ts';
import { plateKey } from './same-car.ts';

const NOT_LOADED =
  'This needs a part of the site that cannot be fetched: there is no connection, and this device has not kept the site yet. The cards are as they were.';

/** The way to a file and back, fetched when first wanted; undefined when it cannot be had. */
async function loadTransfer(): Promise<JobTransfer | undefined> {
  await loadScript('job-transfer').catch(() => undefined);
  return window.headertank.jobTransfer;
}

/** Does something with the way from device to device, fetched when first wanted. */
export async function loadDesk(card: DeskCard, use: (desk: JobDesk) => Promise<void>): Promise<void> {
  await Promise.all(['job-transfer', 'job-desk'].map(loadScript)).catch(() => undefined);
  const { jobDesk, jobTransfer } = window.headertank;
  if (!jobDesk || !jobTransfer) return card.say('.told', NOT_LOADED);
  await use(jobDesk);
}

/** Saves cards as a file, with their pictures and the notes that are ready. */
export async function exportCards(card: CardOnPage, some: readonly Job[]): Promise<void> {
  const transfer = await loadTransfer();
  if (!transfer) return card.say('.told', NOT_LOADED);
  const text = transfer.exported(some, drafts.list(), await packedPictures(some));
  saveFile(fileName(some), text, 'application/json');
  card.say(
    '.told',
    `${some.length === 1 ? 'One card' : `${some.length} cards`} exported, with the notes that are ready.`,
  );
}

/** Saves the finished jobs of this device for the shelf's counts. */
export async function exportFinished(card: CardOnPage): Promise<void> {
  const transfer = await loadTransfer();
  card.say('.told', transfer?.saveFinished(jobs.list()) ?? NOT_LOADED);
}

/** A file is found again by its plate. */
export function fileName(some: readonly Job[]): string {
  const [only, ...others] = some;
  const plate = only && others.length === 0 ? plateKey(only.plate) : '';
  return `job-card${plate === '' ? 's' : `-${plate}`}-${dayText(new Date())}.json`;
}

/** The pictures of cards, to go into a file. */
export async function packedPictures(some: readonly Job[]): Promise<PackedPicture[]> {
  const all = await Promise.all(some.map(picturesOf));
  return all.flat().map(({ id, address }) => ({ id, jpeg: address.slice(address.indexOf(',') + 1) }));
}

/** Takes in the cards of the chosen file and says what came of it. */
export async function takeFile(card: CardOnPage & DeskCard): Promise<void> {
  const input = card.input('.import');
  const [file] = input.files ?? [];
  if (!file) return;
  const says = await readFile(card, file);
  card.say('.told', says);
  input.value = '';
}

async function readFile(card: DeskCard, file: File): Promise<string> {
  if (file.size > LARGEST_EXPORT) return `${file.name} is too large for job cards. Nothing was taken in.`;
  const text = await file.text().catch(() => undefined);
  if (text === undefined) return `${file.name} cannot be read. Copy it to this device and choose it again.`;
  return card.takeText(text, file.name);
}

/**
 * Takes in cards: one that is here already gets the entries it lacks, and loses none.
 * @returns what came of it, in words
 */
export async function takeIn(card: CardOnPage, text: string, from: string): Promise<string> {
  const transfer = await loadTransfer();
  if (!transfer) return NOT_LOADED;
  const read = transfer.imported(text);
  if (!read.ok) return `${from}: ${read.says}`;
  let [fresh, grown] = [0, 0];
  for (const job of read.jobs) {
    const here = jobs.get(job.id);
    const next = here ? transfer.merged(here, job) : job;
    const isSame =
      here !== undefined &&
      JSON.stringify({ ...here, changed: '' }) === JSON.stringify({ ...next, changed: '' });
    if (isSame) continue;
    const stays = await jobs.change(
      job.id,
      job,
      // What is kept at this moment, whatever another window has written since.
      (now) => (here ? transfer.merged(now, job) : job),
      picturesFor(job, read.pictures),
    );
    if (!stays) card.tellUnkept();
    if (here) grown += 1;
    else fresh += 1;
  }
  const [first] = read.jobs;
  if (!first || fresh + grown === 0) return 'Every card of this file is here already.';
  card.open(jobs.get(first.id) ?? first);
  return [
    ...(fresh > 0 ? [fresh === 1 ? 'One card taken in.' : `${fresh} cards taken in.`] : []),
    ...(grown > 0
      ? [
          `${grown === 1 ? 'One card that was here has' : `${grown} cards that were here have`} what was new in it; nothing was written over.`,
        ]
      : []),
  ].join(' ');
}

function picturesFor({ pictures = [] }: Job, packed: readonly PackedPicture[]): Map<DatabaseName, unknown> {
  const ids = new Set(pictures.map(({ id }) => id));
  return new Map(
    packed
      .filter(({ id }) => ids.has(id))
      .map(({ id, jpeg }) => {
        const bytes = Uint8Array.from(atob(jpeg), (letter) => letter.charCodeAt(0));
        return [pictureName(id), new Blob([bytes], { type: 'image/jpeg' })];
      }),
  );
}

/** Finishes the job: what comes next is another one's. */
export async function finish(card: CardOnPage): Promise<void> {
  const { id } = card.job;
  const isKept = await card.change((job) => ({ ...job, finished: new Date().toISOString() }));
  if (!isKept) return;
  if (openJobId() === id) setOpenJob(undefined);
  tellBack(card, 'Finished.', async () => {
    await card.change(({ finished: _, ...job }) => job);
  });
}

/** Removes this card after a question. */
export function askRemove(card: CardOnPage): void {
  ask(card, 'Remove this card from the device?', 'Remove it', () =>
    removeAll(card, [card.job], 'The card is removed.'),
  );
}

/** Removes all cards after a question. */
export function askClear(card: CardOnPage): void {
  const all = jobs.list();
  const lost = jobs.unreadable().map(({ id }) => id);
  const count = all.length + lost.length;
  ask(
    card,
    `Remove ${count === 1 ? 'the one card' : `all ${count} cards`} from this device?`,
    'Remove all',
    () => removeAll(card, all, 'No card is left on this device.', lost),
  );
}

async function removeAll(
  card: CardOnPage,
  some: readonly Job[],
  says: string,
  lost: readonly string[] = [],
): Promise<void> {
  const open = openJobId();
  const back: (() => Promise<unknown>)[] = await Promise.all([
    ...some.map(removeCard),
    ...lost.map((id) => jobs.removeUnreadable(id)),
  ]);
  if (some.some(({ id }) => id === open)) setOpenJob(undefined);
  history.replaceState(null, '', location.pathname);
  card.readAddress();
  tellBack(card, says, async () => {
    await Promise.all(back.map((each) => each()));
    if (open !== undefined) setOpenJob(open);
    const [first] = some;
    if (first) card.open(jobs.get(first.id) ?? first);
  });
}

/** Says what was done, with the way back as long as the page stays. */
export function tellBack(card: CardOnPage, says: string, back: () => Promise<void>): void {
  const told = card.place('.told');
  const undo = button('Undo', async () => {
    told.textContent = '';
    await back();
    told.textContent = 'Everything is as it was.';
  });
  told.replaceChildren(`${says} `, undo);
  undo.focus();
}

function ask(card: CardOnPage, question: string, yes: string, go: () => Promise<void>): void {
  const place = card.place('.question');
  const before = document.activeElement;
  const done = () => {
    place.replaceChildren();
    if (before instanceof HTMLElement) before.focus();
  };
  const keepIt = button('Keep', done);
  const asked = element('p', { id: 'card-question' }, element('b', {}, question));
  place.replaceChildren(
    element(
      'div',
      { role: 'alertdialog', 'aria-labelledby': 'card-question' },
      asked,
      element(
        'p',
        { class: 'ways' },
        button(yes, () => {
          place.replaceChildren();
          void go();
        }),
        button('Export first', () => void exportCards(card, jobs.list()), 'quiet'),
        keepIt,
      ),
    ),
  );
  place.scrollIntoView({ block: 'nearest' });
  keepIt.focus();
}
