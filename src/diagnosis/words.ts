/**
 * How often a reading is seen under a cause, as a probability. Symmetric: a word and its opposite add up
 * to one, so that the same fact said the other way round gives the same number.
 *
 * Built from the measured means of Rohrmann's verbal qualifiers (seldom .17, often .66, very often .83) and
 * the half-distance rule of Mosteller and Youtz 1990, Statistical Science 5:2-34.
 * `cannot` and `must` are for physical impossibility only: no later finding can outweigh them.
 */
export const LIKELIHOOD_WORDS = {
  cannot: 0,
  never: 0.02,
  'hardly ever': 0.08,
  seldom: 0.17,
  sometimes: 0.34,
  'half the time': 0.5,
  often: 0.66,
  usually: 0.83,
  'nearly always': 0.92,
  always: 0.98,
  must: 1,
} as const;

export type LikelihoodWord = keyof typeof LIKELIHOOD_WORDS;

/** How often a cause is behind a symptom, as a weight beside the other causes. Steps of three. */
export const PRIOR_WORDS = {
  commonest: 27,
  common: 9,
  occasional: 3,
  rare: 1,
  'very rare': 1 / 3,
} as const;

export type PriorWord = keyof typeof PRIOR_WORDS;

/** Probability, 0 to 1, of a likelihood word; a number is handed back as it is. */
export function likelihoodOf(word: LikelihoodWord | number): number {
  return typeof word === 'number' ? word : LIKELIHOOD_WORDS[word];
}

/** Weight of a prior word; a number is handed back as it is. */
export function weightOf(word: PriorWord | number): number {
  return typeof word === 'number' ? word : PRIOR_WORDS[word];
}
