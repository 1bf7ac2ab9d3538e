/** The knowledge base, read and checked. */
import type { Counts } from '../model/counts.ts';
import type { Kind } from '../model/kinds.ts';
import type { Learning } from '../model/learning.ts';
import type { RecordOf } from '../model/schemas.ts';
import type { Shop } from '../model/shop.ts';
import type { Words } from '../model/words.ts';

export interface Entry<K extends Kind> {
  kind: K;
  id: string;
  /** As a person would open it: content/tests/x.yaml. */
  file: string;
  data: RecordOf<K>;
}

export type Records = { [K in Kind]: Map<string, Entry<K>> };

export interface Shelf {
  shop: Shop;
  /** What the search knows of language. */
  words: Words;
  /** The order of the guides, and the words of the trade. */
  learning: Learning;
  records: Records;
  /** What finished jobs came to, of all years together. */
  counts: Counts;
  /** Records that were renamed or merged: their address redirects. */
  moved: { kind: Kind; id: string; to: string }[];
  /** Ids of the guides in content/guides/. */
  guides: string[];
}

/** A shelf of no records, with a place for every kind. */
export function emptyRecords(): Records {
  return {
    symptom: new Map(),
    cause: new Map(),
    test: new Map(),
    tree: new Map(),
    procedure: new Map(),
    tool: new Map(),
    code: new Map(),
    coolant: new Map(),
    caution: new Map(),
    vehicle: new Map(),
    note: new Map(),
    case: new Map(),
  };
}
