/**
 * Complement naive Bayes: how much better a sentence's signs fit one complaint than all the others together.
 *
 * After Rennie, Shih, Teevan and Karger, “Tackling the poor assumptions of naive Bayes text classifiers”, ICML 2003, from
 * memory; with the complaint's own counts kept beside the complement's.
 */
import { type Counts, isTelling } from './counts.ts';
import type { Sign } from './signs.ts';

/** Added to each count, so that one sign never seen does not settle everything. */
const SMOOTHING = 0.1;

/** What comes in often is likelier; by half, since few words say which ones are alike and many settle it. */
const FREQUENCY = 0.5;

/** What each sign adds to the score of each column; signs that no phrasing has tell nothing and add none. */
export function allGains(signs: readonly Sign[], counts: Counts): number[][] {
  const lengths = lengthsOf(counts);
  return signs.map((sign) => gainsOf(sign, counts, lengths));
}

/**
 * A score for each column of the counts: the sum over the signs of the logarithm of (share here / share elsewhere).
 * @param gains of each sign
 */
export function scoresOf(gains: readonly (readonly number[])[], counts: Counts): number[] {
  const scores = counts.total.map((_, column) => FREQUENCY * Math.log(counts.comesIn[column] ?? 1));
  for (const ofSign of gains)
    for (const [column, gain] of ofSign.entries()) scores[column] = (scores[column] ?? 0) + gain;
  return scores;
}

/** What one sign adds to the score of each column; nothing at all for a sign that tells nothing. */
function gainsOf({ id, weight }: Sign, counts: Counts, lengths: readonly number[]): number[] {
  const columns = counts.ofSign.get(id);
  if (!columns || !isTelling(counts, id)) return [];
  const heap = counts.total.length - 1;
  // The heap stands against all complaints; a complaint against the others, the heap left out.
  const everywhere = sum([...columns.values()]) - (columns.get(heap) ?? 0);
  const absent = Math.log(SMOOTHING / (everywhere + SMOOTHING));
  return lengths.map((length, column) => {
    const here = columns.get(column);
    if (here === undefined) return weight * (absent + length);
    const others = column === heap ? everywhere : everywhere - here;
    return weight * (Math.log((here + SMOOTHING) / (others + SMOOTHING)) + length);
  });
}

/** The part of each gain that is the same for every sign: how much shorter a column's texts are than all that it stands against. */
function lengthsOf({ total, vocabulary }: Counts): number[] {
  const smooth = SMOOTHING * vocabulary;
  const heap = total.length - 1;
  const all = sum(total) - (total[heap] ?? 0);
  return total.map((own, column) =>
    Math.log(((column === heap ? all : all - own) + smooth) / (own + smooth)),
  );
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((a, b) => a + b, 0);
}
