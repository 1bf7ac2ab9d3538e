import { describe, expect, test } from 'vitest';
import { shareInWords, sharesInWords } from '../../../src/site/text/share-words.ts';

test('a share is counted in cars', () => {
  expect([0.98, 0.9, 0.66, 0.12, 0.1].map(shareInWords)).toEqual([
    'nearly always',
    '9 of 10',
    '7 of 10',
    '1 of 10',
    '1 of 10',
  ]);
  expect([0.07, 0.03].map(shareInWords)).toEqual(['1 of 14', '1 of 33']);
});

describe('a row of evidence', () => {
  test('words and numbers come out alike, the most seen first, and what is open is shared', () => {
    expect(sharesInWords(['early', 'late', 'never'], { late: 'sometimes', early: 0.5 })).toEqual([
      { key: 'early', words: '5 of 10' },
      { key: 'late', words: '3 of 10' },
      { key: 'never', words: '2 of 10' },
    ]);
  });

  test('what is hardly seen is left out', () => {
    expect(sharesInWords(['yes', 'no'], { yes: 'always' })).toEqual([{ key: 'yes', words: 'nearly always' }]);
  });

  test('one that contradicts itself is refused', () => {
    expect(() => sharesInWords(['yes', 'no'], { yes: 0.9, no: 0.9 })).toThrow('does not add up');
  });
});
