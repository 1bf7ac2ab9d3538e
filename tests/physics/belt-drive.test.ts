import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { driveRatio, judgeSlip, pumpSpeed, slipOf } from '../../src/physics/belt-drive.ts';
import { OutOfRange } from '../../src/physics/out-of-range.ts';
import { metre } from '../../src/physics/units.ts';

const drive = (crank: number, pump: number) => ({
  crankPulley: metre(crank / 1000),
  pumpPulley: metre(pump / 1000),
});

describe('pumpSpeed', () => {
  // Khurmi and Gupta, Theory of Machines, example 11.1 (from memory): 150 1/min over 750/450 and 900/150 mm come to 1,500, with 2 % at each to 1,440.
  test('gives the speeds of a worked example', () => {
    expect(pumpSpeed(drive(900, 150), pumpSpeed(drive(750, 450), 150, 0), 0)).toBeCloseTo(1500, 6);
    expect(pumpSpeed(drive(900, 150), pumpSpeed(drive(750, 450), 150, 0.02), 0.02)).toBeCloseTo(1440.6, 1);
  });

  test('refuses a pulley that is none and a slip over the whole', () => {
    expect(() => driveRatio(drive(0, 100))).toThrow(OutOfRange);
    expect(() => pumpSpeed(drive(100, 100), 800, 1.1)).toThrow(OutOfRange);
    expect(() => slipOf(drive(100, 100), 0, 800)).toThrow(OutOfRange);
  });
});

describe('slipOf', () => {
  const pulley = fc.integer({ min: 40, max: 300 });
  test('is the slip that the speed was made with', () => {
    fc.assert(
      fc.property(
        pulley,
        pulley,
        fc.integer({ min: 500, max: 4000 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (a, b, crank, slip) => {
          fc.pre((crank * a) / b < 29_000);
          expect(slipOf(drive(a, b), crank, pumpSpeed(drive(a, b), crank, slip))).toBeCloseTo(slip, 9);
        },
      ),
    );
  });

  test('never goes from holds to slips by a pulley out by a millimetre or a counter by half a per cent', () => {
    fc.assert(
      fc.property(pulley, pulley, fc.double({ min: -0.03, max: 0.03, noNaN: true }), (a, b, slip) => {
        const pump = (2000 * a * (1 - slip)) / b;
        fc.pre(pump < 29_000);
        for (const way of [-1, 1]) {
          expect(judgeSlip(slipOf(drive(a + way, b), 2000, pump))).not.toBe('slips');
          expect(judgeSlip(slipOf(drive(a, b + way), 2000, pump))).not.toBe('slips');
          expect(judgeSlip(slipOf(drive(a, b), 2000 * (1 + 0.005 * way), pump))).not.toBe('slips');
          expect(judgeSlip(slipOf(drive(a, b), 2000, pump * (1 + 0.005 * way)))).not.toBe('slips');
        }
      }),
    );
  });
});
