/** One tightening torque of a vehicle: in one pull, or in stages to a torque and by an angle. */
import { z } from 'zod';
import { provenance } from './provenance.ts';
import { quantitySchema } from './scalars.ts';

const THREADS = ['M5', 'M6', 'M7', 'M8', 'M10', 'M12', 'M14', 'M16', 'M18', 'M20', 'M22'] as const;
const BOLT_CLASSES = ['5.8', '8.8', '10.9', '12.9', 'brass', 'plastic'] as const;
const TAPPED_INTO = ['aluminium', 'cast iron', 'steel', 'plastic insert', 'plastic'] as const;

const torqueSchema = quantitySchema('torque', ['0.5 N·m', '250 N·m']);

const stageSchema = z.union([
  z.strictObject({ to: torqueSchema.describe('The next stage, to this torque.') }),
  z.strictObject({
    turn: quantitySchema('angle', ['10°', '360°']).describe('The next stage, turned on by this angle.'),
  }),
]);

export const torqueEntry = z
  .strictObject({
    is: torqueSchema.describe('The torque; of one tightened in stages, the first.'),
    stages: z
      .array(stageSchema)
      .min(1)
      .optional()
      .describe('Further stages in their order: { to: 40 N·m } or { turn: 90° }.'),
    'one-use': z
      .boolean()
      .optional()
      .describe('true where the maker wants a new bolt every time; must be said where there is an angle.'),
    bolt: z.enum(THREADS),
    class: z
      .enum(BOLT_CLASSES)
      .optional()
      .describe(
        'Property class of the bolt, on its head; brass or plastic for plugs. Leave it out if nobody has read it.',
      )
      .meta({ numeric: true }),
    into: z.enum(TAPPED_INTO).describe('What it is screwed into.'),
    ...provenance,
  })
  .refine((entry) => entry['one-use'] !== undefined || !entry.stages?.some((stage) => 'turn' in stage), {
    path: ['one-use'],
    message:
      'A bolt that is turned on by an angle is stretched: one-use: true or false says whether it may be used again.',
  });

export type TorqueEntry = z.infer<typeof torqueEntry>;
