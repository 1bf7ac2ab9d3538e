/** Files in, shelf and findings out: everything but the disk. */
import { addedCounts, type Counts, countsSchema, NO_COUNTS } from '../model/counts.ts';
import { KIND_NAMES, type Kind } from '../model/kinds.ts';
import { type Learning, learningSchema, NO_LEARNING } from '../model/learning.ts';
import { movedSchema } from '../model/record.ts';
import { type RecordOf, SCHEMAS } from '../model/schemas.ts';
import { type Shop, shopSchema } from '../model/shop.ts';
import { NO_WORDS, type Words, wordsSchema } from '../model/words.ts';
import type { Draft, DraftShelf } from './draft.ts';
import { fieldFaults } from './field-fault.ts';
import { type Finding, inOrder } from './finding.ts';
import { type Memory, NO_MEMORY } from './memory.ts';
import { inOrdinarySpelling } from './ordinary-spelling.ts';
import { readText, scalarsOf } from './read-text.ts';
import type { Rule } from './rule.ts';
import { RULES } from './rules/index.ts';
import { RuleRun } from './run.ts';
import { isPlainObject, referencesIn } from './schema-tree.ts';
import { type Entry, emptyRecords, type Records, type Shelf } from './shelf.ts';
import { type RawFile, type SourceFile, sourceFile } from './source-file.ts';
import { textsIn } from './strings.ts';

export interface CheckResult {
  shelf: Shelf;
  findings: Finding[];
  /** Record files looked at. */
  count: number;
  /** Texts by file, as read: what mends are made on. */
  texts: ReadonlyMap<string, string>;
}

/**
 * Reads and checks a whole shelf. All findings of all files come at once; a rule that breaks becomes a finding.
 * @param shelfName how the shelf's folder is shown to people, such as content
 * @param raw files of the shelf, in any order
 */
export function checkFiles(
  shelfName: string,
  raw: readonly RawFile[],
  { rules = RULES, memory = NO_MEMORY }: { rules?: readonly Rule[]; memory?: Memory } = {},
): CheckResult {
  const files = new Map<string, SourceFile>();
  for (const each of [...raw].sort((a, b) => (a.path < b.path ? -1 : 1))) {
    const source = sourceFile(shelfName, each);
    files.set(source.file, source);
  }
  const run = new RuleRun(files, rules);
  const shopFile = inShelf(shelfName, 'shop.yaml');
  const draft = draftShelf(run, memory, {
    shopFile,
    wordsFile: inShelf(shelfName, 'words.yaml'),
    learningFile: inShelf(shelfName, 'learning.yaml'),
  });
  const onShelf = run.rulesOn('shelf');
  for (const level of ['error', 'warning'] as const) {
    // A warning is only worth reading on a shelf without errors: what is broken or missing is the likelier reason.
    if (level === 'warning' && run.findings.some((finding) => finding.level === 'error')) break;
    for (const rule of onShelf.filter((each) => each.level === level))
      run.apply(rule, () => rule.check(draft), shopFile);
  }
  const shelf: Shelf = {
    shop: draft.shop ?? NO_SHOP,
    words: draft.words,
    learning: draft.learning,
    counts: draft.counts,
    records: draft.records,
    moved: draft.moved.map(({ kind, id, to }) => ({ kind, id, to })),
    guides: [...draft.guides],
  };
  const count = [...files.values()].filter(
    ({ role }) => role.is !== 'guide' && role.is !== 'unexpected',
  ).length;
  const texts = new Map([...files].map(([file, { text }]) => [file, text]));
  return { shelf, findings: inOrder(run.findings), count, texts };
}

function inShelf(shelfName: string, file: string): string {
  return shelfName === '' ? file : `${shelfName}/${file}`;
}

const ALL_SCHEMAS = {
  ...SCHEMAS,
  shop: shopSchema,
  words: wordsSchema,
  learning: learningSchema,
  counts: countsSchema,
};

/** Stands in while content/shop.yaml cannot be read; a finding then says so. */
const NO_SHOP: Shop = {
  name: '',
  invented: true,
  units: 'metric',
  currency: 'EUR',
  'labour-rate': 1,
  'review-every': 12,
  'sheet-footer': '',
};

function draftShelf(
  run: RuleRun,
  memory: Memory,
  own: Pick<DraftShelf, 'shopFile' | 'wordsFile' | 'learningFile'>,
): DraftShelf {
  const records = emptyRecords();
  const ids = Object.fromEntries(KIND_NAMES.map((kind) => [kind, new Set<string>()])) as {
    [K in Kind]: Set<string>;
  };
  const drafts: Draft[] = [];
  const moved: { kind: Kind; id: string; to: string; file: string }[] = [];
  const guides: string[] = [];
  let shop: Shop | undefined;
  let words = NO_WORDS;
  let learning = NO_LEARNING;
  let counts = NO_COUNTS;
  for (const source of run.files.values()) {
    const { role, file } = source;
    if (role.is === 'record') ids[role.kind].add(role.id);
    if (role.is === 'guide') guides.push(role.id);
    const ended = endsAtFile(run, source);
    if (role.is === 'guide' || role.is === 'unexpected') continue;
    const read = ended ? undefined : readSoundly(run, source, memory);
    if (!read) continue;
    const kind = role.is === 'record' ? role.kind : role.is;
    const id = role.is === 'record' ? role.id : role.is === 'counts' ? role.year : role.is;
    const hasMoved = role.is === 'record' && isPlainObject(read.value) && 'moved-to' in read.value;
    const schema = hasMoved ? movedSchema : ALL_SCHEMAS[kind];
    const { value, respelled } = inOrdinarySpelling(schema, read.value, scalarsOf(source));
    const parsed = schema.safeParse(value);
    const draft: Draft = {
      kind,
      id,
      file,
      raw: value,
      schema,
      faults: parsed.success ? [] : fieldFaults(schema, value, parsed.error.issues),
      respelled,
      references: referencesIn(schema, value),
      texts: textsIn(value),
    };
    drafts.push(draft);
    for (const rule of run.rulesOn('record')) run.apply(rule, () => rule.check(draft), file);
    if (!parsed.success) continue;
    if (kind === 'shop') shop = parsed.data as Shop;
    else if (kind === 'words') words = parsed.data as Words;
    else if (kind === 'learning') learning = parsed.data as Learning;
    else if (kind === 'counts') counts = addedCounts(counts, parsed.data as Counts);
    else if (hasMoved) {
      const to = (parsed.data as { 'moved-to': string })['moved-to'];
      moved.push({ kind, id, to, file });
      ids[kind].delete(id);
      draft.references = [{ to: kind, id: to, path: ['moved-to'], on: 'value' }];
    } else put(records, kind, id, file, parsed.data);
  }
  const { files, faulty } = run;
  return {
    files,
    drafts,
    records,
    moved,
    guides,
    ids,
    faulty,
    memory,
    words,
    learning,
    counts,
    ...own,
    ...(shop && { shop }),
  };
}

/** @returns whether a fault was found after which nothing more can be said about the file */
function endsAtFile(run: RuleRun, source: SourceFile): boolean {
  return run
    .rulesOn('file')
    .some((rule) => run.apply(rule, () => rule.check(source), source.file) > 0 && rule.ends === true);
}

/** What stands in a file, as plain data; undefined when nothing more can be said about it. */
function readSoundly(run: RuleRun, source: SourceFile, memory: Memory): { value: unknown } | undefined {
  const known = memory.recall(source.text);
  if (known !== undefined) return { value: known };
  const read = readText(source);
  let faults = 0;
  for (const rule of run.rulesOn('text')) {
    const count = run.apply(rule, () => rule.check(read), source.file);
    if (count > 0 && rule.ends) return undefined;
    faults += count;
  }
  // A rule that broke may have let an error through; what YAML could not read is not looked at further.
  if (read.errors.length > 0) return undefined;
  const value: unknown = read.document.toJS();
  // Only a text without faults is remembered: the faults are found anew each time. JSON has no infinity.
  if (faults === 0 && !/\.(?:inf|nan)/i.test(source.text)) memory.remember(source.text, value);
  return { value };
}

function put<K extends Kind>(records: Records, kind: K, id: string, file: string, data: unknown): void {
  const shelfOfKind: Map<string, Entry<K>> = records[kind];
  // The first file of an id stays; the other is reported.
  if (!shelfOfKind.has(id)) shelfOfKind.set(id, { kind, id, file, data: data as RecordOf<K> });
}
