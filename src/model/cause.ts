import { z } from 'zod';
import { likelihoodSchema } from './frequency.ts';
import { layoutConditionSchema } from './layout-schema.ts';
import { commonFields } from './record.ts';
import { idSchema, lineSchema, minutesSchema, reference, textSchema } from './scalars.ts';
import { wantedCoolantSchema } from './wanted-coolant.ts';

/** What a cause belongs to, in the trade's words: the groups of the list of causes, in its order. */
export const SYSTEMS = [
  'thermostat',
  'radiator fan',
  'pump and belts',
  'radiator, hoses, cap and coolers',
  'coolant and filling',
  'heater and cabin',
  'sensors, gauge and wiring',
  'engine and exhaust',
  'gearbox, brakes and steering',
  'electric drive',
  'earlier work',
  'nothing at fault',
] as const;

export type System = (typeof SYSTEMS)[number];

export const causeSchema = z.strictObject({
  ...commonFields,
  part: lineSchema.describe('The part that is at fault, in the trade’s word; none when nothing is.'),
  system: z.enum(SYSTEMS).describe('The system the part belongs to; its group in the list of causes.'),
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
      recheck: z
        .union([
          textSchema,
          z.strictObject({
            do: textSchema.describe(
              'The act, what shows that it is this cause, and what shows that it is not.',
            ),
            minutes: minutesSchema.optional().describe('Of the recheck alone; 10 if not given.'),
            misses: likelihoodSchema
              .optional()
              .describe('How often it comes out otherwise though it is this cause; 0.05 if not given.'),
            elsewhere: likelihoodSchema
              .optional()
              .describe('How often it comes out the same with another cause; 0.01 if not given.'),
            also: z
              .record(reference('cause'), likelihoodSchema)
              .optional()
              .describe('Causes that it comes out the same with more often than that, and how often.'),
          }),
        ])
        .optional()
        .describe(
          'A second act that shows that it is this cause before a part is bought; the only one where no test proves it.',
        ),
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
  'goes-on': reference('symptom')
    .optional()
    .describe('For what is itself made by something: the symptom whose walk looks for what made it.'),
  'fooled-by': z.array(textSchema).min(1).describe('What looks like this cause and is not.'),
  repair: reference('procedure').optional().describe('The procedure that puts it right.'),
  parts: z.array(lineSchema).describe('Parts and seals to have on the bench; [] when none.'),
  consumables: z.array(lineSchema).describe('Cleaner, grease, cable; [] when none.'),
  coolant: wantedCoolantSchema
    .optional()
    .describe('The coolant that the repair takes; left out when it takes none.'),
  'while-open': z.array(textSchema).min(1).describe('What to look at while it is apart.'),
  'comes-back': textSchema.describe('What comes back if only the part is changed.'),
});

export type Cause = z.infer<typeof causeSchema>;
