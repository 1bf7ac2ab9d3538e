/** What does not fit the schema, sorted into faults that have a name. The words are chosen by the rules. */
import type { $ZodIssue, $ZodType } from 'zod/v4/core';
import { ID_FORM } from '../model/scalars.ts';
import type { Path } from './finding.ts';
import { nearestOf } from './nearest.ts';
import { bare, fieldNames, isPlainObject, metaOf, schemaAt, valueAt } from './schema-tree.ts';
import { isLeftToWrite } from './skeleton-mark.ts';
import { wantedBy } from './wanted-by.ts';

export type FieldFault =
  | { is: 'missing'; path: Path; field: string }
  | { is: 'unknown'; path: Path; field: string; known: string[] }
  /** A field that is not known beside one that is missing: one slip. */
  | { is: 'misspelt'; path: Path; field: string; meant: string }
  | { is: 'empty'; path: Path }
  /** A text that was cut into name and value by its own colon. */
  | { is: 'colon'; path: Path; text: string }
  | { is: 'type'; path: Path; wanted: string }
  | { is: 'word'; path: Path; words: string[] }
  | { is: 'id'; path: Path; on: 'key' | 'value' }
  /** A fault the schema itself has given a rule: quantities, dates. */
  | { is: 'ruled'; path: Path; rule: string; found: string; expected?: string }
  | { is: 'unfit'; path: Path; found: string }
  /** What a new record marks as still to write, where nothing but a choice or a form of its own fits. */
  | { is: 'open'; path: Path; words: string[]; says: string };

/** Faults of one record that are sorted: each is held against all others, and nobody reads the rest. */
const MOST_FAULTS = 300;

/** @param data what was read from the file, before the schema changed anything */
export function fieldFaults(schema: $ZodType, data: unknown, issues: readonly $ZodIssue[]): FieldFault[] {
  const faults = issues.slice(0, MOST_FAULTS).flatMap((issue) => faultsOf(schema, data, issue, []));
  return pairMisspelt(withoutEchoes(faults));
}

function faultsOf(schema: $ZodType, data: unknown, issue: $ZodIssue, above: Path): FieldFault[] {
  const path: Path = [...above, ...(issue.path as (string | number)[])];
  const value = valueAt(data, path);
  const at = schemaAt(schema, path, data);
  const ownWords = issue.message;
  if (isLeftToWrite(value))
    return [
      {
        is: 'open',
        path,
        words: issue.code === 'invalid_value' ? issue.values.map(String) : [],
        says: issue.code === 'invalid_union' ? `It takes ${wantedBy(at)}.` : ownWords,
      },
    ];
  if (issue.code === 'unrecognized_keys') {
    const known = fieldNames(at);
    return issue.keys.slice(0, MOST_FAULTS).map((field) => ({ is: 'unknown', path, field, known }));
  }
  if (issue.code === 'invalid_key') return [{ is: 'id', path, on: 'key' }];
  if (issue.code === 'custom') {
    const { rule, expected } = issue.params ?? {};
    if (typeof rule === 'string')
      return [
        {
          is: 'ruled',
          path,
          rule,
          found: ownWords,
          ...(typeof expected === 'string' && { expected }),
        },
      ];
    return [{ is: 'unfit', path, found: ownWords }];
  }
  if (value === undefined) return [{ is: 'missing', path: path.slice(0, -1), field: String(path.at(-1)) }];
  if (value === null) return [{ is: 'empty', path }];
  const cutText = textCutByColon(value);
  if (cutText !== undefined && at && takesText(at)) return [{ is: 'colon', path, text: cutText }];
  switch (issue.code) {
    case 'invalid_union':
      return unionFaults(schema, data, path, issue.errors);
    case 'invalid_value':
      if (typeof value !== 'string') return [{ is: 'type', path, wanted: wantedBy(at) }];
      return [{ is: 'word', path, words: issue.values.map(String) }];
    case 'invalid_type': {
      const missingUnit = typeof value === 'number' && at ? metaOf(at).examples?.[0] : undefined;
      if (typeof missingUnit === 'string')
        return [
          {
            is: 'ruled',
            path,
            rule: 'wrong-unit',
            found: `"${value}" has no unit.`,
            expected: `the unit behind it, such as ${missingUnit}`,
          },
        ];
      return [{ is: 'type', path, wanted: wantedBy(at) }];
    }
    case 'invalid_format':
      if (issue.pattern === String(ID_FORM)) return [{ is: 'id', path, on: 'value' }];
      if (issue.format === 'url')
        return [{ is: 'unfit', path, found: 'This is not an address that starts with https://.' }];
      return [{ is: 'unfit', path, found: ownWords }];
    case 'too_small':
    case 'too_big':
      return [{ is: 'unfit', path, found: sizeSentence(issue, value) }];
    default:
      return [{ is: 'unfit', path, found: ownWords }];
  }
}

type SizeIssue = Extract<$ZodIssue, { code: 'too_small' | 'too_big' }>;

function sizeSentence(issue: SizeIssue, value: unknown): string {
  // Sentences of the model start with a capital and do not speak of input: they are kept.
  if (!/^Too (small|big)/.test(issue.message)) return issue.message;
  const small = issue.code === 'too_small';
  const limit = Number(small ? issue.minimum : issue.maximum);
  if (Array.isArray(value)) {
    const has = `This list has ${value.length} ${value.length === 1 ? 'entry' : 'entries'}`;
    return `${has}; it takes ${limit} or ${small ? 'more' : 'fewer'}.`;
  }
  const bound = issue.inclusive === false ? (small ? 'above' : 'below') : small ? 'at least' : 'at most';
  return `${JSON.stringify(value)} is too ${small ? 'small' : 'large'}; it is ${bound} ${limit}.`;
}

/** Where a value can be of several shapes: the faults of the shape that was meant. */
function unionFaults(
  schema: $ZodType,
  data: unknown,
  path: Path,
  errors: readonly (readonly $ZodIssue[])[],
): FieldFault[] {
  const value = valueAt(data, path);
  const options = errors
    .filter((issues) => !issues.some((issue) => issue.path.length === 0 && missesType(issue, value)))
    .map((issues) => pairMisspelt(issues.flatMap((issue) => faultsOf(schema, data, issue, path))))
    .sort((a, b) => weight(a) - weight(b));
  const [best] = options;
  if (best) return best;
  return [{ is: 'type', path, wanted: wantedBy(schemaAt(schema, path, data)) }];
}

/** Whether an option of a union is out because the value is of another type altogether. */
function missesType(issue: $ZodIssue, value: unknown): boolean {
  if (issue.code === 'invalid_type') return true;
  if (issue.code === 'invalid_union')
    return issue.errors.every((option) =>
      option.some((each) => each.path.length === 0 && missesType(each, value)),
    );
  return issue.code === 'invalid_value' && typeof issue.values[0] !== typeof value;
}

/** The option with the fewest faults was meant; a slip of the pen counts less than a fault. */
function weight(faults: readonly FieldFault[]): number {
  return faults.reduce((sum, fault) => sum + (fault.is === 'misspelt' ? 0.5 : 1), 0);
}

/** A field that is unknown beside one that is missing, and near it, is one slip. */
function pairMisspelt(faults: readonly FieldFault[]): FieldFault[] {
  const rest = [...faults];
  for (const fault of faults) {
    if (fault.is !== 'unknown') continue;
    const missing = rest.filter(
      (each) => each.is === 'missing' && each.path.join('\n') === fault.path.join('\n'),
    );
    const names = missing.flatMap((each) => (each.is === 'missing' ? [each.field] : []));
    const meant = nearestOf(fault.field, names)?.word;
    if (meant === undefined) continue;
    rest.splice(rest.indexOf(fault), 1, {
      is: 'misspelt',
      path: fault.path,
      field: fault.field,
      meant,
    });
    const taken = missing.find((each) => each.is === 'missing' && each.field === meant);
    if (taken) rest.splice(rest.indexOf(taken), 1);
  }
  return rest;
}

/** A value that is faulty as a whole is reported once, not once for each of its checks. */
function withoutEchoes(faults: readonly FieldFault[]): FieldFault[] {
  const seen = new Set<string>();
  return faults.filter((fault) => {
    if (fault.is === 'missing' || fault.is === 'unknown') return true;
    const key = fault.path.join('\n');
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

function takesText(schema: $ZodType): boolean {
  const { def } = bare(schema)._zod;
  if (def.type === 'union') return def.options.some((option) => takesText(option));
  return def.type === 'string';
}

/** The text `Low coolant: no flow` read as a name and a value; undefined when it is no such thing. */
function textCutByColon(value: unknown): string | undefined {
  if (!isPlainObject(value)) return undefined;
  const [[key, rest] = [], ...more] = Object.entries(value);
  if (key === undefined || more.length > 0 || typeof rest !== 'string') return undefined;
  return key.includes(' ') ? `${key}: ${rest}` : undefined;
}
