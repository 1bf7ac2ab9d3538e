import { describe, expect, test } from 'vitest';
import { strengthForDensity } from '../../src/physics/hydrometer.ts';
import { toVolumeFraction } from '../../src/physics/strength.ts';
import { fromCelsius } from '../../src/physics/units.ts';

describe('strengthForDensity', () => {
  // ASHRAE Handbook - Fundamentals (2001), density of inhibited coolant by volume, kg/m3: inside the range, or a point beside it.
  test.each([
    ['ethylene', 0.2, 20, 1029.72],
    ['ethylene', 0.3, 20, 1045.25],
    ['ethylene', 0.4, 20, 1059.68],
    ['ethylene', 0.5, 20, 1073.35],
    ['ethylene', 0.4, 0, 1066.8],
    ['ethylene', 0.5, 40, 1063.66],
    ['propylene', 0.3, 20, 1028.35],
    ['propylene', 0.4, 20, 1036.24],
  ] as const)('%s glycol of %d by volume at %d °C has %d', (glycol, volume, celsius, density) => {
    const { lowest, highest } = strengthForDensity(glycol, density, fromCelsius(celsius));
    expect(toVolumeFraction(glycol, lowest)).toBeLessThanOrEqual(volume + 0.02);
    expect(toVolumeFraction(glycol, highest)).toBeGreaterThanOrEqual(volume);
    expect(highest - lowest).toBeLessThan(0.08);
  });

  // Melinder (2010) by mass, as printed.
  test.each([
    ['ethylene', 0.3, 20, 1038.0],
    ['ethylene', 0.5, 40, 1053.4],
    ['propylene', 0.4, 20, 1032.3],
  ] as const)('%s glycol of %d by mass at %d °C has %d', (glycol, mass, celsius, density) => {
    expect(strengthForDensity(glycol, density, fromCelsius(celsius)).highest).toBeCloseTo(mass, 2);
  });

  test('refuses what no mixture up to 60 % by mass weighs', () => {
    expect(() => strengthForDensity('ethylene', 1100, fromCelsius(20))).toThrow('density');
    expect(() => strengthForDensity('ethylene', 900, fromCelsius(20))).toThrow('density');
  });
});
