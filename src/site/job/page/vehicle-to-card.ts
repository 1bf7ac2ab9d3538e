/** A vehicle that is chosen belongs to the open card from then on. */
import { jobs, setOpenJob } from './job-store.ts';
import { jobTitle } from './new-job.ts';
import { openCard } from './open-card.ts';

/** The open card takes the vehicle, or is closed when it is another's. @returns what became of it, a sentence or '' */
export async function vehicleToCard(vehicle: { id: string; title: string }): Promise<string> {
  await jobs.ready();
  const open = openCard();
  if (!open || open.vehicle?.id === vehicle.id) return '';
  const { vehicle: other } = open;
  if (other) setOpenJob(undefined);
  else await jobs.change(open.id, open, (job) => ({ ...job, vehicle }));
  return other
    ? `The card “${jobTitle(open)}” is ${other.title}’s and is kept; what comes now begins a new one. `
    : `It stands on the card “${jobTitle(open)}”. `;
}
