/** The shelf while it is being checked: every file that could be read, right or not. */
import type { $ZodType } from 'zod/v4/core';
import type { Counts } from '../model/counts.ts';
import { KIND_NAMES, type Kind } from '../model/kinds.ts';
import type { Learning } from '../model/learning.ts';
import type { Shop } from '../model/shop.ts';
import type { Words } from '../model/words.ts';
import type { FieldFault } from './field-fault.ts';
import type { Memory } from './memory.ts';
import type { Respelling } from './ordinary-spelling.ts';
import type { FoundReference } from './schema-tree.ts';
import type { Entry, Records, Shelf } from './shelf.ts';
import type { SourceFile } from './source-file.ts';
import type { FoundText } from './strings.ts';

/** One record file that YAML could read. */
export interface Draft {
  /** `shop`, `words`, `learning` and `counts` for the files of these names, which are no records but are checked like them. */
  kind: Kind | 'shop' | 'words' | 'learning' | 'counts';
  id: string;
  file: string;
  /** What stands in the file, in the shelf's spelling, before the schema. */
  raw: unknown;
  /** The schema it was held against. */
  schema: $ZodType;
  faults: FieldFault[];
  /** Values of `raw` that stand in the file in another spelling. */
  respelled: readonly Respelling[];
  references: FoundReference[];
  /** Every text of the record, whatever its field. */
  texts: readonly FoundText[];
}

export interface DraftShelf {
  files: ReadonlyMap<string, SourceFile>;
  drafts: readonly Draft[];
  /** Records that fit their schema. */
  records: Records;
  shop?: Shop;
  words: Words;
  learning: Learning;
  /** Of all years together. */
  counts: Counts;
  /** Where the workshop's own file stands or would stand. */
  shopFile: string;
  /** The same of the search's words. */
  wordsFile: string;
  /** The same of what is for learning. */
  learningFile: string;
  moved: readonly (Shelf['moved'][number] & { file: string })[];
  guides: readonly string[];
  /** Every id that has a file, whether the file is right or not. */
  ids: { readonly [K in Kind]: ReadonlySet<string> };
  /** For answers that take long to work out. */
  memory: Memory;
  /** Files that an error has been found in so far; rules run in the order of their list. */
  faulty: ReadonlySet<string>;
}

/** All records of all kinds that fit their schema. */
export function entriesOf(records: Records): Entry<Kind>[] {
  return KIND_NAMES.flatMap((kind) => [...records[kind].values()] as Entry<Kind>[]);
}
