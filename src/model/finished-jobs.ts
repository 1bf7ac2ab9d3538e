/** Finished jobs as they go to be counted: what was complained of, proven and answered, and nothing of the customer. */
import { z } from 'zod';
import { FIGURE_PATHS, type FigurePath } from './figures.ts';
import type { Job } from './job.ts';
import { measuredOnJob } from './measured-on-job.ts';
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
        vehicle: idSchema.optional(),
        measured: z
          .array(
            z.strictObject({
              figure: z.enum(FIGURE_PATHS as [FigurePath, ...FigurePath[]]),
              is: z.string().max(40),
            }),
          )
          .max(100)
          .optional()
          .describe('Figures of the vehicle that were measured, each once.'),
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
    jobs: jobs.flatMap((job) => {
      const { id, finished, complaint, proven, vehicle, answers } = job;
      return finished === undefined || !complaint || !proven
        ? []
        : [
            {
              id,
              year: finished.slice(0, 4),
              symptom: complaint.id,
              cause: proven.id,
              ...(vehicle && { vehicle: vehicle.id, measured: measuredOnJob(job) }),
              answers: answers.flatMap(({ key, outcome }) =>
                outcome === undefined ? [] : [{ test: key, outcome }],
              ),
            },
          ];
    }),
  };
}
