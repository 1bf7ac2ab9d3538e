import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  freezingRange,
  freezingRangeByVolume,
  strengthForFreezing,
  strengthRangeForFreezing,
} from '../../src/physics/freezing-range.ts';
import type { Glycol } from '../../src/physics/glycol.ts';
import { freezingPoint } from '../../src/physics/mixture-properties.ts';
import { fromCelsius, kelvin, massFraction, toCelsius, volumeFraction } from '../../src/physics/units.ts';
import { spread } from './spread.ts';

const glycols = fc.constantFrom<Glycol>('ethylene', 'propylene');

describe('freezingRange', () => {
  test('shows that undiluted ethylene glycol protects less than a third-strength mixture', () => {
    const undiluted = freezingRange({ glycol: 'ethylene', fraction: massFraction(1) });
    const third = freezingRangeByVolume('ethylene', volumeFraction(1 / 3));
    expect(toCelsius(undiluted.lowest)).toBeCloseTo(-13, 9);
    expect(toCelsius(third.highest)).toBeLessThan(-17);
    expect(third.highest).toBeLessThan(undiluted.lowest);
  });

  test('holds at 50 % by volume what ASHRAE and Melinder print, 3 K apart', () => {
    const { lowest, highest, basis } = freezingRangeByVolume('ethylene', volumeFraction(0.5));
    expect(toCelsius(lowest)).toBeCloseTo(-39.9, 1);
    expect(toCelsius(highest)).toBeGreaterThan(-37.5);
    expect(basis).toBe('handbooks differ');
  });

  test('gives whole degrees and a reason above 0.6 by mass, never a single figure', () => {
    fc.assert(
      fc.property(glycols, spread(0.6001, 1), (glycol, fraction) => {
        const { lowest, highest, basis } = freezingRange({ glycol, fraction: massFraction(fraction) });
        expect(toCelsius(lowest)).toBeCloseTo(Math.round(toCelsius(lowest)), 9);
        expect(toCelsius(highest)).toBeCloseTo(Math.round(toCelsius(highest)), 9);
        expect(highest - lowest).toBeGreaterThanOrEqual(1);
        expect(basis).toBe(glycol === 'ethylene' ? 'beyond the correlation' : 'sets without ice');
      }),
    );
  });

  test('never claims less than -61 °C, whatever trade text says of -69', () => {
    fc.assert(
      fc.property(glycols, spread(0, 1), (glycol, fraction) => {
        expect(
          toCelsius(freezingRange({ glycol, fraction: massFraction(fraction) }).lowest),
        ).toBeGreaterThanOrEqual(-61.001);
      }),
    );
  });

  test('holds the correlation inside', () => {
    fc.assert(
      fc.property(glycols, spread(0, 0.6), (glycol, fraction) => {
        const mixture = { glycol, fraction: massFraction(fraction) };
        const { lowest, highest } = freezingRange(mixture);
        expect(freezingPoint(mixture)).toBeGreaterThanOrEqual(lowest - 1e-9);
        expect(freezingPoint(mixture)).toBeLessThanOrEqual(highest + 1e-9);
      }),
    );
  });
});

describe('strength for a freezing point', () => {
  test('turns round', () => {
    fc.assert(
      fc.property(glycols, spread(0.005, 0.6), (glycol, fraction) => {
        const freezes = freezingPoint({ glycol, fraction: massFraction(fraction) });
        expect(strengthForFreezing(glycol, freezes)).toBeCloseTo(fraction, 9);
      }),
    );
  });

  test('lies inside the span of the handbooks', () => {
    fc.assert(
      fc.property(glycols, spread(-45, -0.1), (glycol, celsius) => {
        const freezes = fromCelsius(celsius);
        const { lowest, highest } = strengthRangeForFreezing(glycol, freezes);
        const ours = strengthForFreezing(glycol, freezes);
        expect(ours).toBeGreaterThanOrEqual(lowest - 1e-9);
        expect(ours).toBeLessThanOrEqual(highest + 1e-9);
      }),
    );
  });

  test('is nothing at 0 °C for both glycols', () => {
    expect(strengthForFreezing('ethylene', kelvin(273.15))).toBeCloseTo(0, 4);
    expect(strengthForFreezing('propylene', kelvin(273.15))).toBe(0);
  });

  test('is refused where no strength freezes', () => {
    expect(() => strengthForFreezing('ethylene', fromCelsius(-69))).toThrow('freezing point');
    expect(() => strengthForFreezing('ethylene', fromCelsius(1))).toThrow('freezing point');
  });
});
