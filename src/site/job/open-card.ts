/** Which card is open; the chosen vehicle belongs to it. */
import type { Job } from '../../model/job.ts';
import '../page-globals.ts';
import { jobs, openJobId, setOpenJob } from './job-store.ts';

/** The card that is open, as it is kept. */
export function openCard(): Job | undefined {
  const id = openJobId();
  return id === undefined ? undefined : jobs.get(id);
}

/**
 * Opens a card, or none, and chooses its vehicle. The vehicle of the card that is left goes with it, so that the next
 * car is not worked on with the figures of the last one.
 */
export function switchTo(job: Job | undefined): void {
  const left = openCard();
  setOpenJob(job?.id);
  document.dispatchEvent(new CustomEvent('headertank:job'));
  const { vehicle } = window.headertank;
  if (left?.id === job?.id && vehicle) return;
  if (job?.vehicle) {
    if (job.vehicle.id !== vehicle?.id) window.headertank.chooseVehicle(job.vehicle.id);
  } else if (left?.vehicle && left.vehicle.id === vehicle?.id) window.headertank.chooseVehicle(undefined);
}
