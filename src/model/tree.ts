import { z } from 'zod';
import { SOMETHING_ELSE } from './kinds.ts';
import { LAYOUT_FEATURES, type LayoutFeature } from './layout.ts';
import { commonFields } from './record.ts';
import { idSchema, lineSchema, reference, textSchema } from './scalars.ts';

const because = textSchema
  .optional()
  .describe(
    'Why this step stands here though another order would cost fewer minutes: safety, courtesy, the customer.',
  );

const branches = z.record(z.string(), idSchema).describe('Per outcome: the next step or end.');

/** What one step can be. Exactly one of test, layout, prove and tree is given. */
const treeStepSchema = z
  .strictObject({
    test: reference('test').optional().describe('Do this test; `on` says where each outcome leads.'),
    layout: z
      .enum(LAYOUT_FEATURES as [LayoutFeature, ...LayoutFeature[]])
      .optional()
      .describe('Branch on the vehicle’s layout; `on` has a way for each value.'),
    prove: reference('cause')
      .optional()
      .describe('Prove this cause now; `otherwise` says where it leads if it is not that.'),
    tree: reference('tree').optional().describe('Go on in another tree.'),
    on: branches.optional(),
    otherwise: idSchema.optional(),
    because,
  })
  .refine(
    (step) =>
      [step.test, step.layout, step.prove, step.tree].filter((each) => each !== undefined).length === 1,
    {
      message: 'A step is exactly one of: test, layout, prove, tree.',
    },
  )
  .refine((step) => (step.test === undefined && step.layout === undefined) === (step.on === undefined), {
    message: 'A test or layout step has `on`; other steps do not.',
  })
  .refine((step) => (step.prove === undefined) === (step.otherwise === undefined), {
    message: 'A prove step has `otherwise`; other steps do not.',
  });

/** A sentence that is true only with certain answers, and is shown only with them. */
const claimSchema = z.strictObject({
  text: textSchema.describe('What these answers show.'),
  after: z
    .record(reference('test'), z.union([idSchema, z.array(idSchema).min(1)]))
    .describe('The answers it rests on: per test one outcome or several, of which one was seen.'),
});

/** Each way is followed to its end when a tree is judged. */
const MOST_STEPS = 160;

export const treeSchema = z.strictObject({
  ...commonFields,
  symptom: reference('symptom'),
  start: idSchema.describe('The step the walk begins with.'),
  steps: z.record(idSchema, treeStepSchema).refine((steps) => Object.keys(steps).length <= MOST_STEPS, {
    message: `A tree has ${MOST_STEPS} steps at most; the longest walk of a shelf has a quarter of that.`,
  }),
  ends: z.record(
    idSchema,
    z.strictObject({
      title: lineSchema
        .optional()
        .describe('What the answers come to, in the trade’s words; for ends that name several causes.'),
      causes: z
        .array(reference('cause'))
        .min(1)
        .describe(`Causes to prove, in this order; ${SOMETHING_ELSE} where the walk must pass the car on.`),
      says: z
        .union([textSchema, z.array(z.union([textSchema, claimSchema])).min(1)])
        .describe(
          'What the answers add up to, one or two sentences; what rests on an answer is written with it, as text and after.',
        ),
    }),
  ),
  because,
});

export type Tree = z.infer<typeof treeSchema>;
export type TreeStep = Tree['steps'][string];
export type End = Tree['ends'][string];

/** A sentence of an end with the answers it rests on: per test the outcomes of which one was seen; none for what holds always. */
export interface Claim {
  text: string;
  after: Record<string, string[]>;
}

/** What an end says, sentence by sentence. */
export function claimsOf({ says }: Pick<End, 'says'>): Claim[] {
  const all = typeof says === 'string' ? [says] : says;
  return all.map((one) =>
    typeof one === 'string'
      ? { text: one, after: {} }
      : {
          text: one.text,
          after: Object.fromEntries(
            Object.entries(one.after).map(([test, seen]) => [test, typeof seen === 'string' ? [seen] : seen]),
          ),
        },
  );
}
