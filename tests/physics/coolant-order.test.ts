import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cansFor, partsOf } from '../../src/physics/coolant-order.ts';
import { fromLitres, volumeFraction } from '../../src/physics/units.ts';
import { spread } from './spread.ts';

const can = (litres: number, price?: number) => ({
  holds: fromLitres(litres),
  ...(price !== undefined && { price }),
});
const needs = (litres: number, ...sizes: ReturnType<typeof can>[]) => cansFor(fromLitres(litres), sizes);

describe('partsOf', () => {
  // By hand: 7 l of half and half are 3.5 and 3.5; of 40 % are 2.8 and 4.2; 6 l at 40 % out of a ready mix of 50 % are 4.8 and 1.2.
  test.each([
    [7, 0.5, 1, 3.5],
    [7, 0.4, 1, 2.8],
    [6, 0.4, 0.5, 4.8],
  ])('%d l of %d from a can of %d take %d l of it', (litres, wanted, strength, coolant) => {
    const parts = partsOf(fromLitres(litres), volumeFraction(wanted), volumeFraction(strength));
    expect(parts.coolant * 1e3).toBeCloseTo(coolant, 9);
    expect((parts.coolant + parts.water) * 1e3).toBeCloseTo(litres, 9);
  });
});

describe('cansFor', () => {
  // By hand: 3.5 l out of 1.5 l cans at 12 and 5 l cans at 30: three small ones are 36, one large is 30.
  test('buys the cheapest that suffices', () => {
    expect(needs(3.5, can(1.5, 12), can(5, 30))).toMatchObject({ cans: [0, 1], price: 30 });
    expect(needs(2.9, can(1.5, 12), can(5, 30))).toMatchObject({ cans: [2, 0], price: 24 });
    expect(needs(6.2, can(1.5, 12), can(5, 30))).toMatchObject({ cans: [1, 1], price: 42 });
  });

  test('without prices leaves the least over', () => {
    expect(needs(3.0, can(1.5), can(5)).cans).toEqual([2, 0]);
    expect(needs(4.8, can(1.5), can(5)).cans).toEqual([0, 1]);
  });

  test('takes exactly full cans for exactly their litres', () => {
    expect(needs(4.5, can(1.5)).cans).toEqual([3]);
    expect(needs(4.51, can(1.5)).cans).toEqual([4]);
  });

  test('always suffices, and no can could be left out', () => {
    fc.assert(
      fc.property(
        spread(0.1, 40),
        spread(0.5, 5),
        spread(1, 25),
        spread(1, 50),
        spread(1, 90),
        (litres, a, b, one, two) => {
          const { cans, bought, price } = needs(litres, can(a, one), can(b, two));
          expect(bought * 1e3).toBeGreaterThanOrEqual(litres - 1e-3);
          expect(price).toBeLessThanOrEqual(
            Math.min(Math.ceil(litres / a) * one, Math.ceil(litres / b) * two) + 1e-6,
          );
          const sizes = [a, b];
          cans.forEach((count, at) => {
            if (count > 0) expect(bought * 1e3 - (sizes[at] ?? 0)).toBeLessThan(litres + 1e-3);
          });
        },
      ),
    );
  });
});
