/** Hints and the small print of a calculator for a reader of other units. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CALCULATORS } from '../../src/calculators/catalogue.ts';
import { METRIC, US } from '../../src/model/habit.ts';
import { textFor } from '../../src/model/reader-text.ts';

const us = (text: string) => textFor(text, US).replaceAll('\u00a0', ' ');

describe('a figure in a text', () => {
  // NIST SP 811 (2008): K = 1.8 °F apart, 1 bar = 14.5038 psi, 1 in = 25.4 mm; 100 °C = 212 °F.
  test.each([
    ['10 to 20 K less than what is in it', '18 to 36 °F less than what is in it'],
    ['within 3 K', 'within 5 °F'],
    ['such as 12 x 8 cm', 'such as 5 x 3 in'],
    ['At 20 °C', 'At 68 °F'],
    ['from −40 to 100 °C', 'from −40 to 212 °F'],
    ['from 0.05 bar on', 'from 0.7 psi on'],
    ['above 15 l it is', 'above 16 US qt it is'],
    // 1 US qt = 0.946353 l, 1 US gal = 3.78541 l, 1 mile = 1.609344 km, 1 ft = 0.3048 m, 1 lbf·in = 0.112985 N·m,
    // 1 lb = 0.45359 kg, 1 fl oz = 29.5735 ml; rounded by no more than 6 %.
    ['8 l/min', '2.1 US gal/min'],
    ['from 0.2 l over to 0.1 l under', 'from 0.2 US qt over to 0.1 US qt under'],
    ['a 0.1 to 0.5 l loss', 'a 0.1 to 0.5 US qt loss'],
    ['between 80 and 90 °C', 'between 176 and 194 °F'],
    ['span -36.4 to -39.9 °C', 'span −33.5 to −39.8 °F'],
    ['at 20, 60 and 100 °C', 'at 68, 140 and 212 °F'],
    ['87–90 °C or 80-82 °C', '189–194 °F or 176-180 °F'],
    ['88 ± 2 °C, ± 2 °C', '190 ± 3.6 °F, ± 3.6 °F'],
    ['80 to 100 km/h', '50 to 62 mph'],
    ['after 1,000 km', 'after 600 mi'],
    ['14,000 km ago', '9,000 mi ago'],
    ['at 1,500 m', 'at 5,000 ft'],
    ['a 1.4 bar cap', 'a 20 psi cap'],
    ['under 0.1 bar', 'under 1.5 psi'],
    ['10 N·m', '89 lbf·in'],
    ['2 to 25 N·m', '1.5 to 18.4 lbf·ft'],
    ['2 mm short', '0.08 in short'],
    ['loses 200 ml', 'loses 7 fl oz'],
    ['0.5 K/min', '0.9 °F/min'],
    ['(15 K and more)', '(27 °F and more)'],
    ['Measuring jug, 5 litres', 'Measuring jug, 5 quarts'],
    ['Ten kelvin under the lamp', '18 °F under the lamp'],
    ['ten to twenty kelvin', '18 to 36 °F'],
    ['gains some kelvin', 'gains some degrees'],
    ['two millimetres too short', '0.08 in too short'],
    ['two and a half metres', '8 ft'],
    ['Five kilometres a day', '3 miles a day'],
    ['up to half a litre', 'up to half a quart'],
    ['Two litres, six-litre system', 'Two quarts, six-quart system'],
    ['a tenth of a bar less', '1.5 psi less'],
    ['Litres drained', 'Quarts drained'],
    // Of a conductivity or a cable only the whole would make sense; a size that is a name stays one.
    ['rubber of 0.3 W/(m·K)', 'rubber of 0.3 W/(m·K)'],
    ['M8 in 12 mm²', 'M8 in 12 mm²'],
    ['a 10 mm head, a 13 mm socket', 'a 10 mm head, a 13 mm socket'],
    ['1.6 l petrol', '1.6 l petrol'],
    ['a bar through the eye', 'a bar through the eye'],
    ['fifty newton metres', 'fifty newton metres'],
    ['"12,345 l" may be read in two ways', '"12,345 l" may be read in two ways'],
    ['12 V, 30 A, 5 min, 50 %', '12 V, 30 A, 5 min, 50 %'],
  ])('%s', (metric, other) => {
    expect(us(metric)).toBe(other);
    expect(textFor(metric, METRIC)).toBe(metric);
  });

  test('is off by no more than its rounding, whatever the unit', () => {
    const factors = { l: 0.946353, bar: 0.0689476, mm: 25.4, m: 0.3048, ml: 29.5735, K: 5 / 9 };
    fc.assert(
      fc.property(
        fc.constantFrom(...(Object.keys(factors) as (keyof typeof factors)[])),
        fc.integer({ min: 1, max: 99_999 }),
        fc.integer({ min: 0, max: 2 }),
        (unit, digits, decimals) => {
          const metric = (digits / 10 ** decimals).toFixed(decimals);
          const shown = us(`falls by ${metric} ${unit} in a day`);
          const number = Number(/by ([\d.,]+) /.exec(shown)?.[1]?.replaceAll(',', ''));
          const exact = Number(metric) / factors[unit];
          expect(Math.abs(number - exact)).toBeLessThanOrEqual((unit === 'K' ? 0.08 : 0.06) * exact + 1e-6);
          // Read once, it is the reader's own: a second reading changes nothing.
          expect(us(shown)).toBe(shown);
        },
      ),
    );
  });

  test('no hint, label or method leaves kelvin or °C to a US reader', () => {
    for (const { inputs, method } of CALCULATORS) {
      const texts = [
        ...inputs.flatMap(({ label, hint = '' }) => [label, hint]),
        method.valid,
        method.error,
        ...method.sources,
      ];
      for (const text of texts) expect(us(text)).not.toMatch(/\d (K|°C)(?![\p{L}\d·/²³])/u);
    }
  });
});

test('a metric habit of another script changes nothing, nor does a unit that the reader keeps', () => {
  for (const text of ['± 1 K for coolant as bought', 'The answer comes in litres only.', 'at 82 °C'])
    expect(textFor(text, {})).toBe(text);
  expect(textFor('± 1 K at 20 °C', { volume: 'US qt' })).toBe('± 1 K at 20 °C');
});
