/** One shape for everything the shelf check has to say. */

export type Level = 'error' | 'warning';

/** A way to a value inside a record: field names and list positions, from the top. */
export type Path = readonly (string | number)[];

/** Where a finding stands, ready to be shown. Lines and columns count from 1. */
export interface Place {
  /** As a person would open it from the project's folder: content/tests/x.yaml. */
  file: string;
  line: number;
  column: number;
  /** Characters to underline, 0 when there is nothing to underline. */
  length: number;
  /** The line itself; undefined when the file has no such line. */
  source?: string;
}

/** A change of the text between two offsets. */
export interface Edit {
  start: number;
  end: number;
  text: string;
}

export interface Finding {
  /** Words, permanent, so that the rule can be searched for. */
  rule: string;
  level: Level;
  place: Place;
  /** What is wrong, a sentence. */
  found: string;
  /** What would be right, a sentence. */
  expected?: string;
  /** What the author can do by hand: a phrase that follows "To mend:". */
  byHand?: string;
  /** What --mend does to the file; only where one answer is right. */
  mend?: Edit[];
}

/** Where a rule found something, before it is looked up in the file. */
export type FaultPlace =
  | {
      file: string;
      /** Way to the value; the nearest part that exists is shown. */
      path: Path;
      /** The field's name rather than its value. */
      on?: 'key' | 'value';
      /** A piece of the value's text to underline instead of the whole. */
      within?: string;
    }
  | { file: string; start: number; end: number };

/** What a rule hands over; its id and level are added by the one who runs it. */
export interface Fault {
  at: FaultPlace;
  found: string;
  expected?: string;
  byHand?: string;
  /** The field is not there at all: in a file a line to be added, in a form an empty box. */
  isMissing?: boolean;
  /** The text that should stand in place of what is underlined, where one answer is right. */
  replaceBy?: string;
  /** Edits, where a replacement is not enough. */
  edits?: Edit[];
}

/** Sorted by file, line and column: the order of every report. */
export function inOrder(findings: readonly Finding[]): Finding[] {
  const byPlace = (a: Finding, b: Finding): number =>
    compareText(a.place.file, b.place.file) ||
    a.place.line - b.place.line ||
    a.place.column - b.place.column ||
    compareText(a.rule, b.rule);
  return [...findings].sort(byPlace);
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
