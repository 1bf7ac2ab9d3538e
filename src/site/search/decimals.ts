/**
 * The index drops full stops, so 1.4 and 14 would be one word. It keeps this character: figures are indexed and asked for with
 * it in place of the point, and shown with the point again.
 */
const POINT = '‿';

/** For the index: a decimal point becomes a sign the index keeps. */
export function keepDecimals(text: string): string {
  return text.replace(/(\d)\.(?=\d)/g, `$1${POINT}`);
}

/** For people: the point again. */
export function showDecimals(text: string): string {
  return text.replaceAll(POINT, '.');
}
