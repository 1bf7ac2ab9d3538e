import { z } from 'zod';
import { CIRCUIT_PLACE_NAMES, type CircuitPlace } from './circuit-places.ts';
import { textSchema } from './scalars.ts';

/** Places of the circuit, by name. */
export const placesSchema = z.array(z.enum(CIRCUIT_PLACE_NAMES as [CircuitPlace, ...CircuitPlace[]]));

/** A line about getting at things: a plain sentence, or one with the places of the circuit that it is about. */
export const accessSchema = z.union([
  textSchema,
  z.strictObject({
    at: placesSchema
      .min(1)
      .describe('Places of the circuit it is about: the walk shows it at a test done there.'),
    is: textSchema,
  }),
]);

/** The line as an object, whichever way it was written. */
export function asAccess(line: z.infer<typeof accessSchema>): { is: string; at: CircuitPlace[] } {
  return typeof line === 'string' ? { is: line, at: [] } : line;
}
