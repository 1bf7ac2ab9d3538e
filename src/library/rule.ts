/** A rule of the shelf: one file in rules/, one faulty shelf in tests/library/faulty/. */
import type { Draft, DraftShelf } from './draft.ts';
import type { Fault, Level } from './finding.ts';
import type { ReadText } from './read-text.ts';
import type { SourceFile } from './source-file.ts';

interface RuleHead {
  /** Words, permanent: the name people search for. */
  id: string;
  level: Level;
}

/** A rule about the characters of a file, before anything is made of them. */
export interface FileRule extends RuleHead {
  on: 'file';
  check(file: SourceFile): Fault[];
  /** Nothing more can be said about a file that breaks this rule: what follows would be its echo. */
  ends?: boolean;
}

/** A rule about what YAML made of the text. */
export interface TextRule extends RuleHead {
  on: 'text';
  check(read: ReadText): Fault[];
  ends?: boolean;
}

/** A rule about one record by itself. */
export interface RecordRule extends RuleHead {
  on: 'record';
  check(draft: Draft): Fault[];
}

/** A rule about records that belong together. */
export interface ShelfRule extends RuleHead {
  on: 'shelf';
  check(shelf: DraftShelf): Fault[];
}

export type Rule = FileRule | TextRule | RecordRule | ShelfRule;
