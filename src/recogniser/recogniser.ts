/** From a customer's sentence to the complaint that is meant. */
import { becauseOf } from './because.ts';
import { codesIn, withWholeCodes } from './codes.ts';
import { type Counts, isTelling } from './counts.ts';
import { type KnownWords, knownWords } from './known-words.ts';
import { type ReadSentence, read } from './read.ts';
import { allGains, scoresOf } from './score.ts';
import { isElsewhere, isSure, sharesOf } from './sureness.ts';
import type { Thesaurus } from './thesaurus.ts';
import { isSmall } from './words.ts';

/** What a recogniser has learnt, from the shelf or from its packed form. */
export interface Knowledge {
  counts: Counts;
  thesaurus: Thesaurus;
  /** Words a misspelt one may have been meant to be, by their stem, the likeliest first. */
  guesses: ReadonlyMap<string, string>;
  /** Other words that are right as they are, by their stem. */
  others: ReadonlyMap<string, string>;
  /** Trouble codes of the shelf, such as p0128. */
  codes: ReadonlySet<string>;
}

export interface Complaint {
  id: string;
  /** Share of the whole, 0 to 1, as sure as the recogniser is of it. */
  share: number;
  /** The words that decided, as typed. */
  because: readonly string[];
}

export interface RecognitionResult {
  /** Trouble codes that were typed. */
  codes: readonly string[];
  /** The likeliest first, three at most; none when no word tells anything. */
  complaints: readonly Complaint[];
  /** The first stands alone. */
  isSure: boolean;
  /** It sounds like none of them. */
  isElsewhere: boolean;
  /** Words that were read as others. */
  mended: readonly { from: string; to: string }[];
}

const MOST = 3;

/** Recognises complaints by what it has learnt; the same sentence always gets the same answer. */
export class Recogniser {
  private readonly knowledge: Knowledge;
  private readonly known: KnownWords;

  constructor(knowledge: Knowledge) {
    this.knowledge = knowledge;
    this.known = knownWords(knowledge.guesses, knowledge.others);
  }

  /** @param text as typed, whole or still growing at its end */
  recognise(text: string): RecognitionResult {
    const { counts, thesaurus } = this.knowledge;
    const codes = codesIn(text, this.knowledge.codes);
    const sentence = read(withWholeCodes(text, codes), thesaurus, this.known);
    const { mended } = sentence;
    if (!this.tells(sentence)) return { codes, complaints: [], isSure: false, isElsewhere: true, mended };
    const gains = allGains(sentence.signs, counts);
    const scores = scoresOf(gains, counts);
    const heap = scores.at(-1) ?? 0;
    const shares = sharesOf(scores.slice(0, -1), sentence.signs.length);
    const best = [...shares.entries()].sort(([, a], [, b]) => b - a).slice(0, MOST);
    const most = best[0]?.[1] ?? 0;
    const elsewhere = isElsewhere(heap, most);
    return {
      codes,
      complaints: best.map(([column, share]) => ({
        id: counts.classes[column] ?? '',
        share,
        because: becauseOf(sentence, column, gains),
      })),
      isSure: isSure(most) && !elsewhere,
      isElsewhere: elsewhere,
      mended,
    };
  }

  /** Whether a word of it stands in some phrasing and is more than grammar. */
  private tells({ signs, words }: ReadSentence): boolean {
    const { counts } = this.knowledge;
    return signs.some(
      ({ id, from }) =>
        counts.ofSign.has(id) && isTelling(counts, id) && from.some((at) => !isSmall(words[at]?.word ?? '')),
    );
  }
}
