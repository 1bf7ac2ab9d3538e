import { z } from 'zod';
import { idSchema, lineSchema } from './scalars.ts';

/** content/words.yaml: what the search knows of language. */
export const wordsSchema = z.strictObject({
  groups: z
    .record(idSchema, z.array(lineSchema).min(1))
    .describe(
      'Words and phrases that mean one thing at the counter, by the name of their group. A phrase stands before the words it is made of; endings do not matter.',
    ),
  elsewhere: z
    .array(lineSchema)
    .describe('Complaints that are none of this shelf’s, so that the search can say so; [] when none.'),
  guides: z
    .record(idSchema, z.array(lineSchema).min(1))
    .optional()
    .describe('Phrases that somebody says who needs a guide before any complaint, by the guide’s id.'),
});

export type Words = z.infer<typeof wordsSchema>;

/** A shelf without the file reads sentences by their bare words. */
export const NO_WORDS: Words = { groups: {}, elsewhere: [] };
