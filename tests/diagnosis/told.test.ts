import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { beliefOf } from '../../src/diagnosis/belief.ts';
import { compile } from '../../src/diagnosis/compiled.ts';
import { posterior } from '../../src/diagnosis/posterior.ts';
import { TOLD_WORDS, toldFactors, toldFaults, toldTogether } from '../../src/diagnosis/told.ts';
import { modelOf, yesNo } from './make-model.ts';

const FAN = [
  { is: 'No fan', of: { c1: 'often', c2: 'seldom' } },
  { is: 'A fan', of: {} },
] as const;

const compiled = compile(modelOf([1, 1, 1], [5, 5, 5], 60, [yesNo('look', 5, [0.9, 0.1, 0.5, 0.5])], 0.1));
const shareOf = (cause: string, told: Record<string, number>, evidence: [string, string][] = []): number =>
  posterior(compiled, {
    evidence: evidence.map(([id, outcome]) => ({ test: id, outcome })),
    told,
  }).ranked.find((each) => each.cause === cause)?.share ?? Number.NaN;

describe('what a customer answers', () => {
  test('is weighed against a cause of which it tells nothing', () => {
    // By hand: of two answers 0.66 and 0.34 under c1, 0.17 and 0.83 under c2, a half each under any other.
    expect(toldFactors(FAN)).toEqual([
      { c1: 1.32, c2: 0.34 },
      { c1: 0.68, c2: 1.66 },
    ]);
  });

  test('moves the causes by Bayes’ rule, something else too', () => {
    // By hand: 0.3 × 1.32 / (0.3 × 1.32 + 0.3 × 0.34 + 0.3 + 0.1) = 0.441.
    expect(shareOf('c1', { c1: 1.32, c2: 0.34 })).toBeCloseTo(0.441, 3);
  });

  test('stands beside a test’s finding, in any order, and a reload gives the same', () => {
    const [no = {}] = toldFactors(FAN);
    const once = shareOf('c1', toldTogether([no]), [['look', 'yes']]);
    // By hand: 0.3 × 1.32 × 0.9 / (0.3 × 1.32 × 0.9 + 0.3 × 0.34 × 0.1 + 0.3 × 0.5 + 0.1 × 0.5) = 0.629.
    expect(once).toBeCloseTo(0.629, 3);
    expect(shareOf('c1', toldTogether([{}, no]), [['look', 'yes']])).toBe(once);
  });

  test('is weaker than a test: two causes come apart by four at most', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 4 }),
        fc.array(fc.tuple(fc.constantFrom('c1', 'c2', 'c3'), fc.nat(3), fc.constantFrom(...TOLD_WORDS)), {
          maxLength: 6,
        }),
        (count, said) => {
          const answers = Array.from({ length: count }, (_, at) => ({
            is: String(at),
            of: Object.fromEntries(
              said.flatMap(([cause, to, word]) => (to % count === at ? [[cause, word] as const] : [])),
            ),
          }));
          fc.pre(toldFaults(answers).length === 0);
          for (const factors of toldFactors(answers)) {
            const all = [1, ...Object.values(factors)];
            for (const factor of all) expect(factor).toBeGreaterThan(0);
            // Rounded factors; an answer that is left out of a row has what the others leave.
            expect(Math.max(...all)).toBeLessThanOrEqual(4);
          }
        },
      ),
    );
  });

  test('proves nothing by itself, however much is told', () => {
    const much = toldTogether(Array.from({ length: 12 }, () => ({ c1: 2.64, c2: 0.34, c3: 0.34 })));
    expect(beliefOf(compiled, { evidence: [], told: much })).toMatchObject({ proven: undefined, found: [] });
  });

  test('is of no use where its shares contradict each other', () => {
    const answers = [
      { is: 'Yes', of: { c1: 'often' } },
      { is: 'No', of: { c1: 'often' } },
    ] as const;
    expect(toldFaults(answers)).toEqual([{ cause: 'c1', fault: { kind: 'too-much', sum: 1.32 } }]);
    expect(toldFactors(answers)).toEqual([{}, {}]);
  });
});
