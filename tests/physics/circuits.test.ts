import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  cableBears,
  cableResistance,
  copperFactor,
  heatsCableIn,
  voltageDrop,
  wireGaugeArea,
} from '../../src/physics/cable.ts';
import { BLADE_FUSE_RESISTANCE, currentFromFuseDrop } from '../../src/physics/fuse.ts';
import { DROP_LIMITS, joint } from '../../src/physics/joint.ts';
import { ampere, fromCelsius, metre, ohm, squareMetre, volt } from '../../src/physics/units.ts';
import { spread } from './spread.ts';

describe('joint', () => {
  test('finds 12 W and 13 milliohm in 0.4 V at 30 A, above the limit of a connection', () => {
    const bad = joint(volt(0.4), ampere(30), 'connection');
    expect(bad.heat).toBeCloseTo(12, 9);
    expect(bad.resistance * 1000).toBeCloseTo(13.33, 2);
    expect(bad.withinLimit).toBe(false);
  });

  test('lets the limit itself pass', () => {
    expect(joint(volt(0.1), ampere(10), 'connection').withinLimit).toBe(true);
    expect(joint(volt(0.1), ampere(10), 'module earth').withinLimit).toBe(false);
  });

  test('is refused without load', () => {
    expect(() => joint(volt(0), ampere(0), 'connection')).toThrow('current 0 A is outside 0.1 to 2000 A');
  });

  test('agrees with heat by resistance', () => {
    fc.assert(
      fc.property(spread(0, 12), spread(0.1, 500), (drop, current) => {
        const { resistance, heat } = joint(volt(drop), ampere(current), 'whole circuit');
        expect(current ** 2 * resistance).toBeCloseTo(heat, 6);
        expect(voltageDrop(ampere(current), resistance)).toBeCloseTo(drop, 9);
      }),
    );
  });

  test('allows the whole circuit what supply and earth side may lose together', () => {
    expect(DROP_LIMITS['supply side'] + DROP_LIMITS['earth side']).toBeCloseTo(
      DROP_LIMITS['whole circuit'],
      9,
    );
  });
});

describe('cable', () => {
  test('has more resistance hot, long and thin', () => {
    const at = (length: number, mm2: number, celsius: number) =>
      cableResistance(metre(length), squareMetre(mm2 * 1e-6), fromCelsius(celsius));
    expect(at(3, 4, 80)).toBeGreaterThan(at(3, 4, 20));
    expect(at(6, 4, 20)).toBeCloseTo(2 * at(3, 4, 20), 9);
    expect(at(3, 2, 20)).toBeCloseTo(2 * at(3, 4, 20), 9);
    expect(copperFactor(fromCelsius(20))).toBe(1);
  });

  // IEC 60228 class 5 maxima (flexible), 20 °C, as printed on a cable reference page.
  test.each([
    [0.5, 39.0],
    [1.5, 13.3],
    [2.5, 7.98],
    [4, 4.95],
    [6, 3.3],
  ])('of %d mm2 stays 6 to 16 %% below the most a flexible cable may have', (mm2, maximum) => {
    const ours = cableResistance(metre(1), squareMetre(mm2 * 1e-6), fromCelsius(20)) * 1000;
    expect(maximum / ours).toBeGreaterThan(1.06);
    expect(maximum / ours).toBeLessThan(1.17);
  });

  test('gets thinner with each gauge', () => {
    for (let gauge = 1; gauge <= 40; gauge++)
      expect(wireGaugeArea(gauge)).toBeLessThan(wireGaugeArea(gauge - 1));
  });
});

describe('fuse', () => {
  test('turns a drop of 34 mV over a 20 A fuse into about 10 A', () => {
    expect(currentFromFuseDrop(volt(0.034), BLADE_FUSE_RESISTANCE['20'] ?? ohm(0))).toBeCloseTo(10.06, 2);
  });

  test('loses about 0.1 V at its rating, each of them less than 0.13 V cold', () => {
    for (const [rating, resistance] of Object.entries(BLADE_FUSE_RESISTANCE)) {
      const drop = Number(rating) * resistance;
      expect(drop).toBeGreaterThan(0.05);
      expect(drop).toBeLessThan(0.13);
    }
  });

  test('is refused when the probes see the battery', () => {
    expect(() => currentFromFuseDrop(volt(12.4), ohm(0.00338))).toThrow('drop over the fuse');
  });
});

describe('cableBears', () => {
  test.each([
    [0.5, 11],
    [1, 19],
    [2.5, 32],
    [6, 54],
    [120, 344],
  ])('%d mm² bears %d A (DIN VDE 0298-4, single in air, from memory)', (mm2, amperes) => {
    expect(cableBears(squareMetre(mm2 * 1e-6))).toBeCloseTo(amperes, 6);
  });

  test('lies between the rows, and goes on past them', () => {
    expect(cableBears(squareMetre(3.31e-6))).toBeGreaterThan(36);
    expect(cableBears(squareMetre(3.31e-6))).toBeLessThan(39);
    expect(cableBears(squareMetre(0.2e-6))).toBeLessThan(8);
    expect(cableBears(squareMetre(150e-6))).toBeGreaterThan(344);
  });
});

describe('heatsCableIn', () => {
  test('is a quarter of the time at twice the current, and 4 s at 100 A through 1.8 mm² (by hand)', () => {
    const area = squareMetre(1.8e-6);
    // 60 K x 3.438 MJ/(m³ K) x (1.8e-6 m²)² / (100² A² x 0.017241e-6 ohm m) = 3.88 s
    expect(heatsCableIn(ampere(100), area)).toBeCloseTo(3.88, 2);
    expect(heatsCableIn(ampere(200), area) * 4).toBeCloseTo(3.88, 2);
  });
});
