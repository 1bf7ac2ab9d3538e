import { z } from 'zod';
import { FIGURE_PATHS, type FigurePath } from './figures.ts';
import { commonFields } from './record.ts';
import { dateSchema, lineSchema, reference, textSchema } from './scalars.ts';

const NOTE_STATUS = ['proposed', 'accepted', 'withdrawn'] as const;

const correctsSchema = z.strictObject({
  figure: z.enum(FIGURE_PATHS as [FigurePath, ...FigurePath[]]),
  is: lineSchema.describe('The figure as it should be, with its unit.'),
  source: lineSchema.describe('Where the better figure is from.'),
});

/** As much of a note as it takes to hold its better figure against what can be meant, whatever else it lacks. */
export const correctionSchema = z.object({ corrects: z.object(correctsSchema.shape).omit({ source: true }) });

export const noteSchema = z
  .strictObject({
    ...commonFields,
    by: z.string().regex(/^[A-Z]{2,3}$/, {
      message: 'Two or three capital initials, no names.',
    }),
    date: dateSchema,
    vehicle: reference('vehicle').optional(),
    symptom: reference('symptom').optional(),
    cause: reference('cause').optional(),
    procedure: reference('procedure').optional(),
    text: textSchema,
    corrects: correctsSchema.optional().describe('A figure of the vehicle this note says is wrong.'),
    status: z.enum(NOTE_STATUS),
    'reviewed-by': z
      .string()
      .regex(/^[A-Z]{2,3}$/, {
        message: 'Two or three capital initials, no names.',
      })
      .optional(),
  })
  .refine((note) => note.vehicle ?? note.symptom ?? note.cause ?? note.procedure, {
    message: 'A note hangs on something: vehicle, symptom, cause or procedure.',
  });

export type Note = z.infer<typeof noteSchema>;

/** A note that may still lack fields, or have wrong ones. */
export type UnfinishedNote = Partial<Record<keyof Note, unknown>>;

/** Whether it is whole and its fields are right. */
export function isNote(note: UnfinishedNote): note is Note {
  return noteSchema.safeParse(note).success;
}
