import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { spread } from '../../../src/site/drawings/spread.ts';

describe('spreading labels', () => {
  test('labels with room stay where they want to be', () => {
    expect(
      spread(
        [
          { wanted: 10, size: 20 },
          { wanted: 40, size: 20 },
        ],
        0,
        100,
      ),
    ).toEqual([10, 40]);
  });

  // Least squares by hand: two of size 20 both wanting 50 part to 40 and 60, ten each.
  test('two that want the same place part evenly', () => {
    expect(
      spread(
        [
          { wanted: 50, size: 20 },
          { wanted: 50, size: 20 },
        ],
        0,
        100,
      ),
    ).toEqual([40, 60]);
  });

  test('none overlap, all keep their order and stay inside while there is room', () => {
    const thing = fc.record({
      wanted: fc.integer({ min: -50, max: 700 }),
      size: fc.integer({ min: 1, max: 50 }),
    });
    fc.assert(
      fc.property(fc.array(thing, { maxLength: 12 }), (things) => {
        const sorted = [...things].sort((a, b) => a.wanted - b.wanted);
        const places = spread(sorted, 0, 640);
        let end = 0;
        places.forEach((place, index) => {
          expect(place).toBeGreaterThanOrEqual(end - 1e-6);
          end = place + (sorted[index]?.size ?? 0);
        });
        expect(end).toBeLessThanOrEqual(640 + 1e-6);
      }),
    );
  });
});
