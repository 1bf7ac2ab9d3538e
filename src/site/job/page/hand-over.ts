/** From a walk or a calculator onto the job card. */
import '../../browser/page-globals.ts';
import type { HandedOver } from '../handed-over.ts';
import { jobs, openJobId, setOpenJob } from './job-store.ts';
import { jobTitle, newJob } from './new-job.ts';
import { withHandedOver } from './with-handed-over.ts';

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
  const stays = jobs.change(start.id, start, (job) =>
    withHandedOver(job, handed, vehicle && { id: vehicle.id, title: vehicle.title }),
  );
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
  link.textContent = jobTitle(jobs.get(start.id) ?? start);
  line.append('On the job card: ', link);
  return line;
}
