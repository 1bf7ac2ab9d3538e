/** JSON Schemas for editors, made from the schemas of the model and never written by hand. */
import { z } from 'zod';
import { countsSchema } from '../model/counts.ts';
import { jobCardsSchema } from '../model/job.ts';
import { KIND_NAMES, KINDS, type Kind } from '../model/kinds.ts';
import { learningSchema } from '../model/learning.ts';
import { movedSchema } from '../model/record.ts';
import { dateSchema, type SchemaMeta } from '../model/scalars.ts';
import { SCHEMAS } from '../model/schemas.ts';
import { shopSchema } from '../model/shop.ts';
import { wordsSchema } from '../model/words.ts';

/** Folder of the schemas, from the project's folder. */
const SCHEMA_FOLDER = '.schemas';

/** Path of the schema of a kind of record. */
export function schemaPath(kind: Kind | 'shop' | 'words' | 'learning' | 'counts' | 'job-cards'): string {
  return `${SCHEMA_FOLDER}/${kind}.json`;
}

/** Which files an editor holds against which schema. */
export function schemaPatterns(): Record<string, string> {
  const records = KIND_NAMES.map((kind): [string, string] => [
    schemaPath(kind),
    kind === 'note' ? 'content/notes/*/*.yaml' : `content/${KINDS[kind].folder}/*.yaml`,
  ]);
  return Object.fromEntries([
    ...records,
    [schemaPath('shop'), 'content/shop.yaml'],
    [schemaPath('words'), 'content/words.yaml'],
    [schemaPath('learning'), 'content/learning.yaml'],
    [schemaPath('counts'), 'content/counts/*.yaml'],
  ]);
}

/** Every generated file of the editors by its path, as it has to stand in the repository. */
export function editorFiles(): Map<string, string> {
  const files = new Map<string, string>();
  for (const kind of KIND_NAMES) {
    // A record that has moved keeps its file: only the new id is left in it.
    const schema = {
      if: { required: ['moved-to'] },
      // biome-ignore lint/suspicious/noThenProperty: JSON Schema's word; nothing awaits it.
      then: jsonSchema(movedSchema),
      else: jsonSchema(SCHEMAS[kind]),
    };
    files.set(schemaPath(kind), written({ ...DRAFT, title: KINDS[kind].one, ...schema }));
  }
  files.set(schemaPath('shop'), written({ ...DRAFT, title: 'the workshop', ...jsonSchema(shopSchema) }));
  files.set(
    schemaPath('words'),
    written({ ...DRAFT, title: 'words of the search', ...jsonSchema(wordsSchema) }),
  );
  files.set(
    schemaPath('learning'),
    written({ ...DRAFT, title: 'order of the guides and words of the trade', ...jsonSchema(learningSchema) }),
  );
  files.set(
    schemaPath('counts'),
    written({ ...DRAFT, title: 'counts of finished jobs', ...jsonSchema(countsSchema) }),
  );
  files.set(
    schemaPath('job-cards'),
    written({ ...DRAFT, title: 'job cards, exported', ...jsonSchema(jobCardsSchema) }),
  );
  const schemas = Object.fromEntries(
    Object.entries(schemaPatterns()).map(([path, pattern]) => [`./${path}`, pattern]),
  );
  const yaml = { 'yaml.schemas': schemas, 'yaml.schemaStore.enable': false, 'yaml.format.enable': false };
  files.set(
    '.vscode/settings.json',
    written({
      ...yaml,
      'editor.rulers': [110],
      'files.eol': '\n',
      'files.insertFinalNewline': true,
      '[yaml]': { 'editor.tabSize': 2, 'editor.insertSpaces': true, 'editor.autoIndent': 'keep' },
    }),
  );
  files.set(
    '.zed/settings.json',
    written({
      lsp: {
        'yaml-language-server': {
          settings: { yaml: { schemas, schemaStore: { enable: false }, format: { enable: false } } },
        },
      },
    }),
  );
  return files;
}

const DRAFT = { $schema: 'http://json-schema.org/draft-07/schema#' };

/** A schema as editors read it. What only the shelf check can know, such as whether an id exists, is left out. */
function jsonSchema(schema: z.ZodType): Record<string, unknown> {
  const made = z.toJSONSchema(schema, {
    target: 'draft-07',
    io: 'input',
    unrepresentable: 'any',
    override: ({ zodSchema, jsonSchema: part }) => {
      if ((part as SchemaMeta).numeric === true) takeNumbers(part);
      if (isDate(zodSchema)) Object.assign(part, { pattern: DAY, examples: ['2026-11-25'] });
      const { references } = part as SchemaMeta;
      if (references !== undefined)
        describeToo(
          part,
          `Id of a ${KINDS[references].one}: the name of a file in content/${KINDS[references].folder}, without .yaml.`,
        );
      dropOwnWords(part);
    },
  });
  const { $schema: _, ...rest } = made;
  return rest;
}

/** Adds a sentence to what the schema says about itself. */
export function describeToo(part: { description?: string }, says: string): void {
  part.description = part.description === undefined ? says : `${part.description} ${says}`;
}

/** Takes out words of ours that JSON Schema does not have. */
export function dropOwnWords(part: object): void {
  const own: Required<{ [K in keyof SchemaMeta]: true }> = {
    references: true,
    text: true,
    empty: true,
    numeric: true,
    day: true,
    becomes: true,
    dimension: true,
  };
  for (const key of Object.keys(own)) Reflect.deleteProperty(part, key);
}

const DAY = '^\\d{4}-\\d{2}-\\d{2}$';

/** A page or a class of bolts is a text that people write as a number. */
function takeNumbers(part: { type?: unknown; enum?: unknown[] | undefined }): void {
  part.type = ['string', 'number'];
  const numbers = (part.enum ?? []).map(Number).filter((each) => !Number.isNaN(each));
  if (part.enum) part.enum = [...part.enum, ...numbers];
}

/** A schema made of the date schema has its check, whatever was added to it. */
function isDate(schema: z.core.$ZodType): boolean {
  const checks = (each: z.core.$ZodType) => (each as z.core.$ZodTypes)._zod.def.checks ?? [];
  const [calendar] = checks(dateSchema);
  return calendar !== undefined && checks(schema).includes(calendar);
}

function written(value: unknown): string {
  return `${JSON.stringify(value, null, 2)}\n`;
}
