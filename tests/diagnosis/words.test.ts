import { describe, expect, test } from 'vitest';
import { LIKELIHOOD_WORDS, likelihoodOf, PRIOR_WORDS, weightOf } from '../../src/diagnosis/words.ts';
import { published } from './published.ts';

const scales = published.proposedScales;

describe('frequency words', () => {
  // Our own scale as proposed with the worked examples, its sources named there; YAML writes a space for the hyphen.
  test('likelihood words carry the proposed numbers', () => {
    for (const [word, value] of Object.entries(scales.likelihoodWords)) {
      const written = word === 'half' ? 'half the time' : word.replace('-', ' ');
      expect(LIKELIHOOD_WORDS, word).toHaveProperty([written], value);
    }
    expect(Object.keys(LIKELIHOOD_WORDS)).toHaveLength(Object.keys(scales.likelihoodWords).length);
  });

  test('a word and its opposite add up to one', () => {
    const opposites = [
      ['always', 'never'],
      ['nearly always', 'hardly ever'],
      ['usually', 'seldom'],
      ['often', 'sometimes'],
      ['half the time', 'half the time'],
      ['must', 'cannot'],
    ] as const;
    for (const [one, other] of opposites) expect(likelihoodOf(one) + likelihoodOf(other)).toBeCloseTo(1, 12);
  });

  test('prior weights fall in steps of three', () => {
    expect(Object.values(PRIOR_WORDS).map((weight) => weight.toFixed(6))).toEqual(
      Object.values(scales.priorWeights).map((weight) => weight.toFixed(6)),
    );
    expect(weightOf('commonest') / weightOf('very rare')).toBeCloseTo(81, 9);
  });

  // Rohrmann, Verbal qualifiers for rating scales (data 2000): measured means, rescaled from 0..10 to 0..1.
  test('words shared with Rohrmann stay within .03 of his means', () => {
    const rohrmann = published.entry('scale-frequency-rohrmann').expected;
    for (const word of ['never', 'seldom', 'sometimes', 'often', 'always'] as const)
      expect(Math.abs(likelihoodOf(word) - Number(rohrmann[word])), word).toBeLessThanOrEqual(0.03);
    expect(likelihoodOf('usually')).toBe(rohrmann['very often']);
  });

  // Mosteller and Youtz 1990: a modifier leaves half the distance to the nearer end.
  test('each stronger word halves the distance to certain', () => {
    const rule = published.entry('scale-modifier-rule');
    expect(Math.abs(likelihoodOf('usually') - Number(rule.expected['very often']))).toBeLessThanOrEqual(
      rule.tolerance,
    );
    expect(Math.abs(likelihoodOf('nearly always') - Number(rule.expected.doubly))).toBeLessThanOrEqual(
      rule.tolerance + 1e-12,
    );
  });

  // Renooij and Witteman 1999, validated with doctors in 2007.
  test('words stand within .02 of the scale of Renooij and Witteman', () => {
    const { expected } = published.entry('scale-witteman-renooij');
    const alike = [
      ['must', 'certain'],
      ['usually', 'probable'],
      ['half the time', 'fifty-fifty'],
      ['seldom', 'improbable'],
      ['cannot', 'impossible'],
    ] as const;
    for (const [ours, theirs] of alike)
      expect(Math.abs(likelihoodOf(ours) - Number(expected[theirs])), ours).toBeLessThanOrEqual(0.02 + 1e-12);
  });

  // IPCC guidance note on uncertainty 2010, table 1.
  test('words fall into the bands of the IPCC that a reader would expect', () => {
    const { expected } = published.entry<unknown, Record<string, [number, number]>>('scale-ipcc');
    const alike = [
      ['nearly always', 'very likely'],
      ['usually', 'likely'],
      ['often', 'likely'],
      ['half the time', 'about as likely as not'],
      ['seldom', 'unlikely'],
      ['hardly ever', 'very unlikely'],
    ] as const;
    for (const [ours, theirs] of alike) {
      const [low, high] = expected[theirs] ?? [2, 2];
      expect(likelihoodOf(ours), ours).toBeGreaterThanOrEqual(low);
      expect(likelihoodOf(ours), ours).toBeLessThanOrEqual(high);
    }
  });

  // EU guideline on the summary of product characteristics: five bands, a decade a step. Ours takes half a decade.
  test('two steps of the prior are about one step of the regulatory bands, five words each', () => {
    const { expected } = published.entry('scale-regulatory-frequency');
    expect(Object.keys(PRIOR_WORDS)).toHaveLength(Object.keys(expected).length);
    expect(weightOf('commonest') / weightOf('occasional')).toBeCloseTo(9, 9);
    expect(Math.abs(Math.log10(weightOf('commonest') / weightOf('occasional')) - 1)).toBeLessThan(0.05);
  });

  test('a number is taken as it is', () => {
    expect(likelihoodOf(0.4)).toBe(0.4);
    expect(weightOf(5)).toBe(5);
  });
});
