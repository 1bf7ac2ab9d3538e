/** Trouble codes in a sentence, however they are typed. */

/** P0128, p 0128, P-0128, and P128 with the nought left out (the form of SAE J2012, from memory). */
const WHOLE = /\b([pbcu])[\s.-]{0,2}([0-3]?[0-9a-f]{3})\b/gi;
/** 0128: the letter left out. */
const BARE = /\b[0-3][0-9a-f]{3}\b/gi;

/**
 * The codes of a sentence, such as p0128, in their order.
 * @param known a bare number is a code only when it is one of these
 */
export function codesIn(text: string, known: { has(code: string): boolean }): string[] {
  const whole = [...text.matchAll(WHOLE)].map(([, letter = '', rest = '']) =>
    `${letter}${rest.length === 3 ? '0' : ''}${rest}`.toLowerCase(),
  );
  const bare = [...text.matchAll(BARE)]
    .map(([rest]) => `p${rest}`.toLowerCase())
    .filter((code) => known.has(code));
  return [...new Set([...whole, ...bare])];
}
