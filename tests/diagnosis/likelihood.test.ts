import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { completeMatrix, completeRow, describeRowFault } from '../../src/diagnosis/likelihood.ts';
import { LIKELIHOOD_WORDS, type LikelihoodWord } from '../../src/diagnosis/words.ts';

const outcomes = ['warm-early', 'warm-on-time', 'stays-cold'];

function distribution(row: Record<string, LikelihoodWord | number>): number[] {
  const completed = completeRow(outcomes, row);
  if (!completed.ok) throw new Error(describeRowFault(completed.fault, outcomes));
  return completed.distribution;
}

function fault(row: Record<string, LikelihoodWord | number>): string {
  const completed = completeRow(outcomes, row);
  return completed.ok ? 'no fault' : describeRowFault(completed.fault, outcomes);
}

function expectClose(actual: readonly number[], wanted: readonly number[]): void {
  expect(actual).toHaveLength(wanted.length);
  actual.forEach((value, at) => {
    expect(value).toBeCloseTo(wanted[at] ?? Number.NaN, 9);
  });
}

describe('completing a row of evidence', () => {
  test('outcomes not named share what is left', () => {
    expectClose(distribution({ 'warm-early': 'nearly always' }), [0.92, 0.04, 0.04]);
    expectClose(
      distribution({ 'warm-early': 'hardly ever', 'stays-cold': 'hardly ever' }),
      [0.08, 0.84, 0.08],
    );
    expectClose(distribution({}), [1 / 3, 1 / 3, 1 / 3]);
  });

  test('words that nearly fill the row are scaled to fill it', () => {
    expectClose(
      distribution({ 'warm-early': 'often', 'warm-on-time': 'sometimes', 'stays-cold': 'seldom' }),
      [0.66 / 1.17, 0.34 / 1.17, 0.17 / 1.17],
    );
  });

  test('an outcome nobody called impossible stays possible', () => {
    const row = distribution({ 'warm-early': 'usually', 'warm-on-time': 'seldom' });
    expect(row[2]).toBeGreaterThan(0.004);
  });

  test('cannot and must are kept as zero and one', () => {
    expectClose(distribution({ 'warm-early': 'cannot' }), [0, 0.5, 0.5]);
    expectClose(distribution({ 'warm-early': 'must' }), [1, 0, 0]);
    expectClose(distribution({ 'warm-early': 'must', 'stays-cold': 'cannot' }), [1, 0, 0]);
  });

  test('a row that contradicts itself says how', () => {
    expect(fault({ 'warm-early': 'always', 'stays-cold': 'usually' })).toBe(
      'The outcomes named add up to 181 % of the cars. Lower one of them.',
    );
    expect(fault({ 'warm-early': 'seldom', 'warm-on-time': 'seldom', 'stays-cold': 'seldom' })).toBe(
      'All outcomes are named and add up to 51 % of the cars only. Raise one, or leave one out: it takes what is left.',
    );
    expect(fault({ 'warm-early': 'must', 'stays-cold': 'seldom' })).toBe(
      '"warm-early" must be seen, so "stays-cold" cannot be. Write "always" for the first, or "cannot" for the second.',
    );
    expect(fault({ 'warm-erly': 'always' })).toBe(
      'The test has no outcome "warm-erly". It has: warm-early, warm-on-time, stays-cold.',
    );
    expect(fault({ 'warm-early': 1.2 })).toBe(
      '"warm-early" is given as 1.2. Write a frequency word, or a number from 0 to 1.',
    );
    expect(fault({ 'warm-early': Number.NaN })).toContain('NaN');
  });

  test('any row is a distribution or a fault, and named order is kept', () => {
    const word = fc.constantFrom(...(Object.keys(LIKELIHOOD_WORDS) as LikelihoodWord[]));
    fc.assert(
      fc.property(
        fc.dictionary(
          fc.constantFrom(...outcomes),
          fc.oneof(word, fc.double({ min: 0, max: 1, noNaN: true })),
        ),
        (row) => {
          const completed = completeRow(outcomes, row);
          if (!completed.ok) return describeRowFault(completed.fault, outcomes).length > 20;
          const sum = completed.distribution.reduce((total, share) => total + share, 0);
          expect(sum).toBeCloseTo(1, 12);
          for (const [at, outcome] of outcomes.entries())
            if (
              row[outcome] === undefined &&
              !Object.values(row).some((value) => value === 'must' || value === 1)
            )
              expect(completed.distribution[at]).toBeGreaterThan(0);
          return true;
        },
      ),
    );
  });
});

describe('the table of one test', () => {
  test('causes not mentioned and something else take the otherwise row', () => {
    const made = completeMatrix(
      outcomes,
      ['thermostat-stuck-open', 'coolant-low'],
      { 'thermostat-stuck-open': { 'warm-early': 'nearly always' }, 'of-another-symptom': {} },
      { 'warm-on-time': 'usually' },
    );
    if (!made.ok) throw new Error('faults');
    expectClose(made.likelihood[0] ?? [], [0.92, 0.085, 0.085]);
    expectClose(made.likelihood[1] ?? [], [0.04, 0.83, 0.83]);
  });

  test('all faults are reported, each with its cause', () => {
    const made = completeMatrix(
      outcomes,
      ['a', 'b'],
      { a: { 'warm-early': 'always', 'stays-cold': 'always' }, b: { cold: 'always' } },
      { 'warm-early': 2 },
    );
    expect(made.ok).toBe(false);
    if (!made.ok) expect(made.faults.map((one) => one.cause)).toEqual(['otherwise', 'a', 'b']);
  });

  test('a cause called like an object property has no row by accident', () => {
    const made = completeMatrix(outcomes, ['constructor'], {}, {});
    expect(made.ok && made.likelihood[0]?.[0]).toBeCloseTo(1 / 3, 12);
  });
});
