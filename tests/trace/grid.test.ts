/** What was logged is found again on the even clock. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { toGrid } from '../../src/trace/grid.ts';

const channel = fc
  .uniqueArray(fc.double({ min: 0, max: 20_000, noNaN: true }), { minLength: 1, maxLength: 60 })
  .map((times) => ({
    time: Float64Array.from(times).sort(),
    value: new Float64Array(times.length).fill(300),
  }));

test('every reading stands at the point next to it', () => {
  fc.assert(
    fc.property(channel, (coolant) => {
      const grid = toGrid({ coolant });
      for (const time of coolant.time) {
        const at = Math.round(time / grid.step);
        expect(grid.signals.coolant[at]).toBe(300);
        expect(grid.smooth[at]).toBeCloseTo(300, 9);
      }
    }),
    // Found by a long run: a log that is over before its second point.
    { examples: [[{ time: Float64Array.of(0.5, 0.75), value: Float64Array.of(300, 300) }]] },
  );
});
