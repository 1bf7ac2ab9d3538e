/** What a result shows beside its title. */
import { describe, expect, test } from 'vitest';
import { excerptOf } from '../../../../src/site/search/page/excerpt.ts';
import { matchedName } from '../../../../src/site/search/page/matched-name.ts';
import { sayFound } from '../../../../src/site/search/page/say-found.ts';

describe('the excerpt', () => {
  const text = Array.from({ length: 100 }, (_, at) => `w${at}`).join(' ');
  test('stands where most of the words are together, and marks them', () => {
    const runs = excerptOf(text, [3, 60, 62, 70]);
    const shown = runs.map((run) => run.text).join(' ');
    expect(shown.startsWith('… w56 ')).toBe(true);
    expect(shown.endsWith(' w79 …')).toBe(true);
    expect(runs.filter((run) => run.mark).map((run) => run.text)).toEqual(['w60', 'w62', 'w70']);
  });
  test('is the beginning of the page when no word is in its text', () => {
    expect(excerptOf('Open it cold.', [])).toEqual([{ text: 'Open it cold.', mark: false }]);
  });
  test('begins behind the title, which stands above it', () => {
    expect(excerptOf('Cap weak. The spring of the cap', [0, 6], 'Cap weak')).toEqual([
      { text: 'The spring of the', mark: false },
      { text: 'cap', mark: true },
    ]);
  });
  test('shows brackets and decimal points as they were written', () => {
    expect(excerptOf('below &lt;1‿4 bar&gt;', [])).toEqual([{ text: 'below <1.4 bar>', mark: false }]);
  });
});

describe('the other name that was meant', () => {
  const meta = { title: 'No cabin heat', said: 'no warm air · heater blows cold', codes: 'P0128 · P0125' };
  test.each([
    [['heater', 'blow', 'cold'], ['said'], { how: 'customers say', text: 'heater blows cold' }],
    [['p0128'], ['codes'], { how: 'goes with code', text: 'P0128' }],
    [['cabin', 'heat'], ['title', 'said'], undefined],
  ])('%s', (words, fields, name) => {
    expect(matchedName(meta, fields, words)).toEqual(name);
  });
});

describe('what was found, in words', () => {
  test.each([
    [{ count: 1, mended: [], unknown: [] }, '1 result.'],
    [{ count: 3, mended: [], unknown: [] }, '2 of 3 results, the best first.'],
    [
      { count: 1, mended: [{ from: 'stat', to: 'seat' }], unknown: ['zz'] },
      '1 result. Read “stat” as “seat”. No page has “zz”; looked for the rest.',
    ],
    [
      { count: 0, mended: [], unknown: ['zz'] },
      'Nothing found. Try a part, a code, or one word of what the customer said.',
    ],
    [
      { count: 0, mended: [], unknown: ['p1234'] },
      'P1234 is not on this shelf. Look up what it means in the maker’s list, and walk what the car does.',
    ],
  ])('%#', (found, sentence) => {
    expect(sayFound(found, 2)).toBe(sentence);
  });
});
