/** From a walk or a calculator onto the job card. */
import '../../browser/page-globals.ts';
import type { Job } from '../../../model/job.ts';
import { button, element } from '../../browser/element.ts';
import { takeSearched } from '../../browser/searched.ts';
import { dayAndTimeText } from '../../text/day-and-time.ts';
import type { HandedOver } from '../handed-over.ts';
import { jobs, openJobId, setOpenJob } from './job-store.ts';
import { jobTitle, newJob } from './new-job.ts';
import { isAnotherJob } from './same-job.ts';
import { withHandedOver } from './with-handed-over.ts';

/** One after another: what comes second finds the card that the first has begun. */
let before: Promise<unknown> = Promise.resolve();

/**
 * Puts it on the open card, or on a new one: when none is open, or when the open one is another vehicle's. Where the open card
 * may be another job's, the reader says whose it is.
 * @returns a line that says where it went, with a link, or that asks first
 */
export function putOnJobCard(handed: HandedOver): HTMLElement {
  const line = element('div', { class: 'note-line', role: 'status' });
  before = before.then(() => begin(handed, line)).catch(() => line.replaceChildren(NOT_KEPT));
  return line;
}

const NOT_KEPT =
  'This device keeps nothing here (storage full or blocked), so it is not on a card. Print this page, or copy its address.';

async function begin(handed: HandedOver, line: HTMLElement): Promise<void> {
  await jobs.ready();
  const { vehicle } = window.headertank;
  const current = jobs.get(openJobId() ?? '');
  if (!current || (vehicle && current.vehicle && current.vehicle.id !== vehicle.id))
    return put(handed, newCard(), line);
  if (!isAnotherJob(current, handed, new Date())) return put(handed, current, line);
  ask(current, line, (card) => {
    before = before.then(() => put(handed, card, line)).catch(() => line.replaceChildren(NOT_KEPT));
  });
}

/** An empty card with the words that somebody searched for: they led to this walk. */
function newCard(): Job {
  return { ...newJob(), said: takeSearched() };
}

/** Two cars of one model in one week must not mix. */
function ask(current: Job, line: HTMLElement, go: (card: Job) => void): void {
  const what = current.complaint ? `: ${current.complaint.title}` : '';
  line.replaceChildren(
    element(
      'p',
      {},
      element('b', {}, 'Is this the job of the open card? '),
      `Open is ${jobTitle(current)}${what}. Last changed ${dayAndTimeText(current.changed)}.`,
    ),
    element(
      'p',
      { class: 'ways' },
      button('Yes, this job', () => go(current)),
      button('No, a new card', () => go(newCard())),
    ),
  );
}

async function put(handed: HandedOver, start: Job, line: HTMLElement): Promise<void> {
  const { vehicle, root } = window.headertank;
  const stays = await jobs.change(start.id, start, (job) =>
    withHandedOver(job, handed, vehicle && { id: vehicle.id, title: vehicle.title }),
  );
  if (!stays) {
    line.replaceChildren(NOT_KEPT);
    return;
  }
  setOpenJob(start.id);
  const href = new URL(`job.html#${start.id}`, root).href;
  line.replaceChildren('On the job card: ', element('a', { href }, jobTitle(jobs.get(start.id) ?? start)));
}
