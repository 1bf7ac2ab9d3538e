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

/**
 * A score for each column of the counts: the sum over the signs of the logarithm of (share here / share elsewhere). Signs
 * that no phrasing has tell nothing and are passed over.
 * @param gains of each sign, where they are known already
 */
export function scoresOf(
  signs: readonly Sign[],
  counts: Counts,
  gains: readonly (readonly number[])[] = signs.map((sign) => gainsOf(sign, counts)),
): number[] {
  const scores = counts.total.map((_, column) => FREQUENCY * Math.log(counts.comesIn[column] ?? 1));
  for (const ofSign of gains)
    for (const [column, gain] of ofSign.entries()) scores[column] = (scores[column] ?? 0) + gain;
  return scores;
}

/** What one sign adds to the score of each column; nothing at all for a sign that tells nothing. */
export function gainsOf({ id, weight }: Sign, counts: Counts): number[] {
  const { ofSign, total, vocabulary } = counts;
  const columns = ofSign.get(id);
  if (!columns || !isTelling(counts, id)) return [];
  const smooth = SMOOTHING * vocabulary;
  const heap = total.length - 1;
  const all = sum(total) - (total[heap] ?? 0);
  const everywhere = sum([...columns.values()]) - (columns.get(heap) ?? 0);
  return total.map((own, column) => {
    const here = columns.get(column) ?? 0;
    // The heap stands against all complaints; a complaint against the others, the heap left out.
    const [others, rest] = column === heap ? [everywhere, all] : [everywhere - here, all - own];
    return (
      weight * Math.log(((here + SMOOTHING) * (rest + smooth)) / ((own + smooth) * (others + SMOOTHING)))
    );
  });
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((a, b) => a + b, 0);
}
