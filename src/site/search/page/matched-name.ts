/** Which of a record's other names the reader meant. */
import { showDecimals } from '../decimals.ts';
import { wordsOf } from '../words.ts';

/** Names in one field are parted so (src/site/search/build/SearchTerms.astro). */
const BETWEEN = ' · ';

const HOW: readonly (readonly [field: string, how: string])[] = [
  ['said', 'customers say'],
  ['trade', 'also called'],
  ['slips', 'also written'],
  ['codes', 'goes with code'],
];

/** @returns nothing when the title itself answers as well */
export function matchedName(
  meta: Readonly<Record<string, string>>,
  fields: readonly string[],
  words: readonly string[],
): { how: string; text: string } | undefined {
  const inTitle = answered(meta.title ?? '', words);
  let best: { how: string; text: string; count: number } | undefined;
  for (const [field, how] of HOW) {
    if (!fields.includes(field)) continue;
    for (const text of (meta[field] ?? '').split(BETWEEN)) {
      const count = answered(text, words);
      if (count > inTitle && count > (best?.count ?? 0)) best = { how, text, count };
    }
  }
  return best && { how: best.how, text: showDecimals(best.text) };
}

/** Whether one name alone answers every word: the reader said it as somebody before him did. */
export function isNamed(meta: Readonly<Record<string, string>>, words: readonly string[]): boolean {
  const names = ['title', ...HOW.map(([field]) => field)].flatMap((field) =>
    (meta[field] ?? '').split(BETWEEN),
  );
  return names.some((name) => answered(name, words) === words.length);
}

/** How many of the words begin alike with some word of the text, so that "drop" answers "drops". */
function answered(text: string, words: readonly string[]): number {
  const own = wordsOf(text);
  return words.filter((word) => own.some((other) => alike(word, other))).length;
}

function alike(a: string, b: string): boolean {
  const [short, long] = a.length < b.length ? [a, b] : [b, a];
  return long.startsWith(short) && (short.length >= 4 || long.length - short.length <= 1);
}
