import { z } from 'zod';
import { layoutConditionSchema } from './layout-schema.ts';
import { commonFields } from './record.ts';
import { lineSchema, textSchema } from './scalars.ts';

export const cautionSchema = z.strictObject({
  ...commonFields,
  short: lineSchema.describe('One line, shown at the step.'),
  hurts: textSchema.describe('What it does to whom, and how quickly.'),
  avoid: z.array(textSchema).min(1).describe('What keeps it from happening, in order.'),
  'if-it-happens': textSchema.describe(
    'First thing to do; defers to first-aid training and emergency services.',
  ),
  'on-vehicle': layoutConditionSchema
    .optional()
    .describe('Vehicles on whose own page it stands; without it, on none.'),
  defers: textSchema.describe('Which procedure, rule or licence stands above this page.'),
});
