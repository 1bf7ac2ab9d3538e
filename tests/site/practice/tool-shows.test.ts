/** No tool shows more than it can. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { asToolShows, handSays } from '../../../src/site/practice/tool-shows.ts';

test('a hand has words, a scan tool whole degrees, a thermometer halves', () => {
  expect(asToolShows('61.4 °C', [])).toBe('too hot to hold');
  expect(asToolShows('46.3 °C at the hose', ['inspection-lamp'])).toBe('warm, you can hold it at the hose');
  expect(asToolShows('61.4 °C', ['scan-tool'])).toBe('61 °C');
  expect(asToolShows('61.4 °C in, 49.6 °C out', ['infrared-thermometer'])).toBe('61 °C in, 50 °C out');
  expect(asToolShows('61.3 °C', ['contact-thermometer', 'scan-tool'])).toBe('61.5 °C');
  expect(asToolShows('−4.4 K', ['scan-tool'])).toBe('−4 K');
});

test('what is no temperature stays as it is', () => {
  for (const reads of ['0.35 bar in 15 min', '2.4 kΩ', '12.6 V', 'P0128', '4.6 kW'])
    expect(asToolShows(reads, ['scan-tool'])).toBe(reads);
});

test('no degree is left in what a hand says', () => {
  fc.assert(
    fc.property(fc.double({ min: -40, max: 130, noNaN: true }), (celsius) => {
      expect(asToolShows(`${celsius.toFixed(1)} °C`, [])).not.toMatch(/\d/);
      expect(handSays(celsius)).not.toBe('');
    }),
  );
});
