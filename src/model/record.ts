/** What every record has, whatever its kind. */
import { z } from 'zod';
import { dateSchema, idSchema, lineSchema, textSchema } from './scalars.ts';
import { sourcesSchema } from './source.ts';

const otherNamesSchema = z
  .strictObject({
    trade: z.array(lineSchema).optional().describe('Other names the trade uses.'),
    said: z.array(lineSchema).optional().describe('What customers call it.'),
    slips: z.array(lineSchema).optional().describe('Usual misspellings.'),
  })
  .describe('Other names, by kind. Search shows the one that matched.');

export const commonFields = {
  title: lineSchema.describe('What it is called, as it stands on the page.'),
  also: otherNamesSchema.optional(),
  sources: sourcesSchema,
  reviewed: dateSchema.describe('The day somebody last read the whole record and agreed.'),
  'review-every': z
    .int()
    .min(1)
    .max(120)
    .optional()
    .describe('Months until the next review, if not the shop’s default.'),
};

/** All that is left of a record that was renamed or merged: its address redirects. */
export const movedSchema = z.strictObject({ 'moved-to': idSchema });

/** A warning about a reading: what makes it lie. */
export const misleadsSchema = z.array(textSchema).min(1).describe('What makes the reading lie.');
