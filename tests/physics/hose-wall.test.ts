/**
 * Heat through a round wall in series with the air outside: Incropera and DeWitt, Fundamentals of Heat and Mass
 * Transfer, radial systems (R = ln(r₂/r₁)/2πλL and 1/2πr₂Lh in series), worked by hand below.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { HEAT_GIVEN_OFF, HOSE, PLASTIC, surfaceBelowCoolant } from '../../src/physics/hose-wall.ts';
import { fromCelsius } from '../../src/physics/units.ts';
import { spread } from './spread.ts';

const drop = (celsius: number, givenOff: number, wall = HOSE, around = 30) =>
  surfaceBelowCoolant(fromCelsius(celsius), fromCelsius(around), wall, givenOff);

describe('surfaceBelowCoolant', () => {
  // ln(20.5/16) = 0.2478; 0.0205 · 0.2478 / 0.3 = 0.01694 m²K/W; 60 K · 0.01694/(0.01694 + 1/h).
  test.each([
    [10, 8.7],
    [14, 11.5],
    [20, 15.2],
    [30, 20.2],
  ])('rubber hose at 90 °C in air of 30 °C giving off %d W/(m²·K): %d K', (givenOff, kelvin) => {
    expect(drop(90, givenOff)).toBeCloseTo(kelvin, 1);
  });

  test('3 mm of plastic is much the same', () => {
    expect(drop(90, HEAT_GIVEN_OFF.still, PLASTIC)).toBeGreaterThan(9);
    expect(drop(90, HEAT_GIVEN_OFF.fan, PLASTIC)).toBeLessThan(20);
  });

  test('is nothing where the air is as warm, never more than down to the air, and more in the wind', () => {
    fc.assert(
      fc.property(spread(-20, 120), spread(-30, 60), (coolant, air) => {
        const still = drop(coolant, HEAT_GIVEN_OFF.still, HOSE, air);
        expect(still).toBeGreaterThanOrEqual(0);
        expect(still).toBeLessThanOrEqual(Math.max(0, coolant - air));
        expect(drop(coolant, HEAT_GIVEN_OFF.fan, HOSE, air)).toBeGreaterThanOrEqual(still);
      }),
    );
    expect(drop(30, HEAT_GIVEN_OFF.still)).toBe(0);
  });

  test('refuses a wall turned inside out', () => {
    expect(() => drop(90, 14, { ...HOSE, innerRadius: 0.03 as never })).toThrow('inner radius');
  });
});
