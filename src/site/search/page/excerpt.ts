/** The part of a page's text that answers most of the query. */

import { showDecimals } from '../decimals.ts';

/** A run of text, marked when it is one of the words looked for. */
export interface MarkedText {
  text: string;
  mark: boolean;
}

const WORDS_SHOWN = 24;

/**
 * @param content the page's text as the index keeps it, angle brackets escaped
 * @param locations where the words stand, counted in words, rising
 * @param title shown already, so a page that begins with it is quoted from behind it
 */
export function excerptOf(content: string, locations: readonly number[], title = ''): MarkedText[] {
  const words = content.split(/\s+/);
  const begin = content.startsWith(title) ? title.split(/\s+/).filter((word) => word !== '').length : 0;
  const inText = locations.filter((location) => location >= begin);
  const first = Math.max(begin, bestStart(inText, words.length));
  const marks = new Set(locations);
  const runs: MarkedText[] = [];
  words.slice(first, first + WORDS_SHOWN).forEach((word, at) => {
    const mark = marks.has(first + at);
    const last = runs.at(-1);
    const text = plain(word);
    if (last && last.mark === mark) last.text += ` ${text}`;
    else runs.push({ text, mark });
  });
  if (first > begin) runs.unshift({ text: '…', mark: false });
  if (first + WORDS_SHOWN < words.length) runs.push({ text: '…', mark: false });
  return runs;
}

/** A few words before the window that holds most of the locations. */
function bestStart(locations: readonly number[], length: number): number {
  let best = 0;
  let most = 0;
  for (const from of locations) {
    const held = locations.filter((location) => location >= from && location < from + WORDS_SHOWN - 4).length;
    if (held > most) {
      most = held;
      best = from;
    }
  }
  return Math.max(0, Math.min(best - 4, length - WORDS_SHOWN));
}

function plain(word: string): string {
  return showDecimals(word.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('\u200b', ''));
}
