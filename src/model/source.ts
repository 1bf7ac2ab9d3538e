/** Where a fact is from. */
import { z } from 'zod';
import { textSchema } from './scalars.ts';

/** A rule of the trade nobody prints, or a value remembered and not looked up. */
const plainSource = z.enum(['common practice', 'from memory']);

const namedSource = z.union([
  z.strictObject({
    published: textSchema.describe('Author, title, year, table or page.'),
  }),
  z.strictObject({
    manual: textSchema.describe('Workshop manual held by the shop: title and page.'),
  }),
  z.strictObject({
    measured: textSchema.describe('What was measured here, on what, when.'),
  }),
]);

const sourceSchema = z.union([plainSource, namedSource]);
export type Source = z.infer<typeof sourceSchema>;

export const sourcesSchema = z
  .array(sourceSchema)
  .min(1, {
    message: 'Every record says where it is from; write "common practice" when there is no source.',
  })
  .describe(
    'Where this is from: common practice, from memory, or published / manual / measured with details.',
  );

/** One source as a sentence part. */
export function sourceText(source: Source): string {
  if (source === 'common practice') return 'common practice, no source';
  if (source === 'from memory') return 'from memory';
  if ('published' in source) return source.published;
  if ('manual' in source) return `workshop manual held by the shop: ${source.manual}`;
  return `measured here: ${source.measured}`;
}
