import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { tellingWords, wordsOf } from '../../../src/site/search/words.ts';

describe('a reader’s words become the words of the index', () => {
  test.each([
    ['P 0128', ['p0128']],
    ['code p-0128 set', ['code', 'p0128', 'set']],
    ['P01 28', ['p0128']],
    ['p128', ['p0128']],
    ['P 217', ['p0217']],
    ['P1234', ['p1234']],
    ['U0100 and C1234', ['u0100', 'and', 'c1234']],
    ['1.4bar', ['1‿4', 'bar']],
    ['1,4 bar', ['1‿4', 'bar']],
    ['1,500 rpm', ['1500', 'rpm']],
    ['88C', ['88', '°c']],
    ['88 degrees C', ['88', '°c']],
    ['10 N·m', ['10', 'nm']],
    ['10 N m', ['10', 'nm']],
    ['2.5kΩ', ['2‿5', 'kω']],
    ["won’t / won't", ['wont']],
    ['“by-pass”, closed.', ['by-pass', 'closed']],
    ['  ', []],
    ['?!', []],
  ])('%s', (text, words) => {
    expect(wordsOf(text)).toEqual(words);
  });

  test('a P4 engine or a size is not taken for a code', () => {
    expect(wordsOf('P4 engine, M8 x 25')).toEqual(['p4', 'engine', 'm8', 'x', '25']);
  });

  test('any text gives words without blanks, and its own words again', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 60 }), (text) => {
        const words = wordsOf(text);
        for (const word of words) expect(word).not.toMatch(/\s/);
        expect(new Set(words).size).toBe(words.length);
      }),
    );
  });
});

describe('telling words', () => {
  test('the filling of a customer’s sentence goes', () => {
    expect(tellingWords('Please, my car is getting hot when I am in the traffic')).toEqual([
      'hot',
      'am',
      'traffic',
    ]);
  });
  test('a sentence of filling alone is kept', () => {
    expect(tellingWords('it takes forever to get warm')).toEqual(['takes', 'warm']);
    expect(tellingWords('it is not on')).toEqual(['it', 'is', 'not', 'on']);
  });
});
