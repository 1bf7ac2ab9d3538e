/** The pages of an output with their tags, read once for all that look at them, and what is to be changed in them. */
import type { Output } from './output.ts';
import { readTags, type Tag } from './page-tags.ts';
import type { SiteFault } from './site-error.ts';

export type Scanned = ReadonlyMap<string, { text: string; tags: Tag[] }>;

/** New text for a stretch of a page; start and end are equal where something is put in between. */
export interface Edit {
  start: number;
  end: number;
  text: string;
}

export interface Outcome {
  /** By page. */
  edits: Map<string, Edit[]>;
  faults: SiteFault[];
}

/** Every page read once for its tags. */
export function scan(output: Output): Scanned {
  return new Map([...output.pages].map(([name, text]) => [name, { text, tags: readTags(text) }]));
}

/** Makes all changes at once, so that none moves the place of another. */
export function applyEdits(output: Output, outcomes: readonly Outcome[]): void {
  for (const [name, page] of output.pages) {
    const edits = outcomes
      .flatMap((outcome) => outcome.edits.get(name) ?? [])
      .sort((a, b) => a.start - b.start);
    let changed = '';
    let from = 0;
    for (const { start, end, text } of edits) {
      changed += page.slice(from, start) + text;
      from = end;
    }
    output.pages.set(name, changed + page.slice(from));
  }
}
