import { dayText } from '../../../model/day.ts';
import type { Job } from '../../../model/job.ts';
import type { HandedOver } from '../handed-over.ts';

/**
 * Whether what is handed over may belong to another job than the open card's: it brings another complaint, or the card has not
 * been worked on today. Two cars of one model in one week look alike to everything else here.
 */
export function isAnotherJob(card: Job, { complaint }: HandedOver, now: Date): boolean {
  const isOtherComplaint =
    complaint !== undefined && card.complaint !== undefined && complaint.id !== card.complaint.id;
  return isOtherComplaint || dayText(card.changed) !== dayText(now);
}
