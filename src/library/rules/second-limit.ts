import type { CalculatorId } from '../../model/calculator-ids.ts';
import { CALCULATOR_LIMITS, type CalculatorLimits } from '../calculator-limits.ts';
import type { Fault } from '../finding.ts';
import type { ShelfRule } from '../rule.ts';

/**
 * A reading of a test that shows a calculator names a limit which is none of the calculator's: the same reading would be
 * sound by one and a fault by the other.
 */
export const secondLimit: ShelfRule = {
  id: 'second-limit',
  level: 'warning',
  on: 'shelf',
  check: ({ records }) =>
    [...records.test.values()].flatMap(({ file, data }) => {
      const shown = new Set<CalculatorId>([
        ...(data.calculators ?? []),
        ...data.steps.flatMap((step) =>
          typeof step === 'string' || step.calculator === undefined ? [] : [step.calculator],
        ),
      ]);
      return [...shown].flatMap((id) => {
        const limits = CALCULATOR_LIMITS[id];
        if (limits === undefined) return [];
        return Object.entries(data.outcomes).flatMap(([outcome, { reading }]) =>
          numbersIn(reading, limits).map(
            (text): Fault => ({
              at: { file, path: ['outcomes', outcome, 'reading'], within: text },
              found: `The reading names ${text}, and the calculator ${id} shown with it goes by ${limits.values.map((each) => `${each} ${limits.symbol}`).join(', ')}.`,
              expected: 'Record and calculator judge by one limit.',
              byHand: 'write the calculator’s limit, or change it where both take it from, in src/physics',
            }),
          ),
        );
      });
    }),
};

/** Numbers in the limits' unit and range that are none of them. */
function numbersIn(text: string, { symbol, below, values }: CalculatorLimits): string[] {
  const form = new RegExp(`(\\d+(?:\\.\\d+)?)\\s?${symbol}(?![\\p{L}·/²])`, 'gu');
  return [...text.matchAll(form)].flatMap(([whole, number]) => {
    const value = Number(number);
    return value < below && !values.includes(value) ? [whole] : [];
  });
}
