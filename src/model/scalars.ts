/** Small parts that records share: ids, texts, dates, quantities, references. */
import { z } from 'zod';
import type { Kind } from './kinds.ts';
import { exampleOf, type Quantity, readQuantity } from './quantity.ts';
import { quantityText } from './show-quantity.ts';
import type { Dimension } from './units.ts';
import { writtenDay } from './written-day.ts';

/** What the shelf check needs to know about a schema beyond its type. */
export interface SchemaMeta {
  /** The string names a record of this kind. */
  references?: Kind;
  /** The string is Markdown shown to people; it may quote figures in braces. */
  text?: boolean;
  /** A name with nothing behind it says that there are none. */
  empty?: boolean;
  /** The string is often a number, and may be written as one. */
  numeric?: boolean;
  /** The string is a day. */
  day?: boolean;
  /** What the string is once it has been read. */
  becomes?: 'quantity' | 'limit' | 'layout';
  /** What a quantity measures. */
  dimension?: Dimension;
}

export const ID_FORM = /^[a-z0-9]+(?:-[a-z0-9]+)*$/;

export const idSchema = z.string().regex(ID_FORM, {
  message: 'An id is lower-case trade words joined by hyphens, such as thermostat-stuck-open.',
});

/** Markdown for people, without HTML. May quote figures of the vehicle in braces, such as {thermostat.opens}. */
export const textSchema = z
  .string()
  .trim()
  .min(1, { message: 'Nothing is written here.' })
  .meta({ text: true });

/** A short line: a title or a label. */
export const lineSchema = z
  .string()
  .trim()
  .min(1, { message: 'Nothing is written here.' })
  .max(140, {
    message: 'This is a line, at most 140 characters; longer text belongs in another field.',
  })
  .regex(/^[^\n]*$/, { message: 'This is one line: no line breaks.' })
  .meta({ text: true });

/** The id of a record of another kind. */
export function reference<K extends Kind>(kind: K) {
  return idSchema.meta({ references: kind });
}

/** A day, such as 2026-11-25. */
export const dateSchema = z
  .string()
  .superRefine((value, context) => {
    const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(value);
    const day = match ? new Date(`${value}T00:00:00Z`) : undefined;
    // Date rolls 31 June over to 1 July: compare what comes back.
    if (!day || Number.isNaN(day.getTime()) || day.toISOString().slice(0, 10) !== value) {
      const written = writtenDay(value);
      const either = written && 'either' in written ? written.either.join(' or ') : undefined;
      context.addIssue({
        code: 'custom',
        message:
          either === undefined
            ? `"${value}" is not a day of the calendar.`
            : `"${value}" may be read in two ways.`,
        params: {
          rule: 'bad-date',
          expected:
            either === undefined ? 'year-month-day, such as 2026-11-25' : `${either}, whichever is meant`,
        },
      });
    }
  })
  .meta({ day: true });

/**
 * A quantity of one dimension, parsed from text.
 * @param plausible lowest and highest value that can be meant, written as quantities
 */
export function quantitySchema(dimension: Dimension, plausible?: readonly [string, string]) {
  const limits = plausible?.map((each) => parsed(each, dimension));
  return z
    .string()
    .transform((value, context): Quantity => {
      const result = readQuantity(value, dimension);
      if (!result.ok) {
        const { rule, found, expected } = result.fault;
        context.addIssue({
          code: 'custom',
          message: found,
          params: { rule, expected },
        });
        return z.NEVER;
      }
      const [lowest, highest] = limits ?? [];
      if (lowest && highest && (result.quantity.low < lowest.low || result.quantity.high > highest.high)) {
        context.addIssue({
          code: 'custom',
          message: `${value} cannot be meant here.`,
          params: {
            rule: 'implausible-quantity',
            expected: `${quantityText(lowest)} to ${quantityText(highest)}`,
          },
        });
        return z.NEVER;
      }
      return result.quantity;
    })
    .meta({ examples: [exampleOf(dimension)], becomes: 'quantity', dimension });
}

/** A quantity known to be right: from the project's own tables. @throws Error when it is not, so that the table is mended */
export function parsed(text: string, dimension: Dimension): Quantity {
  const result = readQuantity(text, dimension);
  if (!result.ok) throw new Error(`${result.fault.found} Expected ${result.fault.expected}`);
  return result.quantity;
}

export const minutesSchema = z
  .number()
  .positive({ message: 'Minutes are more than nothing.' })
  .max(600, { message: 'More than ten hours cannot be meant here.' })
  .describe('Minutes of work for someone who has done it before.');

/** A time that has to pass at a step before the next. */
export const waitSchema = quantitySchema('time', ['1 min', '12 h'])
  .optional()
  .describe(
    'How long the step waits, such as 15 min: warm-up, heat soak, pressure hold. A timer is offered; of a range the shorter end.',
  );
