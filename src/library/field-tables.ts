/** Field tables of DEVELOPERS.md, made from the schemas and written between two marks. */
import { z } from 'zod';
import type { $ZodType } from 'zod/v4/core';
import { KIND_NAMES, KINDS } from '../model/kinds.ts';
import { SCHEMAS } from '../model/schemas.ts';
import { shopSchema } from '../model/shop.ts';
import { wordsSchema } from '../model/words.ts';
import { bare, metaOf } from './schema-tree.ts';
import { wantedBy } from './wanted-by.ts';

const START = '<!-- fields: made by npm run schemas -->';
const END = '<!-- fields end -->';

/**
 * A text with its field tables made anew; everything outside the marks stays.
 * @throws when the marks are missing
 */
export function withFieldTables(text: string): string {
  const start = text.indexOf(START);
  const end = text.indexOf(END);
  if (start < 0 || end < start)
    throw new Error(`DEVELOPERS.md has lost its marks. Put back the lines:\n${START}\n${END}`);
  return `${text.slice(0, start + START.length)}\n\n${fieldTables()}\n${text.slice(end)}`;
}

function fieldTables(): string {
  const records = KIND_NAMES.map((kind) =>
    table(`${KINDS[kind].one}: content/${KINDS[kind].folder}/`, SCHEMAS[kind]),
  );
  return [
    ...records,
    table('the workshop: content/shop.yaml', shopSchema),
    table('words of the search: content/words.yaml', wordsSchema),
  ].join('\n');
}

function table(title: string, schema: $ZodType): string {
  const { def } = bare(schema)._zod;
  if (def.type !== 'object') throw new Error(`${title} is not described by fields.`);
  const rows = Object.entries(def.shape).map(([name, field]) => {
    const says = [metaOf(field).description, `*${takes(field)}*`].filter((part) => part !== undefined);
    return `| \`${name}\` | ${mayBeLeftOut(field) ? '' : 'must'} | ${says.join(' ').replaceAll('|', '\\|')} |`;
  });
  return `#### ${title}\n\n| field | | |\n|---|---|---|\n${rows.join('\n')}\n`;
}

/** Whether a record may do without the field. */
export function mayBeLeftOut(field: $ZodType): boolean {
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
