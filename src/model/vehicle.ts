import { z } from 'zod';
import { FIGURES, type FigurePath, JOINT_NAMES, type Joint } from './figures.ts';
import { layoutSchema } from './layout-schema.ts';
import { commonFields } from './record.ts';
import { dateSchema, lineSchema, quantitySchema, textSchema } from './scalars.ts';

/** How a figure came to the shelf. */
const FIGURE_ORIGINS = [
  'manual',
  'parts list',
  'plate on the vehicle',
  'measured here',
  'published',
  'common practice',
] as const;
/** How far the person who entered it trusts it. */
const FIGURE_TRUST = [
  'read off the source',
  'measured twice',
  'measured once',
  'second hand',
  'guess',
] as const;

const provenance = {
  from: z.enum(FIGURE_ORIGINS),
  page: lineSchema.optional().describe('Where in the source.'),
  checked: dateSchema.describe('The day somebody held it against the source.'),
  sure: z.enum(FIGURE_TRUST),
  note: textSchema.optional(),
};

function figureEntry(path: FigurePath) {
  const { dimension, plausible, label } = FIGURES[path];
  return z
    .strictObject({ is: quantitySchema(dimension, plausible), ...provenance })
    .optional()
    .describe(label);
}

const figuresShape = Object.fromEntries(
  (Object.keys(FIGURES) as FigurePath[]).map((path) => [path, figureEntry(path)]),
) as { [P in FigurePath]: ReturnType<typeof figureEntry> };

const THREADS = ['M5', 'M6', 'M7', 'M8', 'M10', 'M12', 'M14'] as const;
const BOLT_CLASSES = ['5.8', '8.8', '10.9', '12.9', 'brass', 'plastic'] as const;
const TAPPED_INTO = ['aluminium', 'cast iron', 'steel', 'plastic insert', 'plastic'] as const;

const torqueEntry = z.strictObject({
  is: quantitySchema('torque', ['0.5 N·m', '250 N·m']),
  bolt: z.enum(THREADS),
  class: z
    .enum(BOLT_CLASSES)
    .describe('Property class of the bolt, on its head; brass or plastic for plugs.'),
  into: z.enum(TAPPED_INTO).describe('What it is screwed into.'),
  ...provenance,
});

const FUELS = ['petrol', 'diesel', 'petrol hybrid', 'none'] as const;
const BODIES = ['hatchback', 'saloon', 'estate', 'off-roader', 'van', 'pickup', 'coupé'] as const;

export const vehicleSchema = z.strictObject({
  ...commonFields,
  invented: z.boolean().describe('true for the demonstration vehicles, which do not exist.'),
  maker: lineSchema,
  model: lineSchema,
  body: z.enum(BODIES),
  years: z
    .string()
    .regex(/^\d{4}(?:-\d{4})?$/, {
      message: 'Years are written 2009 or 2009-2014.',
    })
    .refine((years) => (years.split('-')[1] ?? years) >= years.slice(0, 4), {
      message: 'The first year stands before the last, such as 2009-2014.',
    }),
  engine: z.strictObject({
    code: lineSchema.describe('Engine code as on the plate; vehicles that share it share the engine.'),
    size: quantitySchema('volume', ['0.5 l', '9 l']).optional(),
    cylinders: z.int().min(2).max(12).optional(),
    fuel: z.enum(FUELS),
  }),
  layout: layoutSchema,
  figures: z.strictObject(figuresShape).describe('Figures by path; leave out what is not known.'),
  torques: z
    .partialRecord(z.enum(JOINT_NAMES as [Joint, ...Joint[]]), torqueEntry)
    .describe('Tightening torques by joint, each with its bolt.'),
  access: z.array(textSchema).min(1).describe('How to get at things on this one.'),
  bleeding: textSchema.describe('Where air hides and where it is let out.'),
  gauge: textSchema.describe('What the dashboard gauge or lamp really shows.'),
  loops: z
    .array(textSchema)
    .default([])
    .describe('Separate loops, isolating coolant, high-voltage parts beside hoses.'),
});

export type Vehicle = z.infer<typeof vehicleSchema>;
export type TorqueEntry = z.infer<typeof torqueEntry>;
