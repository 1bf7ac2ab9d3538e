/** A sentence read: its words with misspelt ones mended, and its signs. */
import type { KnownWords } from './known-words.ts';
import { type Sign, signsOf } from './signs.ts';
import type { Thesaurus } from './thesaurus.ts';
import { clausesOf, type Word } from './words.ts';

export interface ReadSentence {
  words: readonly Word[];
  signs: readonly Sign[];
  /** Words that were read as others, in the order of the sentence. */
  mended: readonly { from: string; to: string }[];
}

/** Reads a sentence as customers type it; its last word may still be growing. */
export function read(text: string, thesaurus: Thesaurus, known: KnownWords): ReadSentence {
  const mended: { from: string; to: string }[] = [];
  const growing = /[\p{L}\p{N}]$/u.test(text);
  const clauses = clausesOf(text);
  const last = clauses.at(-1)?.at(-1);
  const right = clauses.map((clause) =>
    clause.map((each): Word => {
      const { said, word } = each;
      if (known.has(word)) return each;
      const whole = growing && each === last ? known.complete(word) : undefined;
      if (whole !== undefined) return { said, word: whole };
      const meant = known.mend(word);
      if (meant !== undefined) mended.push({ from: said, to: meant });
      return { said, word: meant ?? word };
    }),
  );
  return { words: right.flat(), signs: signsOf(right, thesaurus), mended };
}
