/** A recogniser's knowledge as plain data, small when compressed, and back. */
import { type Counts, emptyCounts, isTelling } from './counts.ts';
import type { Knowledge } from './recogniser.ts';
import { Thesaurus, type WordGroups } from './thesaurus.ts';

export interface PackedKnowledge {
  classes: readonly string[];
  /** Weight of all signs of each column, and how many signs there are, those left out included. */
  totals: readonly number[];
  vocabulary: number;
  /** Group -> its words and phrases, parted by commas. */
  groups: Readonly<Record<string, string>>;
  /** Signs in the order of the alphabet, parted by spaces. */
  signs: string;
  /** For each sign its columns, parted by commas; behind a point the weight in tenths, where it is not one whole. */
  counts: string;
  /** Guesses that stand in no group, the likeliest first, parted by spaces. */
  guesses: string;
  others: string;
  codes: string;
}

/** Columns and tenths are written so: short, and readable by every browser. */
const BASE = 36;
const TENTHS = 10;

/** Leaves out the signs that tell nothing. */
export function pack(
  { counts, thesaurus, guesses, others, codes }: Knowledge,
  groups: WordGroups,
): PackedKnowledge {
  const signs = [...counts.ofSign.keys()].filter((id) => isTelling(counts, id)).sort();
  return {
    classes: counts.classes,
    totals: counts.total.map((total) => Math.round(total * TENTHS) / TENTHS),
    vocabulary: counts.vocabulary,
    groups: Object.fromEntries(Object.entries(groups).map(([group, words]) => [group, words.join()])),
    signs: signs.join(' '),
    counts: signs.map((id) => packedColumns(counts.ofSign.get(id) ?? new Map())).join(' '),
    guesses: guesses.filter((word) => !thesaurus.words.has(word)).join(' '),
    others: [...others].sort().join(' '),
    codes: [...codes].sort().join(' '),
  };
}

function packedColumns(columns: ReadonlyMap<number, number>): string {
  return [...columns]
    .map(([column, weight]) => {
      const tenths = Math.round(weight * TENTHS);
      return column.toString(BASE) + (tenths === TENTHS ? '' : `.${tenths.toString(BASE)}`);
    })
    .join();
}

/** The knowledge as it was packed. */
export function unpack(packed: PackedKnowledge): Knowledge {
  const groups = Object.entries(packed.groups).map(([group, words]) => [group, words.split(',')] as const);
  const thesaurus = new Thesaurus(Object.fromEntries(groups));
  return {
    counts: unpackedCounts(packed),
    thesaurus,
    guesses: [...thesaurus.words, ...wordsOf(packed.guesses)],
    others: new Set(wordsOf(packed.others)),
    codes: new Set(wordsOf(packed.codes)),
  };
}

function unpackedCounts({ classes, totals, vocabulary, signs, counts }: PackedKnowledge): Counts {
  const empty: Counts = { ...emptyCounts(classes), total: [...totals], vocabulary };
  const rows = wordsOf(counts);
  for (const [at, id] of wordsOf(signs).entries()) {
    const columns = new Map(
      (rows[at] ?? '').split(',').map((each) => {
        const [column = '', tenths] = each.split('.');
        const weight = tenths === undefined ? 1 : Number.parseInt(tenths, BASE) / TENTHS;
        return [Number.parseInt(column, BASE), weight] as const;
      }),
    );
    empty.ofSign.set(id, columns);
    // Only how often it was met is gone; that it was often enough is known.
    empty.texts.set(id, Number.POSITIVE_INFINITY);
  }
  return empty;
}

function wordsOf(text: string): string[] {
  return text === '' ? [] : text.split(' ');
}
