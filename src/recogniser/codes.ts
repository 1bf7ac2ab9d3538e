/** Trouble codes in a sentence, however they are typed. */

/** P0128, p 0128, P-0128, P01 28, and P128 with the nought left out (the form of SAE J2012, from memory). */
const WHOLE = /\b([pbcu])[\s.-]{0,2}([0-3]?[0-9a-f])[\s.-]?([0-9a-f]{2})\b/gi;
/** 0128: the letter left out. */
const BARE = /\b[0-3][0-9a-f]{3}\b/gi;

/** The sentence with each code written whole, as the records write it. */
export function withWholeCodes(text: string, codes: readonly string[]): string {
  return codes.reduce(
    (whole, code) => (whole.toLowerCase().includes(code) ? whole : `${whole}, ${code}`),
    text,
  );
}

/**
 * The codes of a sentence, such as p0128, in their order.
 * @param known a bare number is a code only when it is one of these
 */
export function codesIn(text: string, known: { has(code: string): boolean }): string[] {
  const whole = [...text.matchAll(WHOLE)].map(([, letter = '', first = '', last = '']) =>
    `${letter}${first.padStart(2, '0')}${last}`.toLowerCase(),
  );
  const bare = [...text.matchAll(BARE)]
    .map(([rest]) => `p${rest}`.toLowerCase())
    .filter((code) => known.has(code));
  return [...new Set([...whole, ...bare])];
}
