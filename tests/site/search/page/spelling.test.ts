import { describe, expect, test } from 'vitest';
import { nearestWord } from '../../../../src/site/search/page/spelling.ts';

const KNOWN = ['heater', 'thermostat', 'radiator', 'coolant', 'hose', 'nose', 'p0128', 'weep', 'seep'];

describe('the word that was meant', () => {
  test.each([
    ['termostat', 'thermostat'],
    ['thermosstat', 'thermostat'],
    ['radaitor', 'radiator'],
    ['coolent', 'coolant'],
    ['heatre', 'heater'],
    ['hoze', 'hose'],
    ['xyzzy', undefined],
    ['hot', undefined],
    ['p0129', undefined],
  ])('%s -> %s', (slip, meant) => {
    expect(nearestWord(slip, KNOWN)).toBe(meant);
  });

  test('of words equally near, the same first letter wins, then the one most used', () => {
    expect(nearestWord('noze', KNOWN)).toBe('nose');
    expect(nearestWord('beep', KNOWN)).toBe('weep');
    expect(nearestWord('beep', ['seep', 'weep'])).toBe('seep');
  });
});
