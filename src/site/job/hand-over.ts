/** From a walk or a calculator onto the job card. */
import type { Job } from '../../model/job.ts';
import '../page-globals.ts';
import { newId } from '../kept/device-store.ts';
import { jobs, openJobId, setOpenJob } from './job-store.ts';
import { jobTitle, newJob } from './new-job.ts';

export interface HandedOver {
  complaint?: Job['complaint'];
  answers?: Job['answers'];
  proven?: Job['proven'];
  reading?: { what: string; value: string };
}

/**
 * Puts it on the open card, or on a new one: when none is open, or when the open one is another vehicle's.
 * @returns a line that says where it went, with a link
 */
export function putOnJobCard(handed: HandedOver): HTMLElement {
  const { vehicle, root } = window.headertank;
  const open = openJobId();
  const current = open === undefined ? undefined : jobs.get(open);
  const fits = current && (!vehicle || !current.vehicle || current.vehicle.id === vehicle.id);
  const start = fits ? current : newJob();
  const stays = jobs.change(start.id, start, (job) => ({
    ...job,
    ...(vehicle && { vehicle: { id: vehicle.id, title: vehicle.title } }),
    ...(handed.complaint && { complaint: handed.complaint }),
    ...(handed.proven && { proven: handed.proven }),
    answers: withAnswers(job.answers, handed.answers ?? []),
    readings: withReading(job.readings, handed.reading),
  }));
  const line = document.createElement('p');
  line.className = 'note-line';
  line.setAttribute('role', 'status');
  if (!stays) {
    line.textContent =
      'This device keeps nothing here (storage full or blocked), so it is not on a card. Print this page, or copy its address.';
    return line;
  }
  setOpenJob(start.id);
  document.dispatchEvent(new CustomEvent('headertank:job'));
  const link = document.createElement('a');
  link.href = new URL(`job.html#${start.id}`, root).href;
  link.textContent = jobTitle(start);
  line.append('On the job card: ', link);
  return line;
}

/** Handed over twice it stands there once; a second reading of the same thing is kept beside the first. */
function withReading(before: Job['readings'], given: HandedOver['reading']): Job['readings'] {
  const isThere = before.some(({ what, value }) => what === given?.what && value === given.value);
  if (!given || isThere) return before;
  return [...before, { id: newId('reading'), at: new Date().toISOString(), ...given }];
}

/** Of two answers to one question the later stands. */
function withAnswers(before: Job['answers'], given: Job['answers']): Job['answers'] {
  const keys = new Set(given.map(({ key }) => key));
  return [...before.filter(({ key }) => !keys.has(key)), ...given];
}
