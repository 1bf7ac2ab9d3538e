/** A recogniser's knowledge as plain data, small when compressed, and back. */
import { type Counts, emptyCounts, isTelling } from './counts.ts';
import { byStem, knownWords } from './known-words.ts';
import type { Knowledge } from './recogniser.ts';
import { stemOf } from './stem.ts';
import { Thesaurus, type WordGroups } from './thesaurus.ts';

export interface PackedKnowledge {
  classes: readonly string[];
  comesIn: readonly number[];
  /** Weight of all signs of each column, and how many signs there are, those left out included. */
  totals: readonly number[];
  vocabulary: number;
  /** The words and phrases of each group, parted by commas. What a group is called nobody reads here, so its number will do. */
  groups: readonly string[];
  /** Signs in the order of the alphabet, parted by spaces; pairs with the same first are written once: a+b+c is a+b and a+c. */
  signs: string;
  /** For each sign its columns in letters, each with its weight in halves behind it where that is not one whole. */
  counts: string;
  /** Guesses that stand in no group, the likeliest first, parted by spaces. */
  guesses: string;
  others: string;
  codes: string;
}

/** What a group is called. */
const BASE = 36;
const LETTERS = 26;
/** Phrasings weigh a half, one, or one and a half. */
const HALVES = 2;
const TENTHS = 10;

/** Leaves out the signs that tell nothing. */
export function pack(
  { counts, thesaurus, guesses, others, codes }: Knowledge,
  groups: WordGroups,
): PackedKnowledge {
  const numbers = new Map(Object.keys(groups).map((name, at) => [name, at.toString(BASE)]));
  const signs = [...counts.ofSign]
    .filter(([id]) => isTelling(counts, id))
    .map(([id, columns]) => ({ id: withNumbers(id, numbers), columns }))
    .sort((a, b) => (a.id < b.id ? -1 : 1));
  return {
    classes: counts.classes,
    comesIn: counts.comesIn,
    totals: counts.total.map((total) => Math.round(total * TENTHS) / TENTHS),
    vocabulary: counts.vocabulary,
    groups: Object.values(groups).map((words) => oneOfEachStem(words).join()),
    signs: withSharedFirsts(signs.map(({ id }) => id)).join(' '),
    counts: signs.map(({ columns }) => packedColumns(columns)).join(' '),
    guesses: [...guesses].flatMap(([stem, word]) => (thesaurus.words.has(stem) ? [] : [word])).join(' '),
    others: mistakable({ guesses, others }).join(' '),
    codes: [...codes].sort().join(' '),
  };
}

/** A sign with its groups by their numbers; a pair stands in the order of the alphabet, as pairs do. */
function withNumbers(id: string, numbers: ReadonlyMap<string, string>): string {
  const parts = id.split('+').map((part) =>
    part.replace(/@(.+)/, (whole, name: string) => {
      const number = numbers.get(name);
      return number === undefined ? whole : `@${number}`;
    }),
  );
  return parts.sort().join('+');
}

/** “leaks” and “leaking” say nothing that “leak” does not. */
function oneOfEachStem(entries: readonly string[]): string[] {
  const stems = new Map<string, string>();
  for (const entry of entries) {
    const key = entry
      .split(/[^\p{L}\p{N}]+/u)
      .map(stemOf)
      .join(' ');
    if (!stems.has(key)) stems.set(key, entry);
  }
  return [...stems.values()];
}

/** Only the right words that would otherwise be mended need to be known. */
function mistakable({ guesses, others }: Pick<Knowledge, 'guesses' | 'others'>): string[] {
  const known = knownWords(guesses, new Set());
  return [...others.values()].filter((word) => !known.has(word) && known.mend(word) !== undefined).sort();
}

/** Pairs in a row that have the same first, in one. */
function withSharedFirsts(ids: readonly string[]): string[] {
  const shared: string[] = [];
  let before = '';
  for (const id of ids) {
    const [first = '', second] = id.split('+');
    if (second !== undefined && first === before) shared.push(`${shared.pop()}+${second}`);
    else shared.push(id);
    before = second === undefined ? '' : first;
  }
  return shared;
}

function eachPair(signs: readonly string[]): string[] {
  return signs.flatMap((sign) => {
    const [first = '', ...seconds] = sign.split('+');
    return seconds.length === 0 ? [first] : seconds.map((second) => `${first}+${second}`);
  });
}

function packedColumns(columns: ReadonlyMap<number, number>): string {
  return [...columns]
    .sort(([a], [b]) => a - b)
    .map(([column, weight]) => {
      const halves = Math.round(weight * HALVES);
      return inLetters(column) + (halves === HALVES ? '' : halves);
    })
    .join('');
}

/** A number to the base of 26, its last digit a small letter, those before it capitals. */
function inLetters(number: number): string {
  const last = String.fromCharCode(97 + (number % LETTERS));
  const rest = Math.floor(number / LETTERS);
  return rest === 0 ? last : inLetters(rest).toUpperCase() + last;
}

function fromLetters(letters: string): number {
  return [...letters.toLowerCase()].reduce(
    (number, letter) => number * LETTERS + letter.charCodeAt(0) - 97,
    0,
  );
}

const COLUMN = /([A-Z]*[a-z])(\d*)/g;

/** The knowledge as it was packed. */
export function unpack(packed: PackedKnowledge): Knowledge {
  const groups = packed.groups.map((words, at) => [at.toString(BASE), words.split(',')] as const);
  const thesaurus = new Thesaurus(Object.fromEntries(groups));
  return {
    counts: unpackedCounts(packed),
    thesaurus,
    guesses: byStem([...thesaurus.words.values(), ...wordsOf(packed.guesses)]),
    others: byStem(wordsOf(packed.others)),
    codes: new Set(wordsOf(packed.codes)),
  };
}

function unpackedCounts(packed: PackedKnowledge): Counts {
  const { classes, comesIn, totals, vocabulary, signs, counts } = packed;
  const complaints = classes.map((id, column) => ({ id, weight: comesIn[column] ?? 1 }));
  const empty: Counts = { ...emptyCounts(complaints), total: [...totals], vocabulary };
  const rows = wordsOf(counts);
  for (const [at, id] of eachPair(wordsOf(signs)).entries()) {
    const columns = new Map(
      [...(rows[at] ?? '').matchAll(COLUMN)].map(([, letters = '', halves = '']) => [
        fromLetters(letters),
        halves === '' ? 1 : Number(halves) / HALVES,
      ]),
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
