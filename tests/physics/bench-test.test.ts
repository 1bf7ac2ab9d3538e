import { describe, expect, test } from 'vitest';
import { benchTest } from '../../src/physics/bench-test.ts';
import { fromCelsius, massFraction, metre, toCelsius } from '../../src/physics/units.ts';

describe('benchTest', () => {
  test('refuses an open pot at 2,500 m for a 92 °C thermostat', () => {
    const answer = benchTest(fromCelsius(92), metre(2500));
    expect(answer.verdict).toBe('cannot open');
    expect(toCelsius(answer.potBoilsAt)).toBeCloseTo(91.64, 2);
  });

  test.each([
    [92, 1500, 'starts only'],
    [92, 2200, 'may not open'],
    [92, 0, 'starts only'],
    [88, 0, 'starts, perhaps fully'],
    [71, 0, 'opens fully'],
    [105, 0, 'cannot open'],
  ])('judges a %d °C thermostat at %d m: %s', (stamp, altitude, verdict) => {
    expect(benchTest(fromCelsius(stamp), metre(altitude)).verdict).toBe(verdict);
  });

  // Common practice: none above about 88 °C is seen fully open in boiling water even at sea level.
  test('never lets one above 90 °C be seen fully open in water', () => {
    for (let stamp = 90; stamp <= 120; stamp++) {
      const { verdict } = benchTest(fromCelsius(stamp), metre(0));
      expect(['starts only', 'may not open', 'cannot open']).toContain(verdict);
    }
  });

  test('lets a strong mixture in the pot show what water cannot', () => {
    const pot = { glycol: 'ethylene', fraction: massFraction(0.8) } as const;
    expect(benchTest(fromCelsius(92), metre(0), pot).verdict).toBe('opens fully');
  });

  test('gives start and full opening around the stamp', () => {
    const { starts, fullyOpen } = benchTest(fromCelsius(87), metre(0));
    expect(toCelsius(starts.lowest)).toBeCloseTo(85, 9);
    expect(toCelsius(starts.highest)).toBeCloseTo(89, 9);
    expect(toCelsius(fullyOpen.lowest)).toBeCloseTo(97, 9);
    expect(toCelsius(fullyOpen.highest)).toBeCloseTo(107, 9);
  });

  test('refuses a stamp that is no thermostat', () => {
    expect(() => benchTest(fromCelsius(20), metre(0))).toThrow('thermostat stamp');
  });
});
