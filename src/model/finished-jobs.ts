/** Finished jobs as they go to be counted: what was complained of, proven and answered, and nothing of the customer. */
import { z } from 'zod';
import type { Job } from './job.ts';
import { idSchema } from './scalars.ts';

export const finishedJobsSchema = z.strictObject({
  form: z.literal('headertank finished jobs'),
  version: z.literal(1),
  jobs: z
    .array(
      z.strictObject({
        id: idSchema.describe('Random name of the card.'),
        year: z.string().regex(/^\d{4}$/),
        symptom: idSchema,
        cause: idSchema.describe('The cause that was proven.'),
        answers: z.array(z.strictObject({ test: idSchema, outcome: idSchema })).max(200),
      }),
    )
    .max(10_000),
});

export type FinishedJobs = z.infer<typeof finishedJobsSchema>;
export type FinishedJob = FinishedJobs['jobs'][number];

/**
 * Jobs that can be counted: finished, with a complaint and a proven cause. Named here field by field, so that nothing else of a card
 * goes along.
 */
export function finishedJobs(jobs: readonly Job[]): FinishedJobs {
  return {
    form: 'headertank finished jobs',
    version: 1,
    jobs: jobs.flatMap(({ id, finished, complaint, proven, answers }) =>
      finished === undefined || !complaint || !proven
        ? []
        : [
            {
              id,
              year: finished.slice(0, 4),
              symptom: complaint.id,
              cause: proven.id,
              answers: answers.flatMap(({ key, outcome }) =>
                outcome === undefined ? [] : [{ test: key, outcome }],
              ),
            },
          ],
    ),
  };
}
