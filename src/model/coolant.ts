import { z } from 'zod';
import { commonFields } from './record.ts';
import { lineSchema, reference, textSchema } from './scalars.ts';

export const coolantSchema = z.strictObject({
  ...commonFields,
  base: z.enum(['ethylene glycol', 'propylene glycol', 'ethylene glycol with glycerol', 'water']),
  inhibitors: textSchema.describe('The chemistry that protects the metal.'),
  life: textSchema.describe('How long it lasts and what ends it sooner.'),
  suits: textSchema.describe('Which engines ask for it.'),
  'mixes-with': z.array(reference('coolant')).describe('Families it may be topped up with; [] when none.'),
  'never-with': z.array(reference('coolant')).describe('Families that spoil it; [] when none.'),
  'when-mixed': textSchema.describe('What happens when the wrong one goes in, and what to do.'),
  colour: textSchema.describe('Colours it is sold in, and why they prove nothing.'),
  test: lineSchema.describe('What can be measured on it in the bay.'),
});
