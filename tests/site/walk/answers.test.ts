import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readAnswers, withAnswer, writeAnswers } from '../../../src/site/walk/answers.ts';

const anything = () => true;
const word = fc.stringMatching(/^[a-z][a-z0-9.-]{0,20}$/);
const outcome = fc.stringMatching(/^[a-z][a-z0-9 ,-]{0,20}$/);

test('answers come back from the address as they were written, in their order', () => {
  fc.assert(
    fc.property(
      fc.uniqueArray(fc.tuple(word, outcome), { selector: ([key]) => key, maxLength: 20 }),
      (pairs) => {
        expect([...readAnswers(`#${writeAnswers(new Map(pairs))}`, anything)]).toEqual(pairs);
      },
    ),
  );
});

test('an anchor of the page is not taken for an answer', () => {
  expect(readAnswers('#step-level', anything).size).toBe(0);
});

test('an answer given again comes last; without a value it is taken back, and what was given before stays as it was', () => {
  const before = new Map([
    ['level-cold', 'full'],
    ['hose', 'late'],
  ]);
  expect([...withAnswer(before, 'level-cold', 'low')]).toEqual([
    ['hose', 'late'],
    ['level-cold', 'low'],
  ]);
  expect([...withAnswer(before, 'hose', undefined)]).toEqual([['level-cold', 'full']]);
  expect([...before.keys()]).toEqual(['level-cold', 'hose']);
});
