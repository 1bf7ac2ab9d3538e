import type { Job } from '../../../model/job.ts';
import { newId } from '../../browser/ids.ts';
import { dayAndTimeText } from '../../text/day-and-time.ts';

/** An empty card with an id of its own, opened now. */
export function newJob(): Job {
  const now = new Date().toISOString();
  return {
    id: newId('job'),
    opened: now,
    changed: now,
    name: '',
    plate: '',
    distance: '',
    said: '',
    answers: [],
    readings: [],
    litres: [],
    torques: {},
    remarks: [],
    found: '',
    did: '',
    watch: '',
  };
}

/** What a card is called where there are several. */
export function jobTitle({ name, plate, customer, vehicle, opened }: Job): string {
  return [name || plate || customer || vehicle?.title || 'Card without a name', dayAndTimeText(opened)].join(
    ', ',
  );
}
