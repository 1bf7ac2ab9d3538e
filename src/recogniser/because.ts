/** Because of which words a complaint was recognised, in the customer's own. */
import type { ReadSentence } from './read.ts';

const MOST = 3;
/** A word that gained less decided nothing. */
const LEAST_GAIN = 0.8;

/**
 * The words that gained a complaint most, in their order, phrases whole.
 * @param gains of each sign, by column
 */
export function becauseOf(
  { words, signs }: ReadSentence,
  column: number,
  gains: readonly (readonly number[])[],
): string[] {
  const phrases = phrasesOf(words.length, signs);
  const gained = new Map<number, number>();
  for (const [number, { from }] of signs.entries()) {
    const gain = (gains[number]?.[column] ?? 0) / from.length;
    for (const at of from) {
      const phrase = phrases[at] ?? at;
      gained.set(phrase, (gained.get(phrase) ?? 0) + gain);
    }
  }
  return [...gained]
    .filter(([, gain]) => gain > LEAST_GAIN)
    .sort(([, a], [, b]) => b - a)
    .slice(0, MOST)
    .map(([phrase]) => phrase)
    .sort((a, b) => a - b)
    .map((phrase) =>
      words
        .filter((_, at) => phrases[at] === phrase)
        .map(({ said }) => said)
        .join(' '),
    );
}

/** Place of each word -> place of the first word of its phrase, which may be itself. */
function phrasesOf(length: number, signs: ReadSentence['signs']): number[] {
  const first = Array.from({ length }, (_, at) => at);
  for (const { id, from } of signs)
    if (id.startsWith('@') && !id.includes('+')) for (const at of from) first[at] = from[0] ?? at;
  return first;
}
