/** The job card: what one visit of one vehicle has collected. Kept on the device, exported as JSON, printed as sheets. */
import { z } from 'zod';
import { LITRE_WAYS, LONGEST_NAME } from './job-limits.ts';
import { noteSchema } from './note.ts';
import { idSchema } from './scalars.ts';

/** A moment, such as 2026-11-25T14:10:00.000Z. */
const momentSchema = z.iso.datetime({ message: 'A moment is written 2026-11-25T14:10:00Z.' });

/** Words somebody typed, or the site wrote for him. Any characters: it is shown as text and never read as anything else. */
const words = (longest: number) => z.string().max(longest, { message: `At most ${longest} characters.` });

const namedSchema = z.strictObject({ id: idSchema, title: words(200) });

const answerSchema = z.strictObject({
  key: words(120).describe('What was asked, as the walk’s address has it.'),
  asked: words(400).describe('The question in words.'),
  answer: words(400).describe('The answer in words.'),
});

const readingSchema = z.strictObject({
  id: idSchema,
  at: momentSchema,
  what: words(200).describe('What was measured.'),
  value: words(1000).describe('The reading with its unit, or a calculator’s answer.'),
});

const litresSchema = z.strictObject({
  id: idSchema,
  at: momentSchema,
  way: z.enum(LITRE_WAYS),
  litres: z.number().min(0).max(60).describe('Litres, not SI: what the jug says.'),
});

const tickSchema = z.strictObject({
  at: momentSchema,
  what: words(200).describe('The joint.'),
  figure: words(80).describe('The torque as it stood on the card, with its unit.'),
});

const remarkSchema = z.strictObject({ id: idSchema, at: momentSchema, text: words(5000) });

/** A step of a procedure that is done: its number in the record, and its words as they stood then. */
const doneStepSchema = z.strictObject({
  step: z.number().int().min(1).max(200),
  at: momentSchema,
  what: words(1000),
});

const openItemSchema = z.strictObject({
  id: idSchema,
  at: momentSchema,
  what: words(200).describe('What is still to be done or read.'),
  done: z.strictObject({ at: momentSchema, value: words(200) }).optional(),
});

export const jobSchema = z.strictObject({
  id: idSchema,
  opened: momentSchema,
  changed: momentSchema,
  name: words(LONGEST_NAME).describe('What this job is called on the device: number, plate, name.'),
  plate: words(40),
  distance: words(40).describe('Odometer, as read.'),
  vehicle: namedSchema.optional(),
  said: words(2000).describe('What the customer said, in his words.'),
  complaint: namedSchema.optional(),
  answers: z.array(answerSchema).max(200),
  proven: namedSchema.optional().describe('The cause that was proven.'),
  readings: z.array(readingSchema).max(500),
  litres: z.array(litresSchema).max(100),
  torques: z.record(idSchema, tickSchema).describe('Joints tightened, by joint.'),
  remarks: z.array(remarkSchema).max(200),
  // Cards from before these fields lack them.
  steps: z
    .record(idSchema, z.strictObject({ title: words(200), done: z.array(doneStepSchema).max(200) }))
    .optional()
    .describe('Steps ticked, by procedure.'),
  open: z
    .array(openItemSchema)
    .max(50)
    .optional()
    .describe('What is to be followed up, such as the level after the night.'),
  drafted: idSchema
    .optional()
    .describe('The cause from whose record the words for the customer were drafted.'),
  'drafted-words': z
    .strictObject({ found: words(3000), watch: words(3000) })
    .optional()
    .describe('What was drafted: as long as it stands unchanged it goes with its cause.'),
  found: words(3000).describe('For the customer: what was found.'),
  did: words(3000).describe('For the customer: what was done.'),
  watch: words(3000).describe('For the customer: what to watch.'),
});

/** What is exported and imported: cards, and notes not yet handed over. */
export const jobCardsSchema = z.strictObject({
  form: z.literal('headertank job cards'),
  version: z.literal(1),
  exported: momentSchema,
  jobs: z.array(jobSchema),
  notes: z
    .array(z.strictObject({ id: idSchema, note: noteSchema }))
    .describe('Notes that are ready and not yet on the shelf; npm run take-in reads them.'),
});

export type Job = z.infer<typeof jobSchema>;
export type JobCards = z.infer<typeof jobCardsSchema>;
