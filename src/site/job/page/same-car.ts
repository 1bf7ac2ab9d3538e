/** Cards of one car, found by its plate. */
import type { Job } from '../../../model/job.ts';

/** A plate as it is compared: letters and digits alone. */
export function plateKey(plate: string): string {
  return plate
    .normalize('NFKC')
    .toUpperCase()
    .replaceAll(/[^\p{L}\p{N}]/gu, '');
}

/** Other cards with this card's plate, the last first. */
export function earlierJobs(job: Job, all: readonly Job[]): Job[] {
  const key = plateKey(job.plate);
  return key === ''
    ? []
    : all
        .filter((other) => other.id !== job.id && plateKey(other.plate) === key)
        .sort((a, b) => b.opened.localeCompare(a.opened));
}

/** Whether a card answers to words typed in the list of cards: plate, number, customer, vehicle, complaint. */
export function isCalled(job: Job, typed: string): boolean {
  const own = [job.plate, job.name, job.customer, job.telephone, job.vehicle?.title, job.complaint?.title]
    .join(' ')
    .toLowerCase();
  const words = typed
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');
  const plate = plateKey(typed);
  return words.every((word) => own.includes(word)) || (plate !== '' && plateKey(job.plate).includes(plate));
}
