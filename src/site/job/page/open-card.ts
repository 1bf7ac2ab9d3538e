/** Which card is open; the chosen vehicle belongs to it. */
import type { Job } from '../../../model/job.ts';
import '../../browser/page-globals.ts';
import { jobs, openJobId, setOpenJob } from './job-store.ts';
import { isOnShelf } from './on-shelf.ts';

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
  const { vehicle } = window.headertank;
  if (left?.id === job?.id && vehicle) return;
  const own = job?.vehicle;
  if (own && isOnShelf(own.id)) {
    if (own.id !== vehicle?.id) window.headertank.chooseVehicle(own.id);
    return;
  }
  // A card's vehicle that is no longer on the shelf has no figures, and another's are not its.
  const isLeft = left?.vehicle !== undefined && left.vehicle.id === vehicle?.id;
  if (vehicle && (own || isLeft)) window.headertank.chooseVehicle(undefined);
}
