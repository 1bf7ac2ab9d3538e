/** A text of a record where no markup can stand: in lists, descriptions, drawings. */
import { expect, test } from 'vitest';
import { plainText } from '../../../src/site/text/render-text.ts';

test('a general figure stands without the word beside it, close to the full stop', () => {
  expect(plainText('It opens ten degrees above {thermostat.opens}. Then it sticks.')).toMatch(
    /^It opens ten degrees above \d+ – \d+ °C\. Then it sticks\.$/,
  );
});

test('signs that markup would eat come back as they were written', () => {
  expect(plainText('a "cap" & 2 < 3 > 1')).toBe('a "cap" & 2 < 3 > 1');
});
