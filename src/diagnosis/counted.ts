/**
 * What a shop has counted, beside the words of its records. A word is a prior worth a stated number of cases (a Dirichlet prior,
 * for two outcomes a beta one), and what was counted is added to it: share = (K × share by the word + counted) / (K + all
 * counted). Source: Gelman, Carlin, Stern, Dunson, Vehtari and Rubin, Bayesian Data Analysis (3rd edition 2013), sections 2.4
 * and 3.4.
 */

/**
 * Cases that all frequency words of a complaint are worth together. With 20 the commonest cause, at half of the cars, is known
 * within a factor of 1.4 (one standard deviation), one behind a sixth within 1.8 and one behind a twentieth within 3.3: the
 * leading word is trusted within its own step of three, the others within about one step. Common practice, no source.
 */
export const CASES_OF_PRIOR = 20;
/**
 * Cases that a word for how often a reading is seen is worth. With 10 a "usually" (0.83) has a standard deviation of 0.11, two
 * thirds of the step to the next word. Common practice, no source.
 */
export const CASES_OF_READING = 10;

/** A share by words moved by counts. @param cases what the word is worth; @returns 0 to 1; without counts the share itself */
export function shareWithCounts(share: number, counted: number, of: number, cases: number): number {
  return (cases * share + counted) / (cases + of);
}

/** Causes with their weights, and the share that none of them has. */
export interface CauseWeights {
  weights: ReadonlyMap<string, number>;
  /** 0 to 1. */
  somethingElse: number;
}

/**
 * The causes of a complaint by words and counts together.
 * @param byWords weights as the words say, on any scale
 * @param counts finished jobs by proven cause; one that is not listed counts for something else
 * @returns shares of all cars as weights, and the share of something else; the words' own where nothing was counted
 */
export function weighedWithCounts(
  byWords: CauseWeights,
  counts: Readonly<Record<string, number>>,
): CauseWeights {
  const all = sum(Object.values(counts));
  if (all === 0) return byWords;
  const total = sum(byWords.weights.values());
  const listed = 1 - byWords.somethingElse;
  const weights = new Map(
    [...byWords.weights].map(([id, weight]) => [
      id,
      shareWithCounts((weight / total) * listed, counts[id] ?? 0, all, CASES_OF_PRIOR),
    ]),
  );
  return { weights, somethingElse: 1 - sum(weights.values()) };
}

/**
 * A row of chances under one cause, moved by counts. What cannot be, and what must, stays: no count makes it possible.
 * @param chances of every outcome, summing to 1
 * @param counted by outcome, in the same order
 */
export function chancesWithCounts(chances: readonly number[], counted: readonly number[]): number[] {
  const possible = counted.map((n, at) => ((chances[at] ?? 0) > 0 && (chances[at] ?? 0) < 1 ? n : 0));
  const all = sum(possible);
  return chances.map((chance, at) => shareWithCounts(chance, possible[at] ?? 0, all, CASES_OF_READING));
}

/** The ends of an interval of shares, 0 to 1. */
export interface Interval {
  low: number;
  high: number;
}

/**
 * The exact interval of a share by Clopper and Pearson (Biometrika 26, 1934, 404-413): every share under which neither so few nor
 * so many would be rarer than half of what the confidence leaves. Solved by bisection on the binomial sum, to 1e-12.
 * @param counted 0 to `of`, whole
 * @param of whole, at most some 100,000
 */
export function exactInterval(counted: number, of: number, confidence = 0.95): Interval {
  const tail = (1 - confidence) / 2;
  return {
    // So many or more is as rare as the tail at the lower end.
    low: counted === 0 ? 0 : solved((p) => 1 - atMost(counted - 1, of, p) < tail),
    high: counted === of ? 1 : solved((p) => atMost(counted, of, p) > tail),
  };
}

/** The share up to which a condition holds that holds at 0 and fails at 1. */
function solved(holds: (share: number) => boolean): number {
  let [low, high] = [0, 1];
  for (let round = 0; round < 42; round++) {
    const middle = (low + high) / 2;
    if (holds(middle)) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Chance of at most k of n, each with the share p strictly between 0 and 1. */
function atMost(k: number, n: number, p: number): number {
  // In logarithms: 0.001 to the power of 1,000 is nothing to a float.
  let log = n * Math.log1p(-p);
  let total = Math.exp(log);
  for (let i = 1; i <= k; i++) {
    log += Math.log((n - i + 1) / i) + Math.log(p) - Math.log1p(-p);
    total += Math.exp(log);
  }
  return Math.min(1, total);
}

/**
 * Whether counts contradict a share: it lies outside their exact interval, and still does with any one job taken away, so that no
 * single job contradicts anything.
 */
export function countsContradict(share: number, counted: number, of: number): boolean {
  if (of < 2) return false;
  const { low, high } = exactInterval(counted, of);
  if (share < low) return share < exactInterval(counted - 1, of - 1).low;
  if (share > high) return share > exactInterval(counted, of - 1).high;
  return false;
}

/** What is nearest in odds to what was counted; the count is smoothed by half a case on either side (Jeffreys), so that none is not never. */
export function nearestWord<W extends string>(
  words: readonly (readonly [W, share: number])[],
  counted: number,
  of: number,
): W | undefined {
  const odds = (share: number): number => Math.log(share / (1 - share));
  const wanted = odds((counted + 0.5) / (of + 1));
  const away = ([, share]: readonly [W, number]): number => Math.abs(odds(share) - wanted);
  return [...words].sort((a, b) => away(a) - away(b))[0]?.[0];
}

function sum(values: Iterable<number>): number {
  let total = 0;
  for (const value of values) total += value;
  return total;
}
