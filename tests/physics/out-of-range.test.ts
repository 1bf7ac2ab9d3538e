import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { OutOfRange, within } from '../../src/physics/out-of-range.ts';

describe('within', () => {
  test('gives back what lies inside, ends included', () => {
    expect(within('altitude', -500, -500, 6000, 'm')).toBe(-500);
    expect(within('altitude', 6000, -500, 6000, 'm')).toBe(6000);
  });

  test('refuses what lies outside with name, value, limits and unit', () => {
    const refused = refusal(() => within('altitude', 9000, -500, 6000, 'm'));
    expect(refused).toMatchObject({ quantity: 'altitude', value: 9000, limits: [-500, 6000], unit: 'm' });
    expect(refused.message).toBe('altitude 9000 m is outside -500 to 6000 m');
    expect(refused.name).toBe('OutOfRange');
  });

  test.each([
    [
      'no upper limit',
      () => within('volume', -1, 0, Infinity, 'm3'),
      'volume -1 m3 is outside 0 m3 and more',
    ],
    ['no lower limit', () => within('x', 3, -Infinity, 2, 'Pa'), 'x 3 Pa is outside 2 Pa and less'],
    [
      'no limit at all',
      () => within('x', NaN, -Infinity, Infinity, '1'),
      'x NaN is outside all finite numbers',
    ],
  ])('says it plainly with %s', (_, act, message) => {
    expect(refusal(act).message).toBe(message);
  });

  test('refuses everything that is not finite, whatever the limits', () => {
    fc.assert(
      fc.property(fc.constantFrom(NaN, Infinity, -Infinity), (value) => {
        expect(() => within('x', value, -Infinity, Infinity, '1')).toThrow(OutOfRange);
      }),
    );
  });
});

function refusal(act: () => unknown): OutOfRange {
  try {
    act();
  } catch (error) {
    if (error instanceof OutOfRange) return error;
  }
  throw new Error('nothing was refused');
}
