/** The coolant loops of one vehicle: what goes into each, and how it is filled, bled and drained. */
import { z } from 'zod';
import type { FigurePath } from './figures.ts';
import { type KnownLayout, type LayoutCondition, layoutAllows } from './layout.ts';
import { provenance } from './provenance.ts';
import { lineSchema, quantitySchema, reference, textSchema } from './scalars.ts';

interface LoopKind {
  label: string;
  /** Its figures, in the order of the page. */
  figures: readonly FigurePath[];
  /** Vehicles that can have it; without it, all. */
  layout?: LayoutCondition;
}

/** Every loop a vehicle can have of its own. Two that share a tank and a coolant are one loop. */
export const LOOPS = {
  engine: {
    label: 'Engine',
    figures: [
      'coolant.capacity',
      'coolant.mixture',
      'cap.opens',
      'coolant.change-age',
      'coolant.change-distance',
    ],
    layout: { power: ['combustion', 'hybrid'] },
  },
  'charge-air': {
    label: 'Charge air',
    figures: ['charge-air.capacity', 'charge-air.cap-opens'],
    layout: { 'charge-air': ['water-cooled'] },
  },
  drive: {
    label: 'Motor and power electronics',
    figures: ['drive.capacity', 'drive.cap-opens', 'drive.change-age'],
    layout: { power: ['hybrid', 'battery electric'] },
  },
  battery: {
    label: 'Battery',
    figures: ['battery.capacity'],
    layout: { power: ['hybrid', 'battery electric'] },
  },
  'cabin-heat': {
    label: 'Cabin heat',
    figures: [],
    layout: { power: ['hybrid', 'battery electric'] },
  },
} as const satisfies Record<string, LoopKind>;

export type LoopName = keyof typeof LOOPS;
export const LOOP_NAMES = Object.keys(LOOPS) as LoopName[];
export const loopNameSchema = z.enum(LOOP_NAMES as [LoopName, ...LoopName[]]);

export const FILL_METHODS = ['gravity', 'vacuum', 'scan-tool routine'] as const;

const loopSchema = z.strictObject({
  coolant: z
    .strictObject({
      family: reference('coolant').describe('The family by chemistry; what may top it up follows from it.'),
      number: lineSchema
        .optional()
        .describe('Standard or list number on the cap, the plate or in the book, as it stands there.'),
      'ready-mixed': z.boolean().optional().describe('true where only ready mix is named.'),
      ...provenance,
    })
    .optional()
    .describe('Which coolant goes in.'),
  fill: z
    .strictObject({
      by: z.array(z.enum(FILL_METHODS)).min(1).describe('Ways its maker allows, the first one first.'),
      ...provenance,
    })
    .optional()
    .describe('How it is filled.'),
  'capacity-with': z
    .array(
      z.strictObject({
        option: lineSchema.describe('What the car has besides: rear heater, automatic gearbox.'),
        is: quantitySchema('volume', ['0.5 l', '40 l']).describe('The whole loop with that option.'),
        ...provenance,
      }),
    )
    .optional()
    .describe('Capacity where an option changes it; the plain one is a figure.'),
  bleed: z.array(textSchema).min(1).optional().describe('Bleed points in the order they are opened.'),
  drain: z.array(textSchema).min(1).optional().describe('Drain points in the order they are opened.'),
  stop: textSchema
    .optional()
    .describe('Who opens it and who does not: a loop beside high voltage, a sealed loop.'),
});

export type Loop = z.infer<typeof loopSchema>;

export const loopsSchema = z
  .partialRecord(loopNameSchema, loopSchema)
  .default({})
  .describe('Each loop: its coolant, how it is filled, bled and drained. Litres and pressures are figures.');

/** Whether a vehicle of this layout can have the loop. */
export function loopFits(name: LoopName, known: KnownLayout): boolean {
  const { layout }: LoopKind = LOOPS[name];
  return layoutAllows(layout, known);
}
