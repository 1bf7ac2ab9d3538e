/**
 * Reads ordinary spellings as what they mean before a record is held against its schema: a page number that YAML takes for a
 * number, a decimal comma, `50/50`, a day with points, the trade's other word. Only what can be read in one way; anything else is
 * left for the rules to speak of.
 */
import type { $ZodType } from 'zod/v4/core';
import { shelfSpelling } from '../model/quantity.ts';
import type { Dimension } from '../model/units.ts';
import { wordMeant } from '../model/word-aliases.ts';
import { writtenDay } from '../model/written-day.ts';
import type { Path } from './finding.ts';
import { bare, isPlainObject, metaOf } from './schema-tree.ts';

/** A value that was read as another. */
export interface Respelling {
  path: Path;
  written: string;
  read: string;
  /** YAML cut it into several fields at its commas: what is at the path is only the first piece. */
  isCut: boolean;
}

/** @param sourceAt a number as it stands in the file, where that is known: 12.10 is another page than 12.1 */
export function inOrdinarySpelling(
  schema: $ZodType,
  value: unknown,
  sourceAt: (path: Path) => string | undefined = () => undefined,
): { value: unknown; respelled: Respelling[] } {
  const reader = new Reader(sourceAt);
  return { value: reader.read(schema, value, []), respelled: reader.respelled };
}

class Reader {
  readonly respelled: Respelling[] = [];
  private readonly sourceAt: (path: Path) => string | undefined;

  constructor(sourceAt: (path: Path) => string | undefined) {
    this.sourceAt = sourceAt;
  }

  read(schema: $ZodType, value: unknown, path: Path): unknown {
    const { def } = bare(schema)._zod;
    if (value === null && metaOf(schema).empty === true) return {};
    if (isPlainObject(value)) {
      if (def.type === 'object') return this.fields(def.shape, value, path);
      if (def.type === 'record')
        return keptFields(value, (name, each) => this.read(def.valueType, each, [...path, name]));
    }
    if (Array.isArray(value) && def.type === 'array')
      return kept(value, (each, at) => this.read(def.element, each, [...path, at]));
    if (def.type === 'union') return this.oneOf(def.options, value, path);
    if (typeof value === 'number') return this.number(schema, value, path);
    return typeof value === 'string' ? this.text(schema, value, path) : value;
  }

  private fields(
    shape: Readonly<Record<string, $ZodType>>,
    value: Record<string, unknown>,
    path: Path,
  ): unknown {
    const whole = this.joinedAtCommas(shape, value, path);
    return keptFields(whole, (name, each) => {
      const field = Object.hasOwn(shape, name) ? shape[name] : undefined;
      return field ? this.read(field, each, [...path, name]) : each;
    });
  }

  /** `{ is: 1,4 bar }` is the fields "is" and "4 bar" to YAML, the second with nothing behind it. */
  private joinedAtCommas(
    shape: Readonly<Record<string, $ZodType>>,
    value: Record<string, unknown>,
    path: Path,
  ): Record<string, unknown> {
    const isPiece = (name: string, each: unknown) =>
      each === null && !Object.hasOwn(shape, name) && /^\d+(?:\D|$)/.test(name);
    if (!Object.entries(value).some(([name, each]) => isPiece(name, each))) return value;
    const whole: Record<string, unknown> = {};
    let open: string | undefined;
    for (const [name, each] of Object.entries(value)) {
      if (open !== undefined && isPiece(name, each)) {
        whole[open] = `${this.asWritten(whole[open], [...path, open])},${name}`;
        continue;
      }
      const field = Object.hasOwn(shape, name) ? shape[name] : undefined;
      open = field && dimensionOf(field) && /\d$/.test(String(each)) ? name : undefined;
      whole[name] = each;
    }
    return whole;
  }

  /** A word that any of the options knows; else whatever the option for this shape makes of it. */
  private oneOf(options: readonly $ZodType[], value: unknown, path: Path): unknown {
    if (typeof value === 'string') {
      const words = options.flatMap((option) => wordsOf(option) ?? []);
      return this.word(words, value, path);
    }
    if (typeof value === 'number') {
      const takesNumber = options.some((option) => bare(option)._zod.def.type === 'number');
      const text = options.find((option) => bare(option)._zod.def.type === 'string');
      return takesNumber || !text ? value : this.number(text, value, path);
    }
    if (!isPlainObject(value)) return value;
    const fits = options.find((option) => {
      const { def } = bare(option)._zod;
      return def.type === 'object' && Object.keys(value).every((name) => Object.hasOwn(def.shape, name));
    });
    return fits ? this.read(fits, value, path) : value;
  }

  private number(schema: $ZodType, value: number, path: Path): unknown {
    if (dimensionOf(schema) || !Number.isFinite(value)) return value;
    const words = wordsOf(schema);
    // How it is written is looked up only where it matters: most numbers are meant as numbers.
    if (!words && bare(schema)._zod.def.type !== 'string') return value;
    const text = this.asWritten(value, path);
    return !words || words.includes(text) ? text : value;
  }

  private text(schema: $ZodType, value: string, path: Path): unknown {
    const words = wordsOf(schema);
    if (words) return this.word(words, value, path);
    const dimension = dimensionOf(schema);
    if (dimension) {
      const read = shelfSpelling(value, dimension);
      if (read !== value.trim()) this.respell(path, value, read);
      return read === value.trim() ? value : read;
    }
    if (metaOf(schema).day !== true) return value;
    const day = writtenDay(value);
    if (!day || !('day' in day) || day.day === value) return value;
    this.respell(path, value, day.day);
    return day.day;
  }

  private word(words: readonly string[], value: string, path: Path): string {
    const meant = wordMeant(value, words);
    if (meant === undefined) return value;
    this.respell(path, value, meant);
    return meant;
  }

  private respell(path: Path, written: string, read: string): void {
    const isCut = this.sourceAt(path) !== undefined && this.sourceAt(path) !== written.trim();
    this.respelled.push({ path, written, read, isCut });
  }

  private asWritten(value: unknown, path: Path): string {
    return typeof value === 'number' ? (this.sourceAt(path) ?? String(value)) : String(value);
  }
}

/** What a text of the schema measures; undefined where it is no quantity. */
function dimensionOf(schema: $ZodType): Dimension | undefined {
  return bare(schema)._zod.def.type === 'string' ? metaOf(schema).dimension : undefined;
}

function wordsOf(schema: $ZodType): string[] | undefined {
  const { def } = bare(schema)._zod;
  return def.type === 'enum' ? Object.values(def.entries).map(String) : undefined;
}

/** The same list where nothing in it changed. */
function kept(list: unknown[], read: (each: unknown, at: number) => unknown): unknown[] {
  const after = list.map(read);
  return after.every((each, at) => each === list[at]) ? list : after;
}

function keptFields(
  fields: Record<string, unknown>,
  read: (name: string, each: unknown) => unknown,
): Record<string, unknown> {
  const after = Object.entries(fields).map(([name, each]) => [name, read(name, each)] as const);
  return after.every(([name, each]) => each === fields[name]) ? fields : Object.fromEntries(after);
}
