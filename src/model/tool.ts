import { z } from 'zod';
import { commonFields } from './record.ts';
import { reference, textSchema } from './scalars.ts';

export const toolSchema = z.strictObject({
  ...commonFields,
  for: textSchema.describe('What it settles or does.'),
  accuracy: textSchema.describe('How far its reading can be trusted, and what spoils it.'),
  use: z.array(textSchema).min(1).describe('How to use it well, in order.'),
  substitute: textSchema.optional().describe('A cheaper sound way, where there is one.'),
  care: textSchema.describe('What keeps it honest: calibration, storage, cleaning.'),
  cautions: z.array(reference('caution')),
});
