/** Quantities: any text is read or refused in words, and never read as no number. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { METRIC, US } from '../../src/model/habit.ts';
import { readQuantity } from '../../src/model/quantity.ts';
import { quantityText } from '../../src/model/show-quantity.ts';
import { UNITS } from '../../src/model/units.ts';
import { readLitres } from '../../src/site/job/page/litres.ts';
import { hostileText, LIMIT, runs, UNCLEAN } from './runs.ts';

const DIMENSIONS = [...new Set(UNITS.map((unit) => unit.dimension))];
const SYMBOLS = UNITS.map(({ symbol }) => symbol);
const PIECES = [
  '1',
  '0',
  '9.5',
  '.',
  ',',
  '-',
  '−',
  '±',
  '+/-',
  ' to ',
  '–',
  '—',
  ' ',
  '+',
  'e5',
  '0x1',
  '007',
  '½',
  '٣',
  '９',
  'NaN',
  'Infinity',
  '1e999',
  '9'.repeat(320),
  ...SYMBOLS,
];

const anyText = fc.oneof(
  { weight: 5, arbitrary: fc.array(fc.constantFrom(...PIECES), { maxLength: 8 }).map((all) => all.join('')) },
  {
    weight: 2,
    arbitrary: fc.tuple(fc.double(), fc.constantFrom(...SYMBOLS)).map(([value, unit]) => `${value} ${unit}`),
  },
  { weight: 1, arbitrary: hostileText },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 200 }) },
);

test('any text: a finite quantity that can be shown, or a plain message', { timeout: LIMIT }, () => {
  fc.assert(
    fc.property(
      anyText,
      fc.constantFrom(...DIMENSIONS),
      fc.option(fc.constantFrom(...SYMBOLS), { nil: undefined }),
      (text, dimension, assume) => {
        const result = readQuantity(text, dimension, assume);
        if (result.ok) {
          const { low, high } = result.quantity;
          expect(Number.isFinite(low) && Number.isFinite(high)).toBe(true);
          expect(high).toBeGreaterThanOrEqual(low);
          for (const habit of [METRIC, US]) expect(quantityText(result.quantity, habit)).not.toMatch(UNCLEAN);
        } else {
          expect(result.fault.found).not.toBe('');
          expect(result.fault.expected).not.toBe('');
          // The text itself may be quoted; ours is the rest.
          expect(result.fault.found.replace(text.trim(), '')).not.toMatch(/undefined|\[object/);
        }
        const litres = readLitres(text);
        if (litres !== undefined) expect(litres).toBeGreaterThan(0);
      },
    ),
    // Found by a long run: more decimals than can be written.
    { ...runs(5000), examples: [[`9.5${'9'.repeat(300)}`, 'torque', 'lbf·in']] },
  );
});
