import { bandsOf, type Limit } from '../../model/scale.ts';
import { findUnit, fromSI } from '../../model/units.ts';
import type { Fault } from '../finding.ts';
import type { ShelfRule } from '../rule.ts';

/**
 * A reading that names a number in the scale's unit which is none of its own limits: the text says one thing and the
 * typed value another. A number of something else wants another unit, or another sentence.
 */
export const readingNamesOtherLimit: ShelfRule = {
  id: 'reading-names-other-limit',
  level: 'warning',
  on: 'shelf',
  check: ({ records }) =>
    [...records.test.values()].flatMap(({ file, data }) => {
      const symbol = data.scale?.unit;
      if (symbol === undefined) return [];
      return bandsOf(data).flatMap(({ outcome, from, to }) => {
        const own = [from, to].flatMap((limit) => (limit ? [limit] : []));
        const reading = data.outcomes[outcome]?.reading ?? '';
        const other = numbersIn(reading, symbol).find(
          ({ value }) => !own.some((limit) => names(limit, symbol, value)),
        );
        if (!other) return [];
        const fault: Fault = {
          at: { file, path: ['outcomes', outcome, 'reading'], within: other.text },
          found: `The reading names ${other.text}, and the outcome has ${own.map((limit) => limit.text).join(' and ')}.`,
          expected: 'The text and the limits say the same.',
          byHand: 'write the limit into the text, or the text into the limit',
        };
        return [fault];
      });
    }),
};

/** Numbers with the scale's unit behind them; of a range both. A temperature is also gone up and down from in K. */
function numbersIn(text: string, symbol: string): { text: string; value: number }[] {
  const units = symbol === '°C' ? ['°C', 'K'] : [symbol];
  const behind = units.map((unit) => unit.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')).join('|');
  const form = new RegExp(
    `(?:(\\d+(?:\\.\\d+)?)\\s*(?:to|–|or)\\s*)?(\\d+(?:\\.\\d+)?)\\s?(?:${behind})(?![\\p{L}·/²])`,
    'gu',
  );
  return [...text.matchAll(form)].flatMap(([whole, first, second]) =>
    [first, second].flatMap((each) => (each === undefined ? [] : [{ text: whole, value: Number(each) }])),
  );
}

/** Whether a number in a text is the limit, or what the limit goes up or down by from a figure. */
function names({ plus, unit }: Limit, symbol: string, value: number): boolean {
  const written = findUnit(unit ?? symbol);
  return written !== undefined && Math.abs(Math.abs(fromSI(plus, written)) - value) < 1e-9;
}
