/** Hints and the small print of a calculator for a reader of other units. */
import { describe, expect, test } from 'vitest';
import { CALCULATORS } from '../../src/calculators/catalogue.ts';
import { textFor } from '../../src/calculators/reader-text.ts';
import { METRIC, US } from '../../src/model/habit.ts';

const us = (text: string) => textFor(text, US).replaceAll('\u00a0', ' ');

describe('a figure in a text', () => {
  // NIST SP 811 (2008): K = 1.8 °F apart, 1 bar = 14.5038 psi, 1 in = 25.4 mm; 100 °C = 212 °F.
  test.each([
    ['10 to 20 K less than what is in it', '18 to 36 °F less than what is in it'],
    ['within 3 K', 'within 5 °F'],
    ['At 20 °C', 'At 68 °F'],
    ['from −40 to 100 °C', 'from −40 to 212 °F'],
    ['from 0.05 bar on', 'from 0.7 psi on'],
    ['above 15 l it is', 'above 16 US qt it is'],
    // Of a conductivity, a flow or a head only the whole would make sense.
    ['rubber of 0.3 W/(m·K)', 'rubber of 0.3 W/(m·K)'],
    ['8 l/min', '8 l/min'],
    ['M8 in 12 mm²', 'M8 in 12 mm²'],
  ])('%s', (metric, other) => {
    expect(us(metric)).toBe(other);
    expect(textFor(metric, METRIC)).toBe(metric);
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
