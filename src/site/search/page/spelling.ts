/** The known word nearest to one that is on no page. */
import { distance } from 'fastest-levenshtein';

/**
 * One slip in a word of four or five letters, two in a longer one; codes and figures are never guessed at.
 * @param known most used first; of words equally near, the one with the same first letter wins, then the most used
 */
export function nearestWord(word: string, known: readonly string[]): string | undefined {
  if (word.length < 4 || /\d/.test(word)) return undefined;
  const allowed = word.length < 6 ? 1 : 2;
  let best: string | undefined;
  let bestRank = Number.POSITIVE_INFINITY;
  for (const candidate of known) {
    if (Math.abs(candidate.length - word.length) > allowed) continue;
    const far = distance(word, candidate);
    const rank = far * 2 + (candidate[0] === word[0] ? 0 : 1);
    if (far <= allowed && rank < bestRank) {
      best = candidate;
      bestRank = rank;
    }
  }
  return best;
}
