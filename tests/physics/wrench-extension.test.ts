import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { metre, newtonMetre } from '../../src/physics/units.ts';
import { wrenchSetting } from '../../src/physics/wrench-extension.ts';
import { spread } from './spread.ts';

describe('wrenchSetting', () => {
  test('lowers the setting with the bolt further out, leaves it at a right angle, raises it behind the drive', () => {
    const set = (angle: number) => wrenchSetting(newtonMetre(25), metre(0.3), metre(0.04), angle);
    expect(set(0)).toBeLessThan(25);
    expect(set(Math.PI / 2)).toBeCloseTo(25, 9);
    expect(set(Math.PI)).toBeGreaterThan(25);
  });

  test('changes nothing without an extension', () => {
    fc.assert(
      fc.property(spread(0, 500), spread(-Math.PI, Math.PI), (torque, angle) => {
        expect(wrenchSetting(newtonMetre(torque), metre(0.4), metre(0), angle)).toBeCloseTo(torque, 9);
      }),
    );
  });

  test('refuses a bolt that comes to sit under the hand', () => {
    expect(() => wrenchSetting(newtonMetre(25), metre(0.3), metre(0.29), Math.PI)).toThrow(
      'distance from hand to bolt',
    );
  });
});
