import { dayText } from '../../../model/day.ts';
import type { Job } from '../../../model/job.ts';
import type { NoteDraft } from '../../note/note-draft.ts';
import { newDraft } from '../../note/page/note-drafts.ts';
import { isOwnId } from '../../vehicle/own-id.ts';
import { litresSentence } from './litres.ts';

/** A note to be finished by hand, with what the card knows. Plate, name and what the customer said stay on the card. */
export function noteFromJob(job: Job): NoteDraft {
  const { vehicle, complaint, proven } = job;
  const title = [vehicle?.title, proven?.title ?? complaint?.title]
    .filter((each) => each !== undefined)
    .join(': ');
  const readings = job.readings.map(({ what, value }) => `${what}: ${value}`);
  const parts = [
    job.found,
    job.did,
    ...job.remarks.flatMap(({ text, private: stays }) => (stays ? [] : [text])),
    readings.length > 0 ? readings.join('. ') : '',
    litresSentence(job.litres) ?? '',
  ];
  return {
    ...newDraft(),
    title: title.slice(0, 140),
    vehicle: vehicle && !isOwnId(vehicle.id) ? vehicle.id : '',
    symptom: complaint?.id ?? '',
    cause: proven?.id ?? '',
    text: parts
      .map((part) => part.trim())
      .filter((part) => part !== '')
      .join('\n\n'),
    known: 'measured',
    source: `One car, ${dayText(job.opened)}`,
  };
}
