import { z } from 'zod';
import { TOLD_WORDS } from '../diagnosis/told.ts';
import { priorSchema, priorWordSchema } from './frequency.ts';
import { layoutConditionSchema } from './layout-schema.ts';
import { commonFields } from './record.ts';
import { idSchema, lineSchema, minutesSchema, reference, textSchema } from './scalars.ts';

/** Symptoms are grouped by what is noticed; the order is the order of the front page. */
export const SYMPTOM_GROUPS = {
  gauge: 'Gauge and temperature',
  heater: 'Heater',
  level: 'Coolant level and leaks',
  hoses: 'Hoses and pressure',
  'smell-steam-fluids': 'Smell, steam, fluids',
  'fans-electrics': 'Fans and electrics',
  noise: 'Noise',
  codes: 'Trouble code alone',
  comeback: 'Comeback',
} as const;

type SymptomGroup = keyof typeof SYMPTOM_GROUPS;

/** Where on the car a customer notices it, as the drawing of the front page names it. */
export const PLACES = {
  'under-the-bonnet': 'Under the bonnet',
  dashboard: 'Dashboard',
  vents: 'Vents',
  'under-the-car': 'Under the car',
  carpet: 'Carpet and glass',
  exhaust: 'Exhaust',
} as const;

export type CarPlace = keyof typeof PLACES;

const MAY_DRIVE = ['yes', 'short and watched', 'no, stop'] as const;

export const symptomSchema = z.strictObject({
  ...commonFields,
  group: z.enum(Object.keys(SYMPTOM_GROUPS) as [SymptomGroup, ...SymptomGroup[]]),
  'comes-in': priorWordSchema
    .optional()
    .describe('How often it comes in beside the others of its group; occasional if not given.'),
  'noticed-at': z
    .array(z.enum(Object.keys(PLACES) as [CarPlace, ...CarPlace[]]))
    .min(1)
    .describe(
      'Where on the car it is noticed, the place that is pointed at first in front; the front page draws them.',
    ),
  layout: layoutConditionSchema.optional(),
  summary: textSchema.describe('What it is and how it shows, two or three sentences for the bay.'),
  said: z.array(lineSchema).min(3).describe('What customers say, in their words; three or more phrasings.'),
  heard: z
    .array(lineSchema)
    .optional()
    .describe('More of what customers say, which the search learns from and no page shows; six to nine do.'),
  'told-apart': z
    .record(
      reference('symptom'),
      z.strictObject({
        ask: lineSchema.describe('The question, as the counter asks it.'),
        here: lineSchema.describe('The short answer that means this complaint.'),
        there: lineSchema.describe('The short answer that means the other.'),
      }),
    )
    .optional()
    .describe(
      'Complaints that are taken for this one, each with the one question that parts the two; the search asks it.',
    ),
  drive: z
    .strictObject({
      may: z.enum(MAY_DRIVE),
      because: textSchema.describe('The reason, and what ends the permission.'),
    })
    .describe('May it be driven in.'),
  ask: z
    .array(
      z.strictObject({
        question: textSchema,
        tells: textSchema.describe('What the answer points to.'),
        id: idSchema
          .optional()
          .describe(
            'Two or three words; a question with answers needs it, for answers that are kept name it.',
          ),
        answers: z
          .array(
            z.strictObject({
              is: lineSchema.max(60).describe('The answer in a few words, as the customer gives it.'),
              of: z
                .record(reference('cause'), z.enum(TOLD_WORDS))
                .describe(
                  'Causes under which it is given more or less often than the other answers: seldom, sometimes, half the time, often. {} when it tells nothing.',
                ),
            }),
          )
          .min(2)
          .max(4)
          .optional()
          .describe('Answers to choose from; each is weak evidence for the walk.'),
      }),
    )
    .min(2)
    .describe('Questions for the counter, the most telling first.'),
  verify: reference('procedure').describe('How the bay makes sure the complaint is real.'),
  codes: z.array(reference('code')).describe('Trouble codes that go with it; [] when none do.'),
  causes: z
    .record(reference('cause'), priorSchema)
    .describe('Candidate causes and how often each is behind this complaint.'),
  'something-else': z
    .number()
    .min(0.03)
    .max(0.5)
    .optional()
    .describe('Share of causes not listed; 0.06 if not given.'),
  'pass-on': minutesSchema.describe('Minutes it costs to hand the car over when nothing here settles it.'),
  tree: reference('tree'),
  related: z.array(reference('symptom')).describe('Symptoms easily taken for this one; [] when none.'),
});

export type Symptom = z.infer<typeof symptomSchema>;
