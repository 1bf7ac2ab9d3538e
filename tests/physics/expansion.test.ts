import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { expansion, levelAboveColdMark, roomWhenHot, volumeRatio } from '../../src/physics/expansion.ts';
import type { Glycol } from '../../src/physics/glycol.ts';
import { mixtureDensity } from '../../src/physics/mixture-properties.ts';
import { cubicMetre, fromCelsius, fromLitres, massFraction, squareMetre } from '../../src/physics/units.ts';
import { spread } from './spread.ts';

const mixtures = fc.record({
  glycol: fc.constantFrom<Glycol>('ethylene', 'propylene'),
  fraction: spread(0.05, 0.6).map(massFraction),
});
const temperatures = spread(5, 100).map(fromCelsius);

describe('expansion', () => {
  test('keeps the mass', () => {
    fc.assert(
      fc.property(mixtures, temperatures, temperatures, (mixture, from, to) => {
        const volume = fromLitres(6);
        const grown = volume + expansion(mixture, volume, from, to);
        expect(grown * mixtureDensity(mixture, to)).toBeCloseTo(volume * mixtureDensity(mixture, from), 9);
      }),
    );
  });

  test('goes there and back to where it was', () => {
    fc.assert(
      fc.property(mixtures, temperatures, temperatures, (mixture, from, to) => {
        expect(volumeRatio(mixture, from, to) * volumeRatio(mixture, to, from)).toBeCloseTo(1, 12);
      }),
    );
  });
});

describe('the level in the bottle', () => {
  const system = {
    mixture: { glycol: 'ethylene', fraction: massFraction(0.5273) },
    volume: fromLitres(6),
    coldAt: fromCelsius(20),
    bottleArea: squareMetre(0.01),
  } as const;

  test('stands at the mark when cold, above it when hot, below it in frost', () => {
    expect(levelAboveColdMark(system, fromCelsius(20))).toBe(0);
    expect(levelAboveColdMark(system, fromCelsius(90))).toBeCloseTo(0.0273, 3);
    expect(levelAboveColdMark(system, fromCelsius(-10))).toBeLessThan(0);
  });

  test('overflows a bottle with less room than the coolant grows', () => {
    expect(roomWhenHot(system, fromLitres(0.4), fromCelsius(90))).toBeGreaterThan(0);
    expect(roomWhenHot(system, fromLitres(0.2), fromCelsius(90))).toBeLessThan(0);
  });

  test('refuses a bottle without area and a system larger than a lorry', () => {
    expect(() => levelAboveColdMark({ ...system, bottleArea: squareMetre(0) }, fromCelsius(90))).toThrow(
      'bottle area',
    );
    expect(() => expansion(system.mixture, cubicMetre(6), fromCelsius(20), fromCelsius(90))).toThrow(
      'coolant volume 6 m3 is outside 0 to 0.2 m3',
    );
  });
});
