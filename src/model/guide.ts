/** What stands above the text of a guide. */
import { z } from 'zod';
import { dateSchema, lineSchema } from './scalars.ts';
import { sourcesSchema } from './source.ts';

export const guideHeadSchema = z.strictObject({
  title: lineSchema,
  summary: lineSchema,
  sources: sourcesSchema,
  reviewed: dateSchema,
});

export type GuideHead = z.infer<typeof guideHeadSchema>;
