/** What the shelf teaches the recogniser: counts of signs, and which words there are. */
import { type Counts, count, emptyCounts } from './counts.ts';
import { type Phrasing, phrasingsOf, type Told } from './phrasings.ts';
import { type Sign, signsOf } from './signs.ts';
import { Thesaurus, type WordGroups } from './thesaurus.ts';
import { clausesOf } from './words.ts';

export interface Words {
  groups: WordGroups;
  /** Complaints of other trades and other parts of the car. */
  elsewhere: readonly string[];
}

export interface Learnt {
  counts: Counts;
  thesaurus: Thesaurus;
  texts: readonly LearntText[];
  /** Word -> texts it stands in, slips left out; the most used first. */
  uses: ReadonlyMap<string, number>;
}

export interface LearntText extends Phrasing {
  signs: readonly Sign[];
  words: readonly string[];
}

/** @param complaints the shelf's complaints, in the order of the columns */
export function learn(complaints: readonly Told[], { groups, elsewhere }: Words): Learnt {
  const thesaurus = new Thesaurus(groups);
  const counts = emptyCounts(complaints.map(({ id }) => id));
  const uses = new Map<string, number>();
  const texts = [...phrasingsOf(complaints), ...heapOf(elsewhere, complaints.length)].map(
    (phrasing): LearntText => {
      const clauses = clausesOf(phrasing.text);
      const signs = signsOf(clauses, thesaurus);
      count(counts, phrasing.column, idsOf(signs), phrasing.weight);
      const words = [...new Set(clauses.flat().map(({ word }) => word))];
      // A usual slip counts as a sign, and is mended all the same: its right spelling tells more.
      if (phrasing.field !== 'slips') for (const word of words) uses.set(word, (uses.get(word) ?? 0) + 1);
      return { ...phrasing, signs, words };
    },
  );
  return { counts, thesaurus, texts, uses: new Map([...uses].sort(([, a], [, b]) => b - a)) };
}

function heapOf(elsewhere: readonly string[], column: number): Phrasing[] {
  return elsewhere.map((text) => ({ text, column, field: 'said', weight: 1, isPhrasing: false }));
}

/** The signs' names alone. */
export function idsOf(signs: readonly Sign[]): string[] {
  return signs.map(({ id }) => id);
}

/** Words a misspelt one may have been meant to be: those of the thesaurus, then those of the texts. */
export function guessesOf({ thesaurus, uses }: Pick<Learnt, 'thesaurus' | 'uses'>): string[] {
  return [...new Set([...thesaurus.words, ...uses.keys()])];
}
