/** What a walk, a road test or a calculator adds to the job card. */
import type { Job } from '../../model/job.ts';

export interface HandedOver {
  complaint?: Job['complaint'];
  answers?: Job['answers'];
  /** What the customer answered at the counter. */
  told?: Job['told'];
  /** The cause the walk has proven; a walk that stands before its end has none. */
  proven?: Job['proven'];
  reading?: { what: string; value: string };
  /** A proof run; when it was, the reader says. */
  proof?: Omit<NonNullable<Job['proofs']>[number], 'id' | 'at'>;
  estimate?: Omit<NonNullable<Job['estimate']>, 'at'>;
  /** Sums off the jug, litres: the card's account says the same from then on. */
  litres?: { drained: number; filled: number };
}
