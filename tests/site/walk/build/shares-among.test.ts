import { expect, test } from 'vitest';
import { shareWithLayout } from '../../../../src/model/layout.ts';
import { sharesAmong } from '../../../../src/site/walk/build/shares-among.ts';

const SHARES = {
  power: { combustion: 0.9, hybrid: 0.06, 'battery electric': 0.04 },
  'charge-air': { none: 0.3, 'air-cooled': 0.6, 'water-cooled': 0.1 },
};

test('a cause that every car with the complaint can have counts in full', () => {
  const condition = { 'charge-air': ['water-cooled' as const] };
  expect(shareWithLayout(condition, {}, SHARES)).toBeCloseTo(0.1);
  expect(shareWithLayout(condition, {}, sharesAmong(SHARES, condition))).toBe(1);
});

test('what is left of a feature sums to one again, and a feature not named keeps its shares', () => {
  const among = sharesAmong(SHARES, { power: ['combustion', 'hybrid'] });
  expect(among.power?.hybrid).toBeCloseTo(0.06 / 0.96);
  expect(among.power?.['battery electric']).toBeUndefined();
  expect(among['charge-air']).toEqual(SHARES['charge-air']);
  expect(sharesAmong(SHARES, undefined)).toEqual(SHARES);
});
