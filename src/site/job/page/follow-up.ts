import type { Job } from '../../../model/job.ts';
import { newId } from '../../browser/ids.ts';

/** Air finds its way out over night and the level falls with it. Common practice, no source. */
const AFTER_THE_NIGHT = 'Level after the night, engine cold, against the mark';

/** The card with something more to be done. */
export function withOpenItem(job: Job, what: string): Job {
  const item = { id: newId('open'), at: new Date().toISOString(), what };
  return { ...job, open: [...(job.open ?? []), item] };
}

/** A card on which coolant was filled has the level of the next morning still open. */
export function withFollowUp(job: Job): Job {
  const isFilled = job.litres.some(({ way }) => way === 'filled');
  const isThere = job.open?.some(({ what }) => what === AFTER_THE_NIGHT) ?? false;
  return isFilled && !isThere ? withOpenItem(job, AFTER_THE_NIGHT) : job;
}

/**
 * The card with an item done.
 * @param value what was read or done
 */
export function closeItem(job: Job, id: string, value: string): Job {
  const done = { at: new Date().toISOString(), value };
  return { ...job, open: (job.open ?? []).map((each) => (each.id === id ? { ...each, done } : each)) };
}

/** What is still to be done on this card. */
export function stillOpen(job: Job): string[] {
  return (job.open ?? []).flatMap(({ what, done }) => (done ? [] : [what]));
}
