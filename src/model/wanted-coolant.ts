/** The coolant that a repair or a procedure takes. */
import { z } from 'zod';
import { lineSchema } from './scalars.ts';

export const wantedCoolantSchema = z.strictObject({
  amount: z
    .enum(['what is lost', 'the whole system'])
    .describe('What is lost goes in again, or the whole system is filled anew.'),
  note: lineSchema.optional().describe('What else is said of it: its type, how it is mixed, for what part.'),
});

export type WantedCoolant = z.infer<typeof wantedCoolantSchema>;

/** As a line among the consumables: "Coolant for the whole system, of one type". */
function wantedCoolantText({ amount, note }: WantedCoolant): string {
  const what = amount === 'the whole system' ? 'Coolant for the whole system' : 'Coolant';
  return note === undefined ? what : `${what}, ${note}`;
}

/** Everything a repair uses up, coolant first. */
export function consumablesOf(record: {
  coolant?: WantedCoolant | undefined;
  consumables: readonly string[];
}): string[] {
  return [...(record.coolant ? [wantedCoolantText(record.coolant)] : []), ...record.consumables];
}
