/** The pages of an output with their elements, read once for all that look at them, and what is to be changed in them. */
import type { Output } from './output.ts';
import { type PageElement, readElements } from './read-page.ts';
import type { SiteFault } from './site-error.ts';

export interface ScannedPage {
  text: string;
  elements: PageElement[];
}

export type Scanned = ReadonlyMap<string, ScannedPage>;

/** New text for a stretch of a page; start and end are equal where something is put in between. */
export interface PageEdit {
  start: number;
  end: number;
  text: string;
}

export interface ScanResult {
  /** By page. */
  edits: Map<string, PageEdit[]>;
  faults: SiteFault[];
}

/** Every page read once for its elements. */
export function scan(output: Output): Scanned {
  return new Map([...output.pages].map(([name, text]) => [name, { text, elements: readElements(text) }]));
}

/** A text with all changes made at once, so that none moves the place of another. */
export function edited(text: string, edits: readonly PageEdit[]): string {
  let changed = '';
  let from = 0;
  for (const edit of edits.toSorted((a, b) => a.start - b.start)) {
    changed += text.slice(from, edit.start) + edit.text;
    from = edit.end;
  }
  return changed + text.slice(from);
}

/** Makes all changes in the pages. */
export function applyEdits(output: Output, outcomes: readonly ScanResult[]): void {
  for (const [name, page] of output.pages)
    output.pages.set(
      name,
      edited(
        page,
        outcomes.flatMap((outcome) => outcome.edits.get(name) ?? []),
      ),
    );
}
