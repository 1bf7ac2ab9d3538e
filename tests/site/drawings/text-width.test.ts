import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { widthOf, wrapText } from '../../../src/site/drawings/text-width.ts';

describe('text width', () => {
  // Helvetica's advance widths as in Adobe's Core 14 font metrics (Helvetica.afm), from memory; Liberation Sans was
  // made to the same widths. Expected with no room added.
  test.each([
    ['Thermostat', 611 + 556 + 556 + 333 + 833 + 556 + 500 + 278 + 556 + 278],
    ['88 °C', 556 + 556 + 278 + 400 + 722],
    ['By-pass', 667 + 500 + 333 + 556 + 556 + 500 + 500],
  ])('%s is no narrower than in Helvetica and no more than a tenth wider', (text, thousandths) => {
    const width = widthOf(text, 1000);
    expect(width).toBeGreaterThan(thousandths);
    expect(width).toBeLessThan(thousandths * 1.1);
  });

  test('wrapping loses no letter and no line is too wide', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 80 }), fc.integer({ min: 30, max: 300 }), (text, width) => {
        const lines = wrapText(text, width, 12);
        expect(lines.join('').replace(/ /g, '')).toBe(text.replace(/ /g, ''));
        for (const each of lines) expect(widthOf(each, 12)).toBeLessThanOrEqual(width);
      }),
    );
  });

  test('lines break at spaces and after hyphens', () => {
    expect(wrapText('map-controlled thermostat', 75, 12)).toEqual(['map-', 'controlled', 'thermostat']);
  });
});
