/** The stem of an English word, so that “drops”, “dropped” and “dropping” are one. */

const VOWEL = /[aeiouy]/;

/**
 * Takes off the endings of plural, tense and manner. It need not give a word of the language, only the same letters for the
 * forms of one word; other rules than a linguist's would do as well, as long as both sides use them.
 * @param word lower case, without apostrophes
 */
export function stemOf(word: string): string {
  if (word.length < 4 || /\d/.test(word)) return word;
  return withoutLastE(withoutTense(withoutPlural(word)));
}

function withoutPlural(word: string): string {
  if (word.endsWith('sses') || word.endsWith('xes') || word.endsWith('shes') || word.endsWith('ches'))
    return word.slice(0, -2);
  if (word.endsWith('ies')) return word.length > 4 ? `${word.slice(0, -3)}y` : word.slice(0, -1);
  if (word.endsWith('s') && !/(?:ss|us|is|[^aeiouy]{2}ps)$/.test(word)) return word.slice(0, -1);
  return word;
}

function withoutTense(word: string): string {
  for (const ending of ['ingly', 'edly', 'ing', 'ed', 'ly']) {
    if (!word.endsWith(ending)) continue;
    const rest = word.slice(0, -ending.length);
    if (rest.length < 3 || !VOWEL.test(rest)) return word;
    if (ending === 'ly') return rest.endsWith('i') ? `${rest.slice(0, -1)}y` : rest;
    return withoutDouble(rest);
  }
  return word;
}

/** “dropp” of “dropped”; “fill” and “hiss” keep theirs, and lose it everywhere. */
function withoutDouble(rest: string): string {
  return rest.length > 3 && /([bdfgklmnprstz])\1$/.test(rest) ? rest.slice(0, -1) : rest;
}

function withoutLastE(word: string): string {
  const bare = word.length > 4 && word.endsWith('e') ? word.slice(0, -1) : word;
  const plain = bare.length > 4 && bare.endsWith('y') ? `${bare.slice(0, -1)}i` : bare;
  return withoutDouble(plain);
}
