/** Words that need no mending, and those a misspelt word may have been meant to be. */
import { type Mender, mender } from './mend.ts';
import { stemOf } from './stem.ts';
import { isNegation, isSmall } from './words.ts';

/** So many letters of a word that is still being typed say which it will be. */
const LEAST_TO_COMPLETE = 4;

export interface KnownWords {
  has(word: string): boolean;
  /** The known word that a misspelt one was meant to be. */
  mend(word: string): string | undefined;
  /** The known word that one still being typed begins. */
  complete(word: string): string | undefined;
}

/** Words by their stem; of several with one stem, the first. */
export function byStem(words: Iterable<string>): Map<string, string> {
  const found = new Map<string, string>();
  for (const word of words) if (!found.has(stemOf(word))) found.set(stemOf(word), word);
  return found;
}

/**
 * Words are known in all their forms: what is compared is stems.
 * @param guesses stem -> word to guess at, the likeliest first
 * @param others stems of words that are right and tell nothing: they are never mended, and nothing is mended to them
 */
export function knownWords(
  guesses: ReadonlyMap<string, string>,
  others: { has(stem: string): boolean },
): KnownWords {
  const answers = new Map<string, string | undefined>();
  // Most sentences have no slip in them.
  let meant: Mender | undefined;
  return {
    has(word) {
      const stem = stemOf(word);
      return guesses.has(stem) || others.has(stem) || isSmall(word) || isNegation(word) || /\d/.test(word);
    },
    mend(word) {
      meant ??= mender(guesses.keys());
      if (!answers.has(word)) answers.set(word, guesses.get(meant(stemOf(word)) ?? ''));
      return answers.get(word);
    },
    complete(word) {
      if (word.length < LEAST_TO_COMPLETE) return undefined;
      for (const guess of guesses.values()) if (guess.startsWith(word)) return guess;
      return undefined;
    },
  };
}
