import { distance } from 'fastest-levenshtein';

/** The known word nearest to one that is not known. */
export interface Nearest {
  word: string;
  /** Near enough, and alone in being so, that the author can only have meant this one. */
  sure: boolean;
}

/**
 * Finds what was meant by a word that is not in a list.
 * @returns undefined when nothing comes near
 */
export function nearestOf(wanted: string, known: readonly string[]): Nearest | undefined {
  const plain = plainForm(wanted);
  let best: { word: string; away: number } | undefined;
  let secondAway = Number.POSITIVE_INFINITY;
  for (const word of known) {
    const away = distance(plain, plainForm(word));
    if (best === undefined || away < best.away) {
      secondAway = best?.away ?? secondAway;
      best = { word, away };
    } else if (away < secondAway) secondAway = away;
  }
  if (!best) return undefined;
  const length = Math.max(plain.length, 1);
  if (best.away <= Math.max(1, Math.floor(length * 0.34))) {
    const slip = best.away <= (length < 5 ? 1 : length < 12 ? 2 : 3);
    return { word: best.word, sure: slip && secondAway > best.away };
  }
  // Part of a longer name: hose-warm-up for hose-warm-up-outlet-side.
  const longer = known.filter((word) => isPartOf(plain, plainForm(word)));
  const [first] = longer.sort((a, b) => a.length - b.length);
  return first === undefined ? undefined : { word: first, sure: false };
}

function plainForm(word: string): string {
  return word.toLowerCase().replace(/[\s_-]+/g, '-');
}

function isPartOf(one: string, other: string): boolean {
  return one.length >= 4 && (`-${other}-`.includes(`-${one}-`) || `-${one}-`.includes(`-${other}-`));
}

/** Words as a person lists them, cut when there are many. */
export function listed(words: readonly string[], most = 12): string {
  const shown = words.slice(0, most).map((word) => `"${word}"`);
  const left = words.length - shown.length;
  return left > 0 ? `${shown.join(', ')} and ${left} more` : shown.join(', ');
}
