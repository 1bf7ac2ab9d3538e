/** What a walk, a road test or a calculator adds to the job card. */
import type { Job } from '../../model/job.ts';

export interface HandedOver {
  complaint?: Job['complaint'];
  answers?: Job['answers'];
  /** The cause the walk has proven; a walk that stands before its end has none. */
  proven?: Job['proven'];
  reading?: { what: string; value: string };
}
