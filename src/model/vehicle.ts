import { z } from 'zod';
import { accessSchema } from './access.ts';
import { FIGURES, type FigurePath, JOINT_NAMES, type Joint } from './figures.ts';
import { layoutSchema } from './layout-schema.ts';
import { lookUpsSchema, plugsSchema } from './look-ups.ts';
import { loopsSchema } from './loops.ts';
import { provenance } from './provenance.ts';
import { commonFields } from './record.ts';
import { lineSchema, quantitySchema, textSchema } from './scalars.ts';
import { torqueEntry } from './torque.ts';

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

const FUELS = [
  'petrol',
  'diesel',
  'petrol hybrid',
  'diesel hybrid',
  'petrol and LPG',
  'petrol and natural gas',
  'none',
] as const;
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
  figures: z
    .strictObject(figuresShape)
    .describe('Figures by path; leave out what is not known.')
    .meta({ empty: true }),
  torques: z
    .partialRecord(z.enum(JOINT_NAMES as [Joint, ...Joint[]]), torqueEntry)
    .describe('Tightening torques by joint, each with its bolt.')
    .meta({ empty: true }),
  access: z.array(accessSchema).min(1).describe('How to get at things on this one.'),
  bleeding: textSchema.describe('Where air hides and where it is let out.'),
  gauge: textSchema.describe('What the dashboard gauge or lamp really shows.'),
  loops: loopsSchema,
  'loop-notes': z
    .array(textSchema)
    .default([])
    .describe('How the loops lie to each other, and which high-voltage parts lie beside hoses.'),
  'look-ups': lookUpsSchema,
  plugs: plugsSchema,
});

export type Vehicle = z.infer<typeof vehicleSchema>;
