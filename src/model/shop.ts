import { z } from 'zod';
import { HOST_KINDS } from './host-kinds.ts';
import { layoutSharesSchema } from './layout-schema.ts';
import { lineSchema, textSchema } from './scalars.ts';

/** It stands on every page: a script must not hide in it, nor somebody's key. */
function isPublicAddress(address: string): boolean {
  // That it is no address at all is said already.
  if (!URL.canParse(address)) return true;
  // What is no address at all has been reported as such.
  if (!URL.canParse(address)) return true;
  const { protocol, username, password } = new URL(address);
  return protocol === 'https:' && username === '' && password === '';
}

/** content/shop.yaml: the workshop itself. */
export const shopSchema = z.strictObject({
  name: lineSchema,
  invented: z.boolean().describe('true for the demonstration workshop.'),
  units: z.enum(['metric', 'US']).describe('Units shown until the reader chooses.'),
  currency: z.string().regex(/^[A-Z]{3}$/, {
    message: 'Three letters of ISO 4217, such as EUR.',
  }),
  'labour-rate': z.number().positive().describe('Per hour, in the currency.'),
  repository: z
    .url()
    .refine(isPublicAddress, {
      message: 'An address that starts with https:// and holds no name or password of anybody.',
    })
    .optional()
    .describe('Address of the repository, for edit and note links.'),
  host: z
    .enum(HOST_KINDS)
    .optional()
    .describe('Kind of host, if its name does not tell: gitea and its kin are forgejo.'),
  branch: lineSchema.optional().describe('Branch that notes are proposed for; main if not given.'),
  'review-every': z.int().min(1).max(120).describe('Months after which a record is due for review.'),
  layouts: layoutSharesSchema.optional(),
  hours: lineSchema.optional().describe('Printed on the sheets.'),
  'sheet-footer': textSchema.describe('Last line of printed sheets.'),
});

export type Shop = z.infer<typeof shopSchema>;
