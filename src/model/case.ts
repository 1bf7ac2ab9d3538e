/**
 * One car with a known fault, for judging walks. A case is written from the mechanism: what this car would show at each test,
 * and why. It is never written from the evidence tables or the tree, and whoever writes it has not written the tree: a judge
 * that has read the answer judges nothing. Where a walk and a case disagree a person settles which of them is wrong.
 */
import { z } from 'zod';
import { commonFields } from './record.ts';
import { idSchema, lineSchema, reference, textSchema } from './scalars.ts';

/** What was wrong when a walk and a case disagreed. */
export const SETTLED = ['the tree', 'the evidence', 'the case', 'nothing: the car is hard'] as const;

const shownSchema = z.strictObject({
  sees: idSchema.describe('The outcome that whoever does this test on this car would choose.'),
  reads: lineSchema.optional().describe('What is read, where the test is a measurement, such as 61 °C.'),
  why: lineSchema.describe('Why this car shows that, from the mechanism.'),
});

export const caseSchema = z.strictObject({
  ...commonFields,
  symptom: reference('symptom').describe('The symptom chosen at the counter.'),
  'should-be': reference('symptom')
    .optional()
    .describe('The symptom it should have been, where the counter chose the wrong one.'),
  vehicle: reference('vehicle'),
  faults: z
    .array(reference('cause'))
    .max(2)
    .describe('What is wrong with this car: one cause, two at once, or [] where nothing is wrong.'),
  said: lineSchema.describe('What the customer said.'),
  mechanism: textSchema.describe('How this fault behaves on this car, and what fools the eye.'),
  shows: z
    .record(reference('test'), shownSchema)
    .describe(
      'Per test that somebody could reach for: what this car shows, where a sound one would show otherwise.',
    ),
  rechecks: z
    .record(reference('cause'), z.boolean())
    .optional()
    .describe(
      'Per cause: whether its recheck comes out for it on this car, where that is not simply so for the fault and not so for others.',
    ),
  settled: z
    .strictObject({
      'was-wrong': z.enum(SETTLED),
      because: textSchema.describe('What was found, and what was changed.'),
    })
    .optional()
    .describe('Where walk and case disagreed: which of them was wrong.'),
});

export type CarCase = z.infer<typeof caseSchema>;
