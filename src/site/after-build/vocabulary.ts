/** Words of titles and other names: what a misspelt word may have been meant to be. */

import { wordsOf } from '../search/words.ts';
import type { Output } from './output.ts';

/** As src/site/search/build/SearchTerms.astro writes them. */
const FIELD = /data-pagefind-meta="?(?:title|said|trade|codes)"?[^>]*>([^<]*)/g;
/** Shorter words have too many neighbours to be mended by guess. */
export const SHORTEST = 4;

/** All words of the marked fields, most used first, then by the alphabet. */
export function collectWords(output: Output): string[] {
  const uses = new Map<string, number>();
  for (const page of output.pages.values()) {
    for (const text of markedTexts(page)) {
      for (const word of wordsOf(text)) {
        if (word.length >= SHORTEST) uses.set(word, (uses.get(word) ?? 0) + 1);
      }
    }
  }
  return [...uses].sort(([a, m], [b, n]) => n - m || (a < b ? -1 : 1)).map(([word]) => word);
}

function markedTexts(page: string): string[] {
  return [...page.matchAll(FIELD)].map(([, text = '']) => text.replace(/&#?\w+;/g, '’'));
}
