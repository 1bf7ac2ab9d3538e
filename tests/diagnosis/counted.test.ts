/** Counts beside words: the exact interval against printed ones, and the sums against a calculation by hand. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  chancesWithCounts,
  countsContradict,
  exactInterval,
  nearestWord,
  weighedWithCounts,
} from '../../src/diagnosis/counted.ts';

describe('the exact interval', () => {
  /** NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.4.1: 4 of 20 at 90 %, both limits printed to six digits; from memory. Its solver stops near 1e-6. */
  test('4 of 20 at 90 per cent as the handbook works it out', () => {
    const { low, high } = exactInterval(4, 20, 0.9);
    expect(low).toBeCloseTo(0.071354, 5);
    expect(high).toBeCloseTo(0.401029, 5);
  });

  /** Documenta Geigy, Scientific Tables, exact 95 % limits of a binomial share, per cent to two digits behind the point; from memory. */
  test.each([
    [1, 10, 0.25, 44.5],
    [2, 10, 2.52, 55.61],
    [3, 10, 6.67, 65.25],
    [5, 10, 18.71, 81.29],
    [4, 20, 5.73, 43.66],
    [16, 20, 56.34, 94.27],
  ])('%i of %i', (counted, of, low, high) => {
    const found = exactInterval(counted, of);
    expect(found.low * 100).toBeCloseTo(low, 2);
    expect(found.high * 100).toBeCloseTo(high, 2);
  });

  test('none and all in closed form: (1 - p)^n is half of what the confidence leaves', () => {
    for (const n of [1, 5, 20, 300]) {
      expect(exactInterval(0, n).low).toBe(0);
      expect(exactInterval(0, n).high).toBeCloseTo(1 - 0.025 ** (1 / n), 10);
      expect(exactInterval(n, n).low).toBeCloseTo(0.025 ** (1 / n), 10);
      expect(exactInterval(n, n).high).toBe(1);
    }
  });

  test('it holds the share that was counted, mirrors, and never grows with more of the same', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), fc.nat(400), (of, k) => {
        const counted = k % (of + 1);
        const { low, high } = exactInterval(counted, of);
        expect(low).toBeLessThanOrEqual(counted / of);
        expect(high).toBeGreaterThanOrEqual(counted / of);
        const mirrored = exactInterval(of - counted, of);
        expect(mirrored.low).toBeCloseTo(1 - high, 9);
        const more = exactInterval(3 * counted, 3 * of);
        expect(more.high - more.low).toBeLessThanOrEqual(high - low + 1e-9);
      }),
      { numRuns: 60 },
    );
  });
});

describe('words and counts together', () => {
  const byWords = {
    weights: new Map([
      ['open', 27],
      ['sensor', 9],
    ]),
    somethingElse: 0.03,
  };

  test('twenty jobs by hand', () => {
    // By the words: 0.97 × 27 / 36 = 0.7275 and 0.97 × 9 / 36 = 0.2425; worth 20 cases: 14.55, 4.85 and 0.6.
    // Counted 4 and 16: (14.55 + 4) / 40 and (4.85 + 16) / 40; something else 0.6 / 40.
    const { weights, somethingElse } = weighedWithCounts(byWords, { open: 4, sensor: 16 });
    expect(weights.get('open')).toBeCloseTo(0.46375, 12);
    expect(weights.get('sensor')).toBeCloseTo(0.52125, 12);
    expect(somethingElse).toBeCloseTo(0.015, 12);
  });

  test('a cause that the complaint does not list counts for something else', () => {
    // (0.6 + 5) / 25
    expect(weighedWithCounts(byWords, { stranger: 5 }).somethingElse).toBeCloseTo(0.224, 12);
  });

  test('nothing counted leaves the words, ever more counted leaves the counts', () => {
    expect(weighedWithCounts(byWords, {})).toBe(byWords);
    const { weights } = weighedWithCounts(byWords, { open: 10_000, sensor: 30_000 });
    expect(weights.get('sensor')).toBeCloseTo(0.75, 3);
  });

  test('chances of a reading by hand; what cannot be stays impossible', () => {
    // Worth 10 cases: (8.3 + 1) / 14 and (1.7 + 3) / 14.
    const [usually, seldom] = chancesWithCounts([0.83, 0.17], [1, 3]);
    expect(usually).toBeCloseTo(9.3 / 14, 12);
    expect(seldom).toBeCloseTo(4.7 / 14, 12);
    expect(chancesWithCounts([0, 1], [3, 2])).toEqual([0, 1]);
  });

  test('no single job contradicts a word, nor does it tip the scale', () => {
    expect(countsContradict(0.001, 1, 1)).toBe(false);
    expect(countsContradict(0.999, 0, 1)).toBe(false);
    // 2 of 10 allow 2.5 % or more; without one of the two 1 of 9 allows 0.3 %.
    expect(countsContradict(0.01, 2, 10)).toBe(false);
    // 4 of 20 allow at most 43.7 %, 4 of 19 at most 45.6 %.
    expect(countsContradict(0.7275, 4, 20)).toBe(true);
    expect(countsContradict(0.445, 4, 20)).toBe(false);
  });

  test('the nearest word in odds', () => {
    const words = [
      ['usually', 0.83],
      ['often', 0.66],
      ['never', 0.02],
    ] as const;
    expect(nearestWord(words, 7, 10)).toBe('often');
    expect(nearestWord(words, 0, 10)).toBe('never');
    expect(nearestWord(words, 10, 10)).toBe('usually');
  });
});
