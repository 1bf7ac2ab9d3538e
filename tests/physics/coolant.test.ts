import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Glycol } from '../../src/physics/glycol.ts';
import { freezingPoint, mixtureDensity, mixtureSpecificHeat } from '../../src/physics/mixture-properties.ts';
import {
  refractiveIndex,
  strengthForIndex,
  strengthReadOnScaleOf,
} from '../../src/physics/refractive-index.ts';
import { toMassFraction, toVolumeFraction } from '../../src/physics/strength.ts';
import { fromCelsius, massFraction, toCelsius, volumeFraction } from '../../src/physics/units.ts';
import { spread } from './spread.ts';

const glycols = fc.constantFrom<Glycol>('ethylene', 'propylene');
const strengths = spread(0, 0.6).map(massFraction);

describe('strength', () => {
  test('turns mass and volume round', () => {
    fc.assert(
      fc.property(glycols, spread(0, 1), (glycol, fraction) => {
        const there = toVolumeFraction(glycol, massFraction(fraction));
        expect(toMassFraction(glycol, there)).toBeCloseTo(fraction, 12);
      }),
    );
  });

  test('keeps water and glycol as they are, and puts mass above volume between them', () => {
    for (const glycol of ['ethylene', 'propylene'] as const) {
      expect(toMassFraction(glycol, volumeFraction(0))).toBe(0);
      expect(toMassFraction(glycol, volumeFraction(1))).toBe(1);
      expect(toMassFraction(glycol, volumeFraction(0.5))).toBeGreaterThan(0.5);
    }
  });
});

describe('properties of a mixture', () => {
  test('fall in freezing point and rise in density as glycol is added', () => {
    fc.assert(
      fc.property(glycols, spread(0, 0.59), (glycol, fraction) => {
        const weak = { glycol, fraction: massFraction(fraction) };
        const strong = { glycol, fraction: massFraction(fraction + 0.01) };
        const warm = fromCelsius(20);
        expect(freezingPoint(strong)).toBeLessThan(freezingPoint(weak));
        expect(mixtureDensity(strong, warm)).toBeGreaterThan(mixtureDensity(weak, warm));
        expect(mixtureSpecificHeat(strong, warm)).toBeLessThan(mixtureSpecificHeat(weak, warm));
      }),
    );
  });

  test('fall in density as it warms, from 10 °C up', () => {
    fc.assert(
      fc.property(glycols, strengths, spread(10, 99), (glycol, fraction, celsius) => {
        const mixture = { glycol, fraction };
        expect(mixtureDensity(mixture, fromCelsius(celsius + 1))).toBeLessThan(
          mixtureDensity(mixture, fromCelsius(celsius)),
        );
      }),
    );
  });

  test('are refused beyond the correlation, below freezing and above 100 °C', () => {
    const half = { glycol: 'ethylene', fraction: massFraction(0.5) } as const;
    expect(() => freezingPoint({ glycol: 'ethylene', fraction: massFraction(0.61) })).toThrow(
      'glycol by mass 0.61 is outside 0 to 0.6',
    );
    expect(() => mixtureDensity(half, fromCelsius(-37))).toThrow('coolant temperature');
    expect(() => mixtureSpecificHeat(half, fromCelsius(101))).toThrow('coolant temperature');
  });
});

describe('refractive index', () => {
  test('turns strength and index round', () => {
    fc.assert(
      fc.property(glycols, strengths, (glycol, fraction) => {
        expect(strengthForIndex(glycol, refractiveIndex({ glycol, fraction }))).toBeCloseTo(fraction, 6);
      }),
    );
  });

  // Handbook note: at index 1.3811 the liquid is 0.48 by mass ethylene (-33 °C) or about 0.42 propylene (-22 °C).
  test('shows how far the wrong scale is off: -33 °C on the ethylene scale is about -22 °C of propylene', () => {
    const strength = strengthReadOnScaleOf('ethylene', 'propylene', fromCelsius(-33));
    expect(strength).toBeCloseTo(0.42, 1);
    const freezes = toCelsius(freezingPoint({ glycol: 'propylene', fraction: strength }));
    expect(freezes).toBeGreaterThan(-24);
    expect(freezes).toBeLessThan(-21);
  });
});
