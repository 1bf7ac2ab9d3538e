/** Words of titles and other names: what a misspelt word may have been meant to be. */

import { wordsOf } from '../search/words.ts';
import { attributeOf } from './read-page.ts';
import type { Scanned } from './scanned.ts';

/** As src/site/search/build/SearchTerms.astro writes them. */
const FIELDS = new Set(['title', 'said', 'trade', 'codes']);
/** Shorter words have too many neighbours to be mended by guess. */
export const SHORTEST = 4;

/** All words of the marked fields, most used first, then by the alphabet. */
export function collectWords(scanned: Scanned): string[] {
  const uses = new Map<string, number>();
  for (const { elements } of scanned.values()) {
    for (const element of elements) {
      if (!FIELDS.has(attributeOf(element, 'data-pagefind-meta') ?? '')) continue;
      for (const word of wordsOf(element.text ?? '')) {
        if (word.length >= SHORTEST) uses.set(word, (uses.get(word) ?? 0) + 1);
      }
    }
  }
  return [...uses].sort(([a, m], [b, n]) => n - m || (a < b ? -1 : 1)).map(([word]) => word);
}
