import { z } from 'zod';
import { layoutConditionSchema } from './layout-schema.ts';
import { commonFields } from './record.ts';
import { idSchema, lineSchema, minutesSchema, reference, textSchema } from './scalars.ts';

export const causeSchema = z.strictObject({
  ...commonFields,
  part: lineSchema.describe('The part that is at fault, in the trade’s word; none when nothing is.'),
  layout: layoutConditionSchema.optional(),
  mechanism: textSchema.describe('How it makes the complaint, in two sentences.'),
  confirm: z
    .strictObject({
      test: reference('test').optional(),
      outcome: idSchema.optional().describe('The outcome of that test that proves it.'),
      or: z
        .array(z.strictObject({ test: reference('test'), outcome: idSchema }))
        .optional()
        .describe('Other tests that prove it as well, for who lacks the tool of the first.'),
      recheck: textSchema.optional().describe('Or: what shows after the repair that this was it.'),
      minutes: minutesSchema.optional().describe('Minutes to prove it, if not those of the test.'),
    })
    .refine((value) => (value.test === undefined) === (value.outcome === undefined), {
      message: 'A confirming test needs the outcome that confirms, and the other way round.',
    })
    .refine(
      (value) => value.test !== undefined || (value.recheck !== undefined && value.minutes !== undefined),
      {
        message: 'Say how it is proven: a test with its outcome, or a recheck with its minutes.',
      },
    )
    .optional()
    .describe('The act that proves this cause before a part is bought.'),
  'fooled-by': z.array(textSchema).min(1).describe('What looks like this cause and is not.'),
  repair: reference('procedure').optional().describe('The procedure that puts it right.'),
  parts: z.array(lineSchema).describe('Parts and seals to have on the bench; [] when none.'),
  consumables: z.array(lineSchema).describe('Coolant, cleaner, cable; [] when none.'),
  'while-open': z.array(textSchema).min(1).describe('What to look at while it is apart.'),
  'comes-back': textSchema.describe('What comes back if only the part is changed.'),
});
