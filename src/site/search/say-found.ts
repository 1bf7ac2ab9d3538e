/** What was found, in a sentence or two; read out as it changes. */
import type { Found } from './find.ts';

export function sayFound({ hits, mended, unknown }: Found, shown: number): string {
  const sentences: string[] = [];
  if (hits.length === 0)
    sentences.push('Nothing found. Try a part, a code, or one word of what the customer said.');
  else if (shown < hits.length) sentences.push(`${shown} of ${hits.length} results, the best first.`);
  else sentences.push(`${hits.length} ${hits.length === 1 ? 'result' : 'results'}.`);
  for (const { from, to } of mended) sentences.push(`Took “${from}” for “${to}”.`);
  if (unknown.length > 0 && hits.length > 0) {
    sentences.push(`No page has ${unknown.map((word) => `“${word}”`).join(' or ')}; looked for the rest.`);
  }
  return sentences.join(' ');
}
