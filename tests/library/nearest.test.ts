import fc from 'fast-check';
import { expect, test } from 'vitest';
import { listed, nearestOf } from '../../src/library/nearest.ts';

const ids = ['thermostat-stuck-open', 'thermostat-stuck-shut', 'hose-warm-up-outlet-side', 'scald'];

test('a slip of the pen finds what was meant, and is sure of it', () => {
  expect(nearestOf('thermostat-stuck-opn', ids)).toEqual({ word: 'thermostat-stuck-open', sure: true });
  expect(nearestOf('Thermostat Stuck Open', ids)).toEqual({ word: 'thermostat-stuck-open', sure: true });
});

test('between two that are as near it is not sure', () => {
  expect(nearestOf('sensor-c', ['sensor-a', 'sensor-b'])).toEqual({ word: 'sensor-a', sure: false });
});

test('a part of a longer name finds the name', () => {
  expect(nearestOf('hose-warm-up', ids)).toEqual({ word: 'hose-warm-up-outlet-side', sure: false });
});

test('what is far from everything finds nothing', () => {
  expect(nearestOf('stroboscope', ids)).toBeUndefined();
  expect(nearestOf('x', [])).toBeUndefined();
});

test('a word of the list is nearest to itself', () => {
  fc.assert(
    fc.property(
      fc.uniqueArray(fc.stringMatching(/^[a-z]{1,12}$/), { minLength: 1 }),
      fc.nat(),
      (words, at) => {
        const word = words[at % words.length] ?? '';
        expect(nearestOf(word, words)?.word).toBe(word);
      },
    ),
  );
});

test('a long list is cut and says so', () => {
  expect(listed(['a', 'b', 'c'], 2)).toBe('"a", "b" and 1 more');
});
