import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { accountForFill } from '../../src/physics/fill-account.ts';
import { fromLitres } from '../../src/physics/units.ts';

function account(
  capacity: number,
  drained: number,
  refilled: number,
  takesNoMore = true,
  shortBefore: number | undefined = 0,
) {
  const { verdict, missing, inside, allowance } = accountForFill({
    capacity: fromLitres(capacity),
    drained: fromLitres(drained),
    refilled: fromLitres(refilled),
    ...(shortBefore !== undefined && { shortBefore: fromLitres(shortBefore) }),
    takesNoMore,
  });
  return { verdict, missing: missing * 1000, inside: (inside ?? 0) * 1000, allowance: allowance * 1000 };
}

describe('accountForFill', () => {
  test('finds about 1.7 l of air in a 4.6 l system that gave 4.0 and took 2.3', () => {
    const { verdict, missing, inside } = account(4.6, 4.0, 2.3);
    expect(verdict).toBe('air inside');
    expect(missing).toBeCloseTo(1.7, 9);
    expect(inside).toBeCloseTo(2.9, 9);
  });

  test.each([
    [4.6, 4.0, 2.3, false, 'keep filling'],
    [4.6, 4.0, 3.4, true, 'air inside'],
    [4.6, 4.0, 3.6, true, 'a little short'],
    [4.6, 4.0, 3.7, true, 'full'],
    [4.6, 4.0, 4.1, true, 'full'],
    [4.6, 3.0, 4.4, true, 'took more than drained'],
    [4.6, 5.5, 4.0, true, 'drained more than it holds'],
    [4.6, 4.0, 5.5, true, 'took more than it holds'],
    [4.6, 0, 0, true, 'full'],
    // A jug may read a drop more than the plate says, in a small system as much as in a large one.
    [4.6, 4.8, 4.8, true, 'full'],
    [2, 2.14, 2.14, true, 'full'],
    [2, 2.4, 2.0, true, 'drained more than it holds'],
    [2, 2.0, 2.4, true, 'took more than it holds'],
    // A tenth missing is never nothing, however small the filling.
    [4.0, 2.5, 2.25, true, 'a little short'],
    [6.0, 1.0, 0.85, true, 'a little short'],
    // A wide allowance is for a system that is large, not for a slip of the pen.
    [52, 4.4, 2.0, true, 'air inside'],
    [28, 10, 8.65, true, 'air inside'],
    [20, 9, 8.55, true, 'full'],
  ])(
    '%d l system, %d out, %d in, takes no more %s: %s',
    (capacity, drained, refilled, takesNoMore, verdict) => {
      expect(account(capacity, drained, refilled, takesNoMore).verdict).toBe(verdict);
    },
  );

  test('counts what was short before as missing, and does not call it full where nobody looked', () => {
    expect(account(6, 3.5, 3.5, true, 1.5)).toMatchObject({ verdict: 'air inside', missing: 1.5 });
    expect(account(6, 5.0, 5.6, true, 0.6).verdict).toBe('full');
    expect(
      accountForFill({ drained: fromLitres(3.5), refilled: fromLitres(3.5), takesNoMore: true }).verdict,
    ).toBe('even, if it was full before');
  });

  test('never has more inside than the system holds', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.nat(600), fc.nat(600), (capacity, out, back) => {
        expect(account(capacity, out / 10, back / 10).inside).toBeLessThanOrEqual(capacity + 1e-9);
      }),
    );
  });

  test('allows for jugs and wet walls', () => {
    expect(account(4.6, 4.0, 2.3).allowance).toBeCloseTo(0.3, 9);
    expect(account(20, 9, 9).allowance).toBeCloseTo(0.5, 9);
  });

  test('refuses litres typed as cubic metres', () => {
    expect(() => accountForFill({ ...RECORD, capacity: 4.6 as never })).toThrow('system capacity');
  });
});

const RECORD = {
  capacity: fromLitres(4.6),
  drained: fromLitres(4),
  refilled: fromLitres(2.3),
  takesNoMore: true,
};
