/** The schema of each kind: the only description of a record. */
import type { z } from 'zod';
import { caseSchema } from './case.ts';
import { causeSchema } from './cause.ts';
import { cautionSchema } from './caution.ts';
import { codeSchema } from './code.ts';
import { coolantSchema } from './coolant.ts';
import type { Kind } from './kinds.ts';
import { noteSchema } from './note.ts';
import { procedureSchema } from './procedure.ts';
import { symptomSchema } from './symptom.ts';
import { testSchema } from './test.ts';
import { toolSchema } from './tool.ts';
import { treeSchema } from './tree.ts';
import { vehicleSchema } from './vehicle.ts';

export const SCHEMAS = {
  symptom: symptomSchema,
  cause: causeSchema,
  test: testSchema,
  tree: treeSchema,
  procedure: procedureSchema,
  tool: toolSchema,
  code: codeSchema,
  coolant: coolantSchema,
  caution: cautionSchema,
  vehicle: vehicleSchema,
  note: noteSchema,
  case: caseSchema,
} as const satisfies Record<Kind, z.ZodType>;

/** The parsed record of a kind. */
export type RecordOf<K extends Kind> = z.infer<(typeof SCHEMAS)[K]>;
