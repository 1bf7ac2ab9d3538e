/** What a schema says about the parts of a record, for messages and for finding references. */
import { z } from 'zod';
import type { $ZodType, $ZodTypes } from 'zod/v4/core';
import type { Kind } from '../model/kinds.ts';
import type { SchemaMeta } from '../model/scalars.ts';
import type { Path } from './finding.ts';

/** The schema without what only says that a value may be left out or is changed after reading. */
export function bare(schema: $ZodType): $ZodTypes {
  const { def } = (schema as $ZodTypes)._zod;
  switch (def.type) {
    case 'optional':
    case 'default':
    case 'nullable':
    case 'readonly':
      return bare(def.innerType);
    case 'pipe':
      return bare(def.in);
    default:
      return schema as $ZodTypes;
  }
}

/** What the model says about a schema. */
export interface SchemaNotes extends SchemaMeta {
  description?: string | undefined;
  examples?: unknown[] | undefined;
}

/** What the model says about a schema and those inside it, the outermost word first. */
export function metaOf(schema: $ZodType): SchemaNotes {
  const known = notes.get(schema) ?? notesOf(schema);
  notes.set(schema, known);
  return known;
}

/** A schema does not change, and is asked for at every value it is held against. */
const notes = new WeakMap<$ZodType, SchemaNotes>();

function notesOf(schema: $ZodType): SchemaNotes {
  const own = z.globalRegistry.get(schema) ?? {};
  const { def } = (schema as $ZodTypes)._zod;
  const inner = 'innerType' in def ? metaOf(def.innerType as $ZodType) : {};
  return { ...inner, ...own };
}

/** The schema at a path; where a value can be of several shapes, the one that the data has. */
export function schemaAt(schema: $ZodType, path: Path, data: unknown): $ZodType | undefined {
  const [part, ...rest] = path;
  if (part === undefined) return schema;
  const { def } = bare(schema)._zod;
  const inner = valueAt(data, [part]);
  if (def.type === 'object') {
    const field = def.shape[String(part)];
    return field && schemaAt(field, rest, inner);
  }
  if (def.type === 'array') return schemaAt(def.element, rest, inner);
  if (def.type === 'record') return schemaAt(def.valueType, rest, inner);
  if (def.type === 'union') {
    for (const option of def.options) {
      const found = schemaAt(option, path, data);
      if (found) return found;
    }
  }
  return undefined;
}

/** The value at a path of plain data. */
export function valueAt(data: unknown, path: Path): unknown {
  let value = data;
  for (const part of path) {
    if (typeof value !== 'object' || value === null) return undefined;
    value = (value as Record<string | number, unknown>)[part];
  }
  return value;
}

/** Names of the fields of an object schema, or of a list of words used as names. */
export function fieldNames(schema: $ZodType | undefined): string[] {
  if (!schema) return [];
  const { def } = bare(schema)._zod;
  if (def.type === 'object') return Object.keys(def.shape);
  if (def.type === 'union') return [...new Set(def.options.flatMap((option) => fieldNames(option)))];
  if (def.type !== 'record') return [];
  const key = bare(def.keyType)._zod.def;
  return key.type === 'enum' ? Object.keys(key.entries) : [];
}

/** A reference found in a record. */
export interface FoundReference {
  to: Kind;
  id: string;
  path: Path;
  /** The id is the name of a field rather than its value. */
  on: 'key' | 'value';
}

/** Finds references in data that need not be right yet. */
type Finder = (value: unknown, path: Path, found: FoundReference[]) => void;

const finders = new WeakMap<$ZodType, Finder | 'none'>();

/** All references of a record, in the order of its text. */
export function referencesIn(schema: $ZodType, data: unknown): FoundReference[] {
  const found: FoundReference[] = [];
  finderFor(schema)?.(data, [], found);
  return found;
}

function finderFor(schema: $ZodType): Finder | undefined {
  const known = finders.get(schema);
  if (known) return known === 'none' ? undefined : known;
  const made = makeFinder(schema);
  finders.set(schema, made ?? 'none');
  return made;
}

function makeFinder(schema: $ZodType): Finder | undefined {
  const to = metaOf(schema).references;
  const { def } = bare(schema)._zod;
  if (to !== undefined)
    return (value, path, found) => {
      if (typeof value === 'string') found.push({ to, id: value, path, on: 'value' });
    };
  if (def.type === 'object') return objectFinder(def.shape);
  if (def.type === 'array') {
    const item = finderFor(def.element);
    return (
      item &&
      ((value, path, found) => {
        if (!Array.isArray(value)) return;
        for (const [at, each] of value.entries()) item(each, [...path, at], found);
      })
    );
  }
  if (def.type === 'record') return recordFinder(metaOf(def.keyType).references, finderFor(def.valueType));
  if (def.type === 'union') {
    const options = def.options.map((option) => finderFor(option)).filter((each) => each !== undefined);
    if (options.length === 0) return undefined;
    return (value, path, found) => {
      for (const option of options) option(value, path, found);
    };
  }
  return undefined;
}

function objectFinder(shape: Readonly<Record<string, $ZodType>>): Finder | undefined {
  const fields = Object.entries(shape).flatMap(([name, field]) => {
    const finder = finderFor(field);
    return finder ? [{ name, finder }] : [];
  });
  if (fields.length === 0) return undefined;
  return (value, path, found) => {
    if (!isPlainObject(value)) return;
    for (const { name, finder } of fields)
      if (value[name] !== undefined) finder(value[name], [...path, name], found);
  };
}

function recordFinder(keys: Kind | undefined, values: Finder | undefined): Finder | undefined {
  if (!keys && !values) return undefined;
  return (value, path, found) => {
    if (!isPlainObject(value)) return;
    for (const [key, each] of Object.entries(value)) {
      if (keys) found.push({ to: keys, id: key, path: [...path, key], on: 'key' });
      values?.(each, [...path, key], found);
    }
  };
}

/** Whether it has fields: neither a list nor nothing. */
export function isPlainObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
