/** What was found, in a sentence or two; read out as it changes. */
import type { Answer } from './engine.ts';

export type Counted = Pick<Answer, 'count' | 'mended' | 'unknown'>;

export function sayFound({ count, mended, unknown }: Counted, shown: number): string {
  const sentences: string[] = [];
  if (count === 0)
    sentences.push('Nothing found. Try a part, a code, or one word of what the customer said.');
  else if (shown < count) sentences.push(`${shown} of ${count} results, the best first.`);
  else sentences.push(`${count} ${count === 1 ? 'result' : 'results'}.`);
  for (const { from, to } of mended) sentences.push(`Took “${from}” for “${to}”.`);
  if (unknown.length > 0 && count > 0) {
    sentences.push(`No page has ${unknown.map((word) => `“${word}”`).join(' or ')}; looked for the rest.`);
  }
  return sentences.join(' ');
}
