/** Which card is open and what it is called, for the lines of every page: the store of all cards weighs more than they need. */
import { type Fields, isFields, isFilledText } from '../../browser/guards.ts';
import { forget, keep, kept } from '../../browser/storage.ts';

/** What every page knows of the open card. */
export interface OpenJob {
  id: string;
  name?: string;
  plate?: string;
  vehicle?: string;
}

/** The open card, or undefined when none is open. */
export function openJob(): OpenJob | undefined {
  const open = kept('job-open', (value) => isFilledText(value) || isFields(value));
  // A device of before kept no more than its id, and the card in the small storage.
  if (isFilledText(open)) {
    const { name, plate, vehicle } = kept(`job.${open}`, isFields) ?? {};
    return briefOf({ id: open, name, plate, vehicle: isFields(vehicle) ? vehicle.title : undefined });
  }
  return open && isFilledText(open.id) ? briefOf({ ...open, id: open.id }) : undefined;
}

function briefOf({ id, name, plate, vehicle }: Fields & { id: string }): OpenJob {
  return {
    id,
    ...(isFilledText(name) && { name }),
    ...(isFilledText(plate) && { plate }),
    ...(isFilledText(vehicle) && { vehicle }),
  };
}

/** Keeps which card is open, or that none is. */
export function keepOpenJob(open: OpenJob | undefined): void {
  if (open === undefined) forget('job-open');
  else keep('job-open', open);
}

/** What the open card is called where there is little room; a card that has no name yet is open all the same. */
export function openJobName(): string | undefined {
  const job = openJob();
  return job && (job.plate ?? job.name ?? 'open');
}
