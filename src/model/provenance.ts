/** How something about a vehicle came to the shelf, and how far it can be trusted. */
import { z } from 'zod';
import { dateSchema, lineSchema, textSchema } from './scalars.ts';

/** How a figure came to the shelf. */
const FIGURE_ORIGINS = [
  'manual',
  'parts list',
  'plate on the vehicle',
  'measured here',
  'published',
  'common practice',
] as const;
/** How far the person who entered it trusts it. */
const FIGURE_TRUST = [
  'read off the source',
  'measured twice',
  'measured once',
  'second hand',
  'guess',
] as const;

export const provenance = {
  from: z.enum(FIGURE_ORIGINS),
  page: lineSchema.optional().describe('Where in the source.').meta({ numeric: true }),
  checked: dateSchema.describe('The day somebody held it against the source.'),
  sure: z.enum(FIGURE_TRUST),
  note: textSchema.optional(),
};
