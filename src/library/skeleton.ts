/**
 * A new record as a file: every field with what it is for, filled so that it is valid before a word is changed. Only a vehicle
 * is not: what it is like nobody can know but who has looked, so a choice that was not made stands there as still to write.
 */
import { stringify } from 'yaml';
import type { $ZodType } from 'zod/v4/core';
import { FIGURE_PATHS, FIGURES, figureFits, JOINT_NAMES, JOINTS } from '../model/figures.ts';
import { KINDS, type Kind } from '../model/kinds.ts';
import { type KnownLayout, LAYOUT, LEAVABLE_FEATURES } from '../model/layout.ts';
import { layoutQuestion } from '../model/layout-questions.ts';
import { SCHEMAS } from '../model/schemas.ts';
import { isOptional, takes } from './field-tables.ts';
import { schemaPath } from './schema-files.ts';
import { bare, isPlainObject, metaOf } from './schema-tree.ts';
import { isLeftToWrite, TO_WRITE } from './skeleton-mark.ts';

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
  const may = isOptional(field);
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
  const lines = [...comment, ...unclosed(name, written(name, filled(field, name, value, options)))];
  const layout = knownLayout(options.values.layout);
  if (name === 'layout') lines.push(...layoutHelp(layout));
  const said = isPlainObject(value) ? value : {};
  if (name === 'figures') lines.push(...figureHelp(layout, said));
  if (name === 'torques') lines.push(...jointHelp(layout, said));
  return lines;
}

/** Open at the end where entries are to be uncommented below. */
function unclosed(name: string, lines: string[]): string[] {
  return name === 'figures' || name === 'torques' ? lines.map((line) => line.replace(/ \{\}$/, '')) : lines;
}

/** The value, and where only some of its fields are known a sample for the others. */
function filled(field: $ZodType, name: string, value: unknown, options: SkeletonOptions): unknown {
  if (value === undefined) return sampleOf(field, name, options);
  if (!isPlainObject(value) || bare(field)._zod.def.type !== 'object') return value;
  const sample = sampleOf(field, name, options);
  return isPlainObject(sample) ? { ...sample, ...value } : value;
}

function knownLayout(layout: unknown): KnownLayout {
  if (!isPlainObject(layout)) return {};
  return Object.fromEntries(
    Object.entries(layout).filter(([, value]) => typeof value === 'string' && !isLeftToWrite(value)),
  );
}

function written(name: string, value: unknown): string[] {
  return stringify({ [name]: value }, { lineWidth: WIDTH })
    .trimEnd()
    .split('\n');
}

/** Points of the layout that may be left out, to be uncommented. */
function layoutHelp(layout: KnownLayout): string[] {
  return LEAVABLE_FEATURES.filter((feature) => layout[feature] === undefined).map(
    (feature) => `#   ${feature}: ${LAYOUT[feature].join(' | ')}  # ${layoutQuestion(feature).asks}`,
  );
}

/** How a figure is written, once above the list of them; nothing is filled in that only the source can say. */
const WRITTEN_SO = 'Take the mark away, fill in what the source says, and leave the other lines as they are:';

/** Every other figure that a vehicle of this layout can have, to be uncommented. */
function figureHelp(layout: KnownLayout, said: object): string[] {
  const fits = FIGURE_PATHS.filter((path) => figureFits(path, layout) && !(path in said));
  return [
    `#   ${WRITTEN_SO}`,
    '#   thermostat.opens: { is: 88 °C, from: manual, page: 12, checked: 2026-11-30, sure: read off the source }',
    ...fits.map(
      (path) =>
        `#   ${path}: { is: , from: , page: , checked: , sure: }  # ${FIGURES[path].label}; usually ${FIGURES[path].general}`,
    ),
  ];
}

/** Every other joint that a vehicle of this layout can have, to be uncommented. */
function jointHelp(layout: KnownLayout, said: object): string[] {
  const fits = JOINT_NAMES.filter((joint) => figureFits(`torque.${joint}`, layout) && !(joint in said));
  return [
    `#   ${WRITTEN_SO}`,
    '#   water-pump: { is: 10 N·m, bolt: M6, class: 8.8, into: aluminium, from: manual, page: 14, checked: 2026-11-30, sure: read off the source }',
    ...fits.map(
      (joint) =>
        `#   ${joint}: { is: , bolt: , class: , into: , from: , page: , checked: , sure: }  # ${JOINTS[joint].label}; often ${JOINTS[joint].bolt}, ${JOINTS[joint].usual}`,
    ),
  ];
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
      return options.kind === 'vehicle' ? TO_WRITE : Object.values(def.entries)[0];
    case 'array': {
      const least = leastOf(field);
      return Array.from({ length: least }, (_, at) => numbered(sampleOf(def.element, name, options), at));
    }
    case 'object':
      return Object.fromEntries(
        Object.entries(def.shape)
          .filter(([, inner]) => !isOptional(inner))
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
  years: 'To write',
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
