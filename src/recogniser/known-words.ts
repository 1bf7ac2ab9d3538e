/** Words that need no mending, and those a misspelt word may have been meant to be. */
import { mendedWord } from './mend.ts';
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

/**
 * @param guesses words to guess at, the likeliest first
 * @param others words that are right and tell nothing: they are never mended, and nothing is mended to them
 */
export function knownWords(guesses: readonly string[], others: ReadonlySet<string>): KnownWords {
  const guessed = new Set(guesses);
  const answers = new Map<string, string | undefined>();
  return {
    has: (word) =>
      guessed.has(word) || others.has(word) || isSmall(word) || isNegation(word) || /\d/.test(word),
    mend(word) {
      if (!answers.has(word)) answers.set(word, mendedWord(word, guesses));
      return answers.get(word);
    },
    complete: (word) =>
      word.length < LEAST_TO_COMPLETE ? undefined : guesses.find((guess) => guess.startsWith(word)),
  };
}
