import { z } from 'zod';
import { placesSchema } from './access.ts';
import { CALCULATOR_IDS } from './calculator-ids.ts';
import { likelihoodSchema } from './frequency.ts';
import { layoutConditionSchema } from './layout-schema.ts';
import { commonFields, misleadsSchema } from './record.ts';
import { idSchema, lineSchema, minutesSchema, reference, textSchema } from './scalars.ts';
import { type Limit, readLimit } from './scale.ts';
import { stepSchema } from './step.ts';
import { UNITS } from './units.ts';

/** State the engine must be in for a test; the planner counts the minutes of getting there. */
const ENGINE_STATES = ['cold', 'warm', 'any'] as const;
const PLACES = ['bay', 'road', 'lift'] as const;

/** With a meter or lamp at a plug; or with something opened or taken off. */
export const TEST_WORK = ['electrical', 'opened'] as const;

/** A limit of an outcome's band; that it fits the scale is looked at with the whole test. */
const limitSchema = z
  .string()
  .transform((value, context): Limit => {
    const result = readLimit(value);
    if (result.ok) return result.limit;
    const { rule, found, expected } = result.fault;
    context.addIssue({ code: 'custom', message: found, params: { rule, expected } });
    return z.NEVER;
  })
  .meta({ becomes: 'limit' });

const scaleSchema = z.strictObject({
  measures: lineSchema.describe(
    'What is measured, such as "Drop from the hotter to the cooler heater hose".',
  ),
  unit: z
    .enum(UNITS.map(({ symbol }) => symbol))
    .describe('The unit that the shop reads it in: K, °C, V, bar, kΩ, min, l, % ...'),
});

export const testSchema = z.strictObject({
  ...commonFields,
  settles: textSchema.describe('What question the reading answers.'),
  question: lineSchema.describe('The question of the walk, answered by one of the outcomes.'),
  minutes: minutesSchema,
  engine: z.enum(ENGINE_STATES).describe('Engine at the start of the test: cold, warm or any.'),
  leaves: z
    .enum(['cold', 'warm'])
    .optional()
    .describe('Engine after the test, when it differs: warm for a warm-up watched from cold.'),
  place: z.enum(PLACES).default('bay'),
  at: placesSchema
    .default([])
    .describe(
      'Places of the cooling circuit where it is done; the walk marks them on the circuit of the vehicle.',
    ),
  layout: layoutConditionSchema.optional(),
  work: z
    .enum(TEST_WORK)
    .optional()
    .describe('What it takes beyond looking, feeling and logging; groups it under Known so far.'),
  tools: z.array(reference('tool')).describe('Tools it cannot be done without; [] for eyes and hands.'),
  cautions: z.array(reference('caution')).describe('What can hurt someone; [] when nothing can.'),
  steps: z.array(stepSchema).min(1),
  scale: scaleSchema
    .optional()
    .describe('What is measured, where the outcomes are cut from a measurement; they then have from and to.'),
  outcomes: z
    .record(
      idSchema,
      z.strictObject({
        reading: textSchema.describe('What is seen or read, with the figure that separates it.'),
        label: lineSchema.describe('The answer as a short line for a button.'),
        from: limitSchema
          .optional()
          .describe(
            'Where its band of the scale begins, such as 15 K or {thermostat.opens} - 5 K. None at the lower end.',
          ),
        to: limitSchema
          .optional()
          .describe('Where its band ends; what reads just that belongs to the next. None at the upper end.'),
      }),
    )
    .refine((value) => Object.keys(value).length >= 2, {
      message: 'A test has two outcomes or more.',
    }),
  sound: idSchema
    .optional()
    .describe('The outcome on a car with nothing wrong: a case of the bank names only what differs from it.'),
  evidence: z
    .record(reference('cause'), z.record(idSchema, likelihoodSchema))
    .describe('Per cause: how often each outcome is seen when that cause is at work.'),
  otherwise: z
    .record(idSchema, likelihoodSchema)
    .describe('The same for every cause not named in evidence, and for something else.'),
  misleads: misleadsSchema,
  'only-for': z
    .array(reference('symptom'))
    .min(1)
    .optional()
    .describe(
      'Complaints it is offered in, where another could not know what it asks. Without it: all. A tree may ask it anyway.',
    ),
  repeats: z.array(reference('test')).default([]).describe('Tests that would be fooled by the same thing.'),
  calculators: z.array(z.enum(CALCULATOR_IDS)).default([]).describe('Calculators shown with the test.'),
});

export type Test = z.infer<typeof testSchema>;
