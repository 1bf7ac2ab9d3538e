/** JSON Schema of the whole shelf as one file, made from the schemas of the model. */
import { z } from 'zod';
import { countsSchema } from '../model/counts.ts';
import { KIND_NAMES, KINDS, type Kind } from '../model/kinds.ts';
import { LAYOUT } from '../model/layout.ts';
import { learningSchema } from '../model/learning.ts';
import type { SchemaMeta } from '../model/scalars.ts';
import { SCHEMAS } from '../model/schemas.ts';
import { shopSchema } from '../model/shop.ts';
import { SI_SYMBOLS } from '../model/si-units.ts';
import { wordsSchema } from '../model/words.ts';
import { describeToo, dropOwnWords } from './schema-files.ts';
import { SHELF_FORM } from './whole-shelf.ts';

type Json = Record<string, unknown>;

const PROMISE =
  'What may change: within one form-version fields, kinds and words of a list may be added, so a reader passes over what it does not know; ' +
  'the newest schema lies beside the newest file. ' +
  'A field that goes away or means something else raises form-version. An id lives for ever: a record that is renamed or merged stands under moved. ' +
  'version changes with any record. Addresses begin at the root of the site; links inside texts (Markdown) do too. ' +
  'A text may name a figure of the vehicle in braces, such as {thermostat.opens}.';

/**
 * @param open what a reader should hold a file against: names that are not known yet pass, as PROMISE says. Without it every
 * name must be known, as our own test wants it.
 */
export function wholeShelfSchema({ open }: { open: boolean }): Json {
  const schema = {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'A shelf of Headertank',
    description: PROMISE,
    ...closed({
      $schema: { type: 'string', description: 'This schema, beside the file.' },
      form: { const: SHELF_FORM.form },
      'form-version': { const: SHELF_FORM['form-version'] },
      version: { type: 'string', description: 'Changes when a record does.' },
      software: { type: 'string', description: 'What wrote it, with its version.' },
      licence: { type: 'string', description: 'SPDX name of the licence that the records are under.' },
      shop: made(shopSchema),
      records: {
        ...closed(
          Object.fromEntries(
            KIND_NAMES.map((kind) => [kind, { type: 'object', additionalProperties: recordOf(kind) }]),
          ),
        ),
        description: 'Every record that the check found right, by kind and id.',
      },
      moved: {
        type: 'array',
        items: closed({
          kind: { enum: KIND_NAMES },
          id: { type: 'string' },
          to: { type: 'string', description: 'Where it stands now.' },
        }),
      },
      guides: { type: 'array', items: closed({ id: { type: 'string' }, address: { type: 'string' } }) },
      words: made(wordsSchema),
      learning: made(learningSchema),
      counts: made(countsSchema),
    }),
    $defs: {
      quantity: { ...QUANTITY, description: 'A value or a range: as written, and in SI.' },
      limit: { ...LIMIT, description: 'Where a band ends: times × the figure of the vehicle + plus.' },
      layout: LAYOUT_SCHEMA,
      ...Object.fromEntries(KIND_NAMES.map((kind) => [kind, made(SCHEMAS[kind])])),
    },
  };
  return open ? (opened(schema) as Json) : schema;
}

function recordOf(kind: Kind): Json {
  const hasPage = kind !== 'case';
  return closed(
    {
      ...(hasPage && { address: { type: 'string', description: 'Of its page.' } }),
      file: { type: 'string', description: 'The file it is written in.' },
      record: { $ref: `#/$defs/${kind}` },
      links: {
        type: 'object',
        propertyNames: { enum: KIND_NAMES },
        additionalProperties: {
          type: 'object',
          additionalProperties: { type: ['string', 'null'] },
        },
        description:
          'Every record that it names, by kind and id, with the address of its page; null for something-else, which has none.',
      },
    },
    [],
  );
}

const NUMBER = { type: 'number' };

const QUANTITY = closed({
  text: { type: 'string', examples: ['87 °C'] },
  measures: { enum: Object.keys(SI_SYMBOLS) },
  unit: { type: 'string', description: 'As written; empty for a plain number.' },
  low: { ...NUMBER, description: 'In the unit as written; the same as high for a single value.' },
  high: NUMBER,
  si: closed({ unit: { enum: [...new Set(Object.values(SI_SYMBOLS))] }, low: NUMBER, high: NUMBER }),
});

const LIMIT = closed(
  {
    text: { type: 'string', examples: ['{thermostat.opens} - 5 K'] },
    figure: { type: 'string', description: 'Path of a figure of the vehicle.' },
    times: NUMBER,
    plus: { ...NUMBER, description: 'SI.' },
    unit: { type: 'string', description: 'SI unit of plus.' },
  },
  ['figure', 'unit'],
);

const LAYOUT_SCHEMA = closed(
  Object.fromEntries(Object.entries(LAYOUT).map(([feature, values]) => [feature, { enum: values }])),
  Object.keys(LAYOUT),
);

/** An object of these fields and no others; all must be there but those that may be missing. */
function closed(properties: Json, mayMiss: readonly string[] = []): Json {
  return {
    type: 'object',
    properties,
    required: Object.keys(properties).filter((name) => !mayMiss.includes(name)),
    additionalProperties: false,
  };
}

/** A record's schema as it is after reading: defaults filled in, quantities read. */
function made(schema: z.ZodType): Json {
  const { $schema: _, ...rest } = z.toJSONSchema(schema, {
    io: 'output',
    unrepresentable: 'any',
    override: ({ jsonSchema: part }) => {
      const { becomes, dimension, references } = part as SchemaMeta;
      if (references !== undefined)
        describeToo(part, `Id of a ${KINDS[references].one}; its address stands under links.`);
      if (becomes !== undefined) {
        // What the text looked like before it was read is no longer true.
        Reflect.deleteProperty(part, 'examples');
        part.$ref = `#/$defs/${becomes}`;
      }
      if (dimension !== undefined) part.properties = { measures: { const: dimension } };
      dropOwnWords(part);
    },
  });
  return rest;
}

/** The schema without what refuses names it does not know. */
function opened(schema: unknown): unknown {
  if (Array.isArray(schema)) return schema.map(opened);
  if (typeof schema !== 'object' || schema === null) return schema;
  return Object.fromEntries(
    Object.entries(schema)
      .filter(([key, value]) => !(key === 'additionalProperties' && value === false))
      .map(([key, value]) => [key, opened(value)]),
  );
}
