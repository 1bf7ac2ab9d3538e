import { z } from 'zod';
import { CALCULATOR_IDS } from './calculator-ids.ts';
import { JOINT_NAMES, type Joint } from './figures.ts';
import { layoutConditionSchema } from './layout-schema.ts';
import { loopNameSchema } from './loops.ts';
import { commonFields } from './record.ts';
import { lineSchema, minutesSchema, reference, textSchema, waitSchema } from './scalars.ts';
import { wantedCoolantSchema } from './wanted-coolant.ts';

/** What a procedure does in a job; a proof also hands the car back. */
const STAGES = ['repair', 'fill', 'proof'] as const;
export type Stage = (typeof STAGES)[number];

const procedureStepSchema = z.strictObject({
  do: textSchema.describe('One action.'),
  why: textSchema.optional().describe('What goes wrong without it.'),
  check: textSchema.optional().describe('How one knows it is done.'),
  torque: z
    .enum(JOINT_NAMES as [Joint, ...Joint[]])
    .optional()
    .describe('The joint tightened here; the figure is the vehicle’s.'),
  fills: loopNameSchema
    .optional()
    .describe('The loop that is filled or topped up here; the vehicle’s coolant is named at the step.'),
  caution: reference('caution').optional().describe('Shown before the action.'),
  calculator: z.enum(CALCULATOR_IDS).optional().describe('Opened at this step.'),
  wait: waitSchema,
  enter: z
    .enum(['log', 'proof run'])
    .optional()
    .describe('What is taken down here on the page of the road test; linked at the step.'),
  layout: layoutConditionSchema.optional(),
});

export const procedureSchema = z.strictObject({
  ...commonFields,
  summary: textSchema.describe('What it does and when it is the right one.'),
  minutes: minutesSchema,
  stage: z
    .enum(STAGES)
    .default('repair')
    .describe('Where it stands in a job. A fill or a proof that follows a repair is not counted as repair.'),
  layout: layoutConditionSchema.optional(),
  cautions: z.array(reference('caution')),
  tools: z.array(reference('tool')),
  parts: z.array(lineSchema).describe('Parts and seals; [] when none.'),
  consumables: z.array(lineSchema).describe('Cleaner, grease, cloths; [] when none.'),
  coolant: wantedCoolantSchema.optional().describe('The coolant that goes in; left out when it takes none.'),
  steps: z.array(procedureStepSchema).min(2),
  finish: z.array(textSchema).min(1).describe('Checks before it counts as done.'),
  'followed-by': z.array(reference('procedure')).default([]).describe('Procedures that follow, in order.'),
});
