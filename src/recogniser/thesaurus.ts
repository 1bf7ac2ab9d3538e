/** Word groups of the thesaurus: words and phrases that mean one thing at the counter. */
import { stemOf } from './stem.ts';

/** Group by name -> its words and phrases, as content/words.yaml has them. */
export type WordGroups = Readonly<Record<string, readonly string[]>>;

interface Entry {
  /** Stems after the first. */
  rest: readonly string[];
  group: string;
  /** As it is written. */
  text: string;
}

/** Groups of the words that begin at one place. */
export interface Match {
  groups: readonly string[];
  /** The entries themselves. */
  entries: readonly { group: string; text: string }[];
  /** Words it covers, one or more. */
  length: number;
}

/** Finds the word groups of a sentence. */
export class Thesaurus {
  /** First stem -> entries, the longest first. */
  private readonly entries = new Map<string, Entry[]>();
  /** Stem -> the first word that has it. */
  readonly words = new Map<string, string>();

  constructor(groups: WordGroups) {
    for (const [group, entries] of Object.entries(groups)) for (const text of entries) this.add(group, text);
    for (const entries of this.entries.values()) entries.sort((a, b) => b.rest.length - a.rest.length);
  }

  private add(group: string, text: string): void {
    const words = text
      .toLowerCase()
      .replace(/['’]/g, '')
      .split(/[^\p{L}\p{N}]+/u);
    for (const word of words) if (!this.words.has(stemOf(word))) this.words.set(stemOf(word), word);
    const [first, ...rest] = words.map(stemOf);
    if (first === undefined) return;
    const entries = this.entries.get(first);
    if (entries) entries.push({ rest, group, text });
    else this.entries.set(first, [{ rest, group, text }]);
  }

  /** The longest entries that begin at a place; a phrase stands before the words it is made of. */
  at(stems: readonly string[], place: number): Match | undefined {
    const entries: Entry[] = [];
    let length = 0;
    for (const entry of this.entries.get(stems[place] ?? '') ?? []) {
      const { rest } = entry;
      if (length > rest.length + 1) break;
      if (rest.some((stem, at) => stems[place + 1 + at] !== stem)) continue;
      length = rest.length + 1;
      entries.push(entry);
    }
    if (length === 0) return undefined;
    return { groups: [...new Set(entries.map(({ group }) => group))], entries, length };
  }
}
