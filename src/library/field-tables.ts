/** Tables of every field, made from the schemas. */
import { z } from 'zod';
import type { $ZodType } from 'zod/v4/core';
import { countsSchema } from '../model/counts.ts';
import { KIND_NAMES, KINDS } from '../model/kinds.ts';
import { learningSchema } from '../model/learning.ts';
import { SCHEMAS } from '../model/schemas.ts';
import { shopSchema } from '../model/shop.ts';
import { wordsSchema } from '../model/words.ts';
import { bare, metaOf } from './schema-tree.ts';
import { wantedBy } from './wanted-by.ts';

/** Where the tables lie. */
export const FIELD_TABLES = 'src/model/FIELDS.md';

/** All fields of all records as a page of its own; those that every kind has in the same way are written once. */
export function fieldTables(): string {
  const kinds = KIND_NAMES.map((kind) => ({
    title: `${KINDS[kind].one}: content/${KINDS[kind].folder}/`,
    rows: rowsOf(kind, SCHEMAS[kind]),
  }));
  const [first, ...others] = kinds;
  const common = (first?.rows ?? []).filter((row) => others.every(({ rows }) => rows.includes(row)));
  return [
    '# Every field of a record\n\nMade from the schemas beside this file by `npm run schemas`; do not edit. How records are written: DEVELOPERS.md.\n',
    table('every record', common),
    ...kinds.map(({ title, rows }) =>
      table(
        title,
        rows.filter((row) => !common.includes(row)),
      ),
    ),
    table('the workshop: content/shop.yaml', rowsOf('the workshop', shopSchema)),
    table('words of the search: content/words.yaml', rowsOf('words of the search', wordsSchema)),
    table('for learning: content/learning.yaml', rowsOf('for learning', learningSchema)),
    table(
      'counts of finished jobs: content/counts/<year>.yaml',
      rowsOf('counts of finished jobs', countsSchema),
    ),
  ].join('\n');
}

function table(title: string, rows: readonly string[]): string {
  return `## ${title}\n\n| field | | |\n|---|---|---|\n${rows.join('\n')}\n`;
}

function rowsOf(title: string, schema: $ZodType): string[] {
  const { def } = bare(schema)._zod;
  if (def.type !== 'object') throw new Error(`${title} is not described by fields.`);
  return Object.entries(def.shape).map(([name, field]) => {
    const says = [metaOf(field).description, `*${takes(field)}*`].filter((part) => part !== undefined);
    return `| \`${name}\` | ${isOptional(field) ? '' : 'must'} | ${says.join(' ').replaceAll('|', '\\|')} |`;
  });
}

/** Whether a record may do without the field. */
export function isOptional(field: $ZodType): boolean {
  return z.safeParse(field, undefined).success;
}

/** What a field takes, in few words. */
export function takes(field: $ZodType): string {
  const { references, examples } = metaOf(field);
  if (references) return `id of a ${KINDS[references].one}`;
  if (typeof examples?.[0] === 'string') return `a quantity, such as ${examples[0]}`;
  const { def } = bare(field)._zod;
  if (def.type === 'array') return `list: ${takes(def.element)}`;
  if (def.type === 'record') {
    const keys = metaOf(def.keyType).references;
    const key = keys ? `id of a ${KINDS[keys].one}` : 'name';
    return `${key}: ${takes(def.valueType)}`;
  }
  if (def.type === 'object') {
    const names = Object.keys(def.shape);
    const more = names.length > 6 ? ' …' : '';
    return `${names.slice(0, 6).join(', ')}${more}`;
  }
  return wantedBy(field).replaceAll('"', '');
}
