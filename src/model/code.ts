import { z } from 'zod';
import { layoutConditionSchema } from './layout-schema.ts';
import { commonFields } from './record.ts';
import { reference, textSchema } from './scalars.ts';

/** A check in a sentence, or one with the test of the shelf that does it. */
const checkSchema = z.union([
  textSchema,
  z.strictObject({
    do: textSchema,
    test: reference('test').describe('The test that is this check.'),
  }),
]);

/** The record of p0128 has the id p0128; the page shows P0128. */
export const codeSchema = z.strictObject({
  ...commonFields,
  sets: textSchema.describe('What the controller has seen when it sets it, in plain words.'),
  layout: layoutConditionSchema.optional(),
  first: z.array(checkSchema).min(3).max(3).describe('The first three checks, in order.'),
  misleads: textSchema.describe('What is replaced in vain because of it.'),
  symptoms: z.array(reference('symptom')).min(1).describe('The walks it leads to, the likeliest first.'),
  causes: z
    .array(reference('cause'))
    .describe('The causes it points to, the likeliest first; [] when its fault is none of this shelf.'),
});
