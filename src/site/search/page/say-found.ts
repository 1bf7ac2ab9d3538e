/** What was found, in a sentence or two; read out as it changes. */
import type { SearchAnswer } from './engine.ts';

export type ResultCount = Pick<SearchAnswer, 'count' | 'mended' | 'unknown'>;

/** A trouble code in the words of the index (the form of SAE J2012, from memory). */
const CODE = /^[pbcu][0-3][0-9a-f]{3}$/;

/** The codes asked for that no page has. */
export function unknownCodes({ unknown }: Pick<ResultCount, 'unknown'>): string[] {
  return unknown.filter((word) => CODE.test(word)).map((word) => word.toUpperCase());
}

/**
 * How many were found, what was read differently, what no page has.
 * @param shown results on the page
 */
export function sayFound({ count, mended, unknown }: ResultCount, shown: number): string {
  const codes = unknownCodes({ unknown });
  if (count === 0 && codes.length > 0)
    return `${codes.join(' and ')} is not on this shelf. Look up what it means in the maker’s list, and walk what the car does.`;
  if (count === 0) return 'Nothing found. Try a part, a code, or one word of what the customer said.';
  const sentences = [
    shown < count
      ? `${shown} of ${count} results, the best first.`
      : `${count} ${count === 1 ? 'result' : 'results'}.`,
    ...mended.map(({ from, to }) => `Read “${from}” as “${to}”.`),
  ];
  if (unknown.length > 0)
    sentences.push(`No page has ${unknown.map((word) => `“${word}”`).join(' or ')}; looked for the rest.`);
  return sentences.join(' ');
}
