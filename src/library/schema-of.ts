import type { $ZodType } from 'zod/v4/core';
import { SCHEMAS } from '../model/schemas.ts';
import { shopSchema } from '../model/shop.ts';
import type { Draft } from './draft.ts';

export function schemaOf(kind: Draft['kind']): $ZodType {
  return kind === 'shop' ? shopSchema : SCHEMAS[kind];
}
