import { z } from 'zod';
import { CALCULATOR_IDS } from './calculator-ids.ts';
import { reference, textSchema, waitSchema } from './scalars.ts';

/** A step of a test: a plain sentence, or one with the caution or calculator that belongs to it. */
export const stepSchema = z.union([
  textSchema,
  z.strictObject({
    do: textSchema,
    caution: reference('caution').optional().describe('Shown before the action.'),
    calculator: z.enum(CALCULATOR_IDS).optional().describe('Opened at this step.'),
    wait: waitSchema,
  }),
]);

export type Step = z.infer<typeof stepSchema>;

/** The step as an object, whichever way it was written. */
export function asStep(step: Step): Exclude<Step, string> {
  return typeof step === 'string' ? { do: step } : step;
}
