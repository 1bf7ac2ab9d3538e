/** A title inside a sentence: small first letter, unless the word is written in capitals (A/C, P0128, EGR). */
export function inSentence(text: string): string {
  return /^[A-Z][a-z]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
}
