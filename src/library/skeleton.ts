/** A new record as a file: every field with what it is for, filled so that it is valid before a word is changed. */
import { stringify } from 'yaml';
import type { $ZodType } from 'zod/v4/core';
import { FIGURES } from '../model/figures.ts';
import { KINDS, type Kind } from '../model/kinds.ts';
import { SCHEMAS } from '../model/schemas.ts';
import { mayBeLeftOut, takes } from './field-tables.ts';
import { schemaPath } from './schema-files.ts';
import { bare, metaOf } from './schema-tree.ts';
import { TO_WRITE } from './skeleton-mark.ts';

/** Longest line of help. */
const WIDTH = 108;

export interface SkeletonOptions {
  kind: Kind;
  /** Values known already, by field, as plain data. */
  values: Readonly<Record<string, unknown>>;
  /** An id of the shelf to stand for now where one is needed; undefined when the shelf has none. */
  anyId(kind: Kind): string | undefined;
  /** A day as 2026-11-25. */
  today: string;
}

/**
 * The text of a new record.
 * @throws Error with what to make first, when a field needs a record of a kind the shelf does not have yet
 */
export function skeleton(options: SkeletonOptions): string {
  const { kind } = options;
  const depth = kind === 'note' ? '../../../' : '../../';
  const lines = [
    `# yaml-language-server: $schema=${depth}${schemaPath(kind)}`,
    `# A new ${KINDS[kind].one}. Lines that start with # are help: take them out as you go.`,
    '# "To write" marks what is only there so that the record is whole. Then: npm run check',
    '',
  ];
  const values = { ...PRESETS[kind]?.(options), ...options.values };
  for (const [name, field] of fieldsOf(SCHEMAS[kind])) {
    lines.push(...fieldLines(name, field, values[name], options));
  }
  return `${lines.join('\n')}\n`;
}

/** Fields of a record by name, in the order they stand in a file. */
export function fieldsOf(schema: $ZodType): [string, $ZodType][] {
  const { def } = bare(schema)._zod;
  return def.type === 'object' ? Object.entries(def.shape) : [];
}

function fieldLines(name: string, field: $ZodType, value: unknown, options: SkeletonOptions): string[] {
  const may = mayBeLeftOut(field);
  const { description } = metaOf(field);
  const help = [
    ...(may ? ['May be left out.'] : []),
    ...(description ? [description] : []),
    `Takes ${takes(field)}.`,
  ];
  const comment = wrapped(help.join(' '));
  if (may && value === undefined) {
    const sample = name === 'figures' ? undefined : sampleOf(field, name, options);
    return [...comment, ...written(name, sample).map((line) => `# ${line}`)];
  }
  const lines = [...comment, ...written(name, value ?? sampleOf(field, name, options))];
  if (name === 'figures') lines.push(...figureHelp());
  return lines;
}

function written(name: string, value: unknown): string[] {
  return stringify({ [name]: value }, { lineWidth: WIDTH })
    .trimEnd()
    .split('\n');
}

/** Every figure a vehicle can have, to be uncommented. */
function figureHelp(): string[] {
  return Object.entries(FIGURES).map(
    ([path, { label, general }]) =>
      `#   ${path}: { is: , from: manual, page: , checked: , sure: read off the source }  # ${label}; usually ${general}`,
  );
}

/** Something that fits a field and says that it has yet to be written. */
export function sampleOf(field: $ZodType, name: string, options: SkeletonOptions): unknown {
  const { references, examples, description } = metaOf(field);
  if (references) return idFor(references, options);
  if (examples?.[0] !== undefined) return examples[0];
  const { def } = bare(field)._zod;
  switch (def.type) {
    case 'string':
      return sampleText(field, name, description, options.today);
    case 'number':
      return 10;
    case 'boolean':
      return false;
    case 'enum':
      return Object.values(def.entries)[0];
    case 'array': {
      const least = leastOf(field);
      return Array.from({ length: least }, (_, at) => numbered(sampleOf(def.element, name, options), at));
    }
    case 'object':
      return Object.fromEntries(
        Object.entries(def.shape)
          .filter(([, inner]) => !mayBeLeftOut(inner))
          .map(([key, inner]) => [key, sampleOf(inner, key, options)]),
      );
    case 'union': {
      const [first] = def.options;
      return first ? sampleOf(first, name, options) : undefined;
    }
    default:
      return {};
  }
}

function idFor(kind: Kind, { anyId }: SkeletonOptions): string {
  const id = anyId(kind);
  if (id === undefined)
    throw new Error(`This needs a ${KINDS[kind].one} and the shelf has none yet. First: npm run new ${kind}`);
  return id;
}

function sampleText(field: $ZodType, name: string, description: string | undefined, today: string): string {
  if (bare(field)._zod.def.type === 'string' && SHORT[name] !== undefined) return SHORT[name];
  if (name === 'date' || name === 'reviewed' || name === 'checked') return today;
  return `${TO_WRITE}: ${(description ?? name).replace(/\.$/, '').slice(0, 100)}`;
}

/** Fields with a form of their own. */
const SHORT: Record<string, string> = {
  by: 'AB',
  'reviewed-by': 'AB',
  years: '2020-2024',
  maker: 'To write',
  model: 'To write',
  outcome: 'to-write',
};

/** How many entries a list must have. */
function leastOf(field: $ZodType): number {
  for (const { _zod } of bare(field)._zod.def.checks ?? []) {
    if ('minimum' in _zod.def && typeof _zod.def.minimum === 'number') return _zod.def.minimum;
  }
  return 0;
}

/** Entries of one list differ, so that none reads as a slip of the first. */
function numbered(value: unknown, at: number): unknown {
  return typeof value === 'string' && value.startsWith(TO_WRITE) && at > 0 ? `${value} (${at + 1})` : value;
}

type Presets = (options: SkeletonOptions) => Record<string, unknown>;

/** Fields that hang together: what a single field cannot know. */
const PRESETS: Partial<Record<Kind, Presets>> = {
  symptom: (options) => ({
    causes: { [idFor('cause', options)]: 'commonest' },
    'pass-on': 90,
  }),
  cause: () => ({
    confirm: { recheck: 'To write: what shows after the repair that this was it', minutes: 30 },
  }),
  test: (options) => ({
    outcomes: {
      seen: { reading: 'To write: what is read, with the figure that separates it', label: 'To write: seen' },
      'not-seen': { reading: 'To write: what is read otherwise', label: 'To write: not seen' },
    },
    evidence: { [idFor('cause', options)]: { seen: 'usually' } },
    otherwise: { seen: 'seldom' },
  }),
  vehicle: () => ({ figures: {}, torques: {}, loops: {}, 'look-ups': {}, plugs: {}, 'loop-notes': [] }),
  note: (options) => ({ vehicle: options.anyId('vehicle'), status: 'proposed' }),
};

function wrapped(text: string): string[] {
  const lines: string[] = [];
  let line = '#';
  for (const word of text.split(/\s+/)) {
    if (line.length + word.length + 1 > WIDTH) {
      lines.push(line);
      line = '#';
    }
    line += ` ${word}`;
  }
  return [...lines, line];
}
