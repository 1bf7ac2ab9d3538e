import type { $ZodType } from 'zod/v4/core';
import { bare } from './schema-tree.ts';

/** What a schema takes, in words. */
export function wantedBy(schema: $ZodType | undefined): string {
  if (!schema) return 'something else';
  const { def } = bare(schema)._zod;
  switch (def.type) {
    case 'string':
      return 'a text';
    case 'number':
      return 'format' in def ? 'a whole number' : 'a number';
    case 'boolean':
      return 'true or false';
    case 'array':
      return `a list: a line with "- " for each`;
    case 'enum':
      return `one of ${Object.keys(def.entries)
        .map((word) => `"${word}"`)
        .join(', ')}`;
    case 'object':
      return `fields: ${Object.keys(def.shape).join(', ')}`;
    case 'record':
      return 'names, each with a value: "name: value"';
    case 'union':
      return def.options.map((option) => wantedBy(option)).join('; or ');
    default:
      return 'something else';
  }
}
