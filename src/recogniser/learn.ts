/** What the shelf teaches the recogniser: counts of signs, and which words there are. */
import { type Counts, count, emptyCounts } from './counts.ts';
import { type Phrasing, phrasingsOf, type SymptomTexts } from './phrasings.ts';
import { type Sign, signsOf } from './signs.ts';
import { stemOf } from './stem.ts';
import { Thesaurus, type WordGroups } from './thesaurus.ts';
import { clausesOf } from './words.ts';

export interface Words {
  groups: WordGroups;
  /** Complaints of other trades and other parts of the car. */
  elsewhere: readonly string[];
}

export interface LearntWords {
  counts: Counts;
  thesaurus: Thesaurus;
  texts: readonly LearntText[];
  /** Words by their stem: the first as it is written, and how many texts have one; slips left out, the most used first. */
  uses: ReadonlyMap<string, { word: string; texts: number }>;
}

export interface LearntText extends Phrasing {
  signs: readonly Sign[];
  stems: readonly string[];
}

/** @param complaints the shelf's complaints, in the order of the columns */
export function learn(complaints: readonly SymptomTexts[], { groups, elsewhere }: Words): LearntWords {
  const thesaurus = new Thesaurus(groups);
  const counts = emptyCounts(complaints);
  const uses = new Map<string, { word: string; texts: number }>();
  const texts = [...phrasingsOf(complaints), ...heapOf(elsewhere, complaints.length)].map(
    (phrasing): LearntText => {
      const clauses = clausesOf(phrasing.text);
      const signs = signsOf(clauses, thesaurus);
      count(counts, phrasing.column, idsOf(signs), phrasing.weight);
      const words = new Map(clauses.flat().map(({ word }) => [stemOf(word), word]));
      // A usual slip counts as a sign, and is mended all the same: its right spelling tells more.
      if (phrasing.field !== 'slips') for (const [stem, word] of words) use(uses, stem, word);
      return { ...phrasing, signs, stems: [...words.keys()] };
    },
  );
  return { counts, thesaurus, texts, uses: new Map([...uses].sort(([, a], [, b]) => b.texts - a.texts)) };
}

function use(uses: Map<string, { word: string; texts: number }>, stem: string, word: string): void {
  const known = uses.get(stem);
  if (known) known.texts += 1;
  else uses.set(stem, { word, texts: 1 });
}

function heapOf(elsewhere: readonly string[], column: number): Phrasing[] {
  return elsewhere.map((text) => ({ text, column, field: 'said', weight: 1, isPhrasing: false }));
}

/** The signs' names alone. */
export function idsOf(signs: readonly Sign[]): string[] {
  return signs.map(({ id }) => id);
}

/** Words a misspelt one may have been meant to be, one of each stem: those of the thesaurus, then those of the texts. */
export function guessesOf({ thesaurus, uses }: Pick<LearntWords, 'thesaurus' | 'uses'>): Map<string, string> {
  const guesses = new Map(thesaurus.words);
  for (const [stem, { word }] of uses) if (!guesses.has(stem)) guesses.set(stem, word);
  return guesses;
}
