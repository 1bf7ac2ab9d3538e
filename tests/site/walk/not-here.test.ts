import { expect, test } from 'vitest';
import { notHere } from '../../../src/site/walk/not-here.ts';

const ENGINE = {
  layout: { power: ['combustion' as const, 'hybrid' as const] },
  words: 'drive combustion or hybrid',
};

test('a complaint of an engine is not on a car without one', () => {
  expect(notHere(ENGINE, { power: 'battery electric' })).toBe('Not on this vehicle: it has no engine.');
  expect(notHere(ENGINE, { power: 'hybrid' })).toBeUndefined();
  expect(notHere(ENGINE, {})).toBeUndefined();
  expect(notHere(undefined, { power: 'battery electric' })).toBeUndefined();
});

test('any other need is said in its own words', () => {
  const needs = { layout: { pump: ['electric' as const] }, words: 'coolant pump driven by electric' };
  expect(notHere(needs, { power: 'combustion', pump: 'timing belt' })).toBe(
    'Not on this vehicle: this takes coolant pump driven by electric.',
  );
});
