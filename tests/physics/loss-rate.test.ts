import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { againstTester, judgeLoss, lastsFor, usualTimeFor } from '../../src/physics/loss-rate.ts';
import { cubicMetre, cubicMetrePerSecond, fromLitres, metre, second } from '../../src/physics/units.ts';
import { spread } from './spread.ts';

const DAY = 86_400;
const watch = (litres: number, error: number, days: number, kilometres: number, justFilled = false) =>
  judgeLoss({
    lost: (litres / 1e3) as never,
    error: fromLitres(error),
    time: second(days * DAY),
    distance: metre(kilometres * 1e3),
    justFilled,
  });

describe('judgeLoss', () => {
  // By hand: 0.6 l in 12 days and 1,500 km is 50 ml a day and 0.4 l in 1,000 km.
  test('gives litres a day and in 1,000 km', () => {
    const { byTime, byDistance } = watch(0.6, 0.03, 12, 1500);
    expect((byTime ?? 0) * DAY * 1e6).toBeCloseTo(50, 9);
    expect((byDistance ?? 0) * 1e6 * 1e3).toBeCloseTo(0.4, 9);
  });

  test('a loss that moves by its error never goes from nothing to “not driven”', () => {
    fc.assert(
      fc.property(
        spread(-0.1, 1),
        spread(0, 0.5),
        spread(0.1, 40),
        spread(1, 3000),
        fc.boolean(),
        (litres, error, days, kilometres, filled) => {
          fc.pre(watch(litres, error, days, kilometres, filled).verdict === 'nothing lost');
          expect(watch(litres + error, error, days, kilometres, filled).verdict).not.toBe('loses fast');
        },
      ),
    );
  });

  test('is never milder for more that is missing', () => {
    const order = [
      'rose',
      'too short',
      'nothing lost',
      'cannot tell',
      'undecided',
      'settles',
      'loses',
      'loses fast',
    ];
    fc.assert(
      fc.property(
        spread(-0.3, 2),
        spread(0, 1),
        spread(0.1, 40),
        spread(1, 3000),
        (litres, more, days, kilometres) => {
          const rank = (lost: number) => order.indexOf(watch(lost, 0.03, days, kilometres).verdict);
          expect(rank(litres + more)).toBeGreaterThanOrEqual(rank(litres));
        },
      ),
    );
  });
});

describe('lastsFor', () => {
  // By hand: 0.4 l left, 0.2 l ± 0.05 l went in 10 days, so 0.4/0.25 × 10 = 16 to 0.4/0.15 × 10 = 26.7 days.
  test('gives the quickest and the slowest that the error allows', () => {
    const { soonest, latest } = lastsFor(fromLitres(0.4), 0.2e-3, 0.05e-3, second(10 * DAY));
    expect(soonest / DAY).toBeCloseTo(16, 9);
    expect((latest ?? 0) / DAY).toBeCloseTo(26.667, 3);
  });

  test('gives no latest when the loss may be nothing', () => {
    expect(lastsFor(cubicMetre(0.4e-3), 0.05e-3, 0.05e-3, second(DAY)).latest).toBeUndefined();
  });
});

describe('againstTester', () => {
  // By hand: 0.5 ml a minute over 1,000 km at 40 km/h, 25 h or 1,500 min, is 0.75 l.
  test('sets the leak of the tester beside the loss of the road', () => {
    const hours = second(usualTimeFor(metre(1e6)));
    const { expected, accounts } = againstTester(0.6e-3, cubicMetrePerSecond(0.5e-6 / 60), hours);
    expect(expected * 1e3).toBeCloseTo(0.75, 9);
    expect(accounts).toBe('for it');
    expect(againstTester(2.4e-3, cubicMetrePerSecond(0.5e-6 / 60), hours).accounts).toBe(
      'for less than is lost',
    );
    expect(againstTester(0.2e-3, cubicMetrePerSecond(0.5e-6 / 60), hours).accounts).toBe(
      'for more than is lost',
    );
  });
});
