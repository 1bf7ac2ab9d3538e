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
  // Cards from before this field lack it; the counter's questions have none.
  outcome: idSchema.optional().describe('The outcome of the test, where the question was one.'),
});

/** Whether an entry stands on the customer's page; without it the entry's kind decides. */
const forCustomerSchema = z.boolean().optional();

const readingSchema = z.strictObject({
  id: idSchema,
  at: momentSchema,
  what: words(200).describe('What was measured.'),
  value: words(1000).describe('The reading with its unit, or a calculator’s answer.'),
  customer: forCustomerSchema,
});

/** A proof run as it stood: before the repair it shows the complaint, after it the proof. */
const proofSchema = z.strictObject({
  id: idSchema,
  at: momentSchema,
  when: z.enum(['before', 'after']),
  rows: z
    .array(
      z.strictObject({
        what: words(200),
        value: words(200),
        wanted: words(200).describe('What passes, in words.'),
        passed: z.enum(['pass', 'fail']),
      }),
    )
    .max(50),
  says: words(1000).describe('The verdict, with what was not done.'),
});

/** What the counter told the customer about time and money. */
const estimateSchema = z.strictObject({
  at: momentSchema,
  book: words(80).describe('Time to book: nine in ten take no more.'),
  price: words(80).describe('Expected price; empty when no rate was given.'),
  most: words(80).describe('Price that nine in ten do not pass.'),
  parts: words(80).optional().describe('Parts in it; without it no parts were counted.'),
  tax: words(80).optional().describe('Tax in it, as a rate; without it none was counted.'),
});

const pictureSchema = z.strictObject({
  id: idSchema.describe('The picture itself lies beside the card under this name.'),
  at: momentSchema,
  what: words(200),
  wide: z.number().int().min(1).max(10_000),
  high: z.number().int().min(1).max(10_000),
  customer: forCustomerSchema,
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

const remarkSchema = z.strictObject({
  id: idSchema,
  at: momentSchema,
  text: words(5000),
  customer: forCustomerSchema,
  private: z
    .literal(true)
    .optional()
    .describe(
      'What another device or window wrote: a plate or a name may be in it, so it goes into no note.',
    ),
});

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
  // Cards from before these fields lack them.
  customer: words(120).optional().describe('The customer’s name.'),
  telephone: words(60).optional(),
  wanted: words(80).optional().describe('When the car is wanted back.'),
  limit: words(80).optional().describe('What may be spent without ringing first.'),
  agreed: words(120).optional().describe('The price agreed, in words.'),
  finished: momentSchema.optional().describe('When the job was finished.'),
  said: words(2000).describe('What the customer said, in his words.'),
  told: z.array(answerSchema).max(50).optional().describe('What the customer answered at the counter.'),
  estimate: estimateSchema.optional(),
  proofs: z.array(proofSchema).max(40).optional(),
  pictures: z.array(pictureSchema).max(60).optional(),
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
    .strictObject({ found: words(3000), watch: words(3000), did: words(3000).optional() })
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
  pictures: z
    .array(
      z.strictObject({
        id: idSchema,
        jpeg: z
          .string()
          .regex(/^[A-Za-z0-9+/]*={0,2}$/)
          .max(4_000_000),
      }),
    )
    .max(200)
    .optional()
    .describe('Pictures of the cards, by the id that stands there.'),
});

export type Job = z.infer<typeof jobSchema>;
export type JobCards = z.infer<typeof jobCardsSchema>;
