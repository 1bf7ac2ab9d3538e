import { describe, expect, test } from 'vitest';
import {
  indexOfBrix,
  refractiveIndex,
  strengthForIndex,
  strengthForIndexAt,
} from '../../src/physics/refractive-index.ts';
import { fromCelsius, massFraction } from '../../src/physics/units.ts';

describe('a sugar scale', () => {
  // CRC Handbook, 102nd ed. (2021), ethylene glycol by mass against the index of sugar by mass, ICUMSA (1974), from memory: 0.24 has 1.3564
  // (15.45 degrees), 0.32 1.3646 (20.45), 0.40 1.3728 (25.3), 0.52 1.3851 (32.2).
  test.each([
    [15.45, 0.24],
    [20.45, 0.32],
    [25.3, 0.4],
    [32.2, 0.52],
  ])('%d degrees Brix are ethylene glycol of %d by mass', (brix, mass) => {
    expect(Math.abs(strengthForIndex('ethylene', indexOfBrix(brix)) - mass)).toBeLessThan(0.012);
  });
});

describe('a refractometer that does not correct for temperature', () => {
  // CRC Handbook, water at 589 nm, from memory: 1.33369 at 10 °C, 1.33299 at 20, 1.33194 at 30, 1.33061 at 40. What the change of water does
  // to the reading is what the correction gives back, to half a per cent of glycol.
  test.each([
    [10, 1.33369],
    [30, 1.33194],
    [40, 1.33061],
  ])('at %d °C water of index %d is water', (celsius, index) => {
    const offset = refractiveIndex({ glycol: 'ethylene', fraction: massFraction(0) }) - 1.33299;
    const read = index + offset;
    expect(strengthForIndexAt('ethylene', read, fromCelsius(celsius), 'at 20 °C')).toBeLessThan(0.006);
  });

  test('reads the same at 20 °C either way, and weaker when warm', () => {
    const mixture = { glycol: 'ethylene', fraction: massFraction(0.5) } as const;
    const index = refractiveIndex(mixture);
    for (const zeroed of ['at 20 °C', 'with water at the sample’s temperature'] as const)
      expect(strengthForIndexAt('ethylene', index, fromCelsius(20), zeroed)).toBeCloseTo(0.5, 6);
    const plain = strengthForIndexAt('ethylene', index, fromCelsius(35), 'at 20 °C');
    const zeroedWarm = strengthForIndexAt(
      'ethylene',
      index,
      fromCelsius(35),
      'with water at the sample’s temperature',
    );
    expect(plain).toBeGreaterThan(0.51);
    expect(zeroedWarm).toBeGreaterThan(0.5);
    expect(zeroedWarm).toBeLessThan(plain);
  });
});
