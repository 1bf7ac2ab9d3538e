/** Cards off this device and onto it: exported, taken in, removed after a question. */

import { dayText } from '../../../model/day.ts';
import type { Job } from '../../../model/job.ts';
import { LARGEST_EXPORT } from '../../../model/job-limits.ts';
import { button, element } from '../../browser/element.ts';
import { loadScript } from '../../browser/load-script.ts';
import '../../browser/page-globals.ts';
import { saveFile } from '../../browser/save-file.ts';
import { drafts } from '../../note/page/note-drafts.ts';
import type { JobTransfer } from '../job-transfer.ts';
import type { CardOnPage } from './card-on-page.ts';
import { jobs, openJobId, setOpenJob } from './job-store.ts';

const NOT_LOADED =
  'This needs a part of the site that cannot be fetched: there is no connection, and this device has not kept the site yet. The cards are as they were.';

/** The way to a file and back, fetched when first wanted; undefined when it cannot be had. */
async function loadTransfer(): Promise<JobTransfer | undefined> {
  await loadScript('job-transfer').catch(() => undefined);
  return window.headertank.jobTransfer;
}

/** Saves cards as a file, with the notes that are ready. */
export async function exportCards(card: CardOnPage, some: readonly Job[]): Promise<void> {
  const transfer = await loadTransfer();
  if (!transfer) return card.say('.told', NOT_LOADED);
  const day = dayText(new Date());
  saveFile(`job-cards-${day}.json`, transfer.exported(some, drafts.list()), 'application/json');
  card.say(
    '.told',
    `${some.length === 1 ? 'One card' : `${some.length} cards`} exported, with the notes that are ready.`,
  );
}

/** Takes in the cards of the chosen file and says what came of it. */
export async function takeFile(card: CardOnPage): Promise<void> {
  const input = card.input('.import');
  const [file] = input.files ?? [];
  if (!file) return;
  const says = await takeIn(card, file);
  card.say('.told', says);
  input.value = '';
}

async function takeIn(card: CardOnPage, file: File): Promise<string> {
  if (file.size > LARGEST_EXPORT) return `${file.name} is too large for job cards. Nothing was taken in.`;
  const text = await file.text().catch(() => undefined);
  if (text === undefined) return `${file.name} cannot be read. Copy it to this device and choose it again.`;
  const transfer = await loadTransfer();
  if (!transfer) return NOT_LOADED;
  const read = transfer.imported(text, (id) => jobs.get(id));
  if (!read.ok) return `${file.name}: ${read.says}`;
  const stays = await Promise.all(read.jobs.map((job) => jobs.change(job.id, job, () => job)));
  if (stays.includes(false)) card.tellUnkept();
  card.showAll();
  const [first] = read.jobs;
  if (!first) return 'Every card of this file is here already.';
  card.open(first);
  return read.jobs.length === 1 ? 'One card taken in.' : `${read.jobs.length} cards taken in.`;
}

/** Removes this card after a question. */
export function askRemove(card: CardOnPage): void {
  ask(
    card,
    'Remove this card from the device? There is no way back but an export.',
    'Remove it',
    async () => {
      const { id } = card.job;
      const isOpen = openJobId() === id;
      await jobs.remove(id);
      if (isOpen) setOpenJob(undefined);
      history.replaceState(null, '', location.pathname);
      card.readAddress();
    },
  );
}

/** Removes all cards after a question. */
export function askClear(card: CardOnPage): void {
  const count = jobs.list().length;
  const cards = count === 1 ? 'the one card' : `all ${count} cards`;
  ask(
    card,
    `Remove ${cards} from this device? There is no way back but an export.`,
    'Remove all',
    async () => {
      await Promise.all(jobs.list().map(({ id }) => jobs.remove(id)));
      setOpenJob(undefined);
      history.replaceState(null, '', location.pathname);
      card.readAddress();
      card.say('.told', 'No card is left on this device.');
    },
  );
}

function ask(card: CardOnPage, question: string, yes: string, go: () => Promise<void>): void {
  const place = card.place('.question');
  const done = () => place.replaceChildren();
  const keepIt = button('Keep', done);
  place.replaceChildren(
    element('p', {}, element('b', {}, question)),
    element(
      'p',
      { class: 'ways' },
      button(yes, () => {
        done();
        void go();
      }),
      button('Export first', () => exportCards(card, jobs.list()), 'quiet'),
      keepIt,
    ),
  );
  place.scrollIntoView({ block: 'nearest' });
  keepIt.focus();
}
