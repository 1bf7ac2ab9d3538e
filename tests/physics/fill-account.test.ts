import { describe, expect, it } from 'vitest';
import { accountForFill } from '../../src/physics/fill-account.ts';
import { fromLitres } from '../../src/physics/units.ts';

function account(capacity: number, drained: number, refilled: number, takesNoMore = true) {
  const { verdict, missing, inside, allowance } = accountForFill({
    capacity: fromLitres(capacity),
    drained: fromLitres(drained),
    refilled: fromLitres(refilled),
    takesNoMore,
  });
  return { verdict, missing: missing * 1000, inside: inside * 1000, allowance: allowance * 1000 };
}

describe('accountForFill', () => {
  it('finds about 1.7 l of air in a 4.6 l system that gave 4.0 and took 2.3', () => {
    const { verdict, missing, inside } = account(4.6, 4.0, 2.3);
    expect(verdict).toBe('air inside');
    expect(missing).toBeCloseTo(1.7, 9);
    expect(inside).toBeCloseTo(2.9, 9);
  });

  it.each([
    [4.6, 4.0, 2.3, false, 'keep filling'],
    [4.6, 4.0, 3.7, true, 'air inside'],
    [4.6, 4.0, 3.8, true, 'full'],
    [4.6, 4.0, 4.1, true, 'full'],
    [4.6, 3.0, 4.4, true, 'took more than drained'],
    [4.6, 5.5, 4.0, true, 'drained more than it holds'],
    [4.6, 4.0, 5.5, true, 'took more than it holds'],
    [4.6, 0, 0, true, 'full'],
    // A jug may read a drop more than the plate says, in a small system as much as in a large one.
    [4.6, 4.8, 4.8, true, 'full'],
    [2, 2.14, 2.14, true, 'full'],
    [2, 2.16, 2.0, true, 'drained more than it holds'],
    [2, 2.0, 2.16, true, 'took more than it holds'],
  ])(
    '%d l system, %d out, %d in, takes no more %s: %s',
    (capacity, drained, refilled, takesNoMore, verdict) => {
      expect(account(capacity, drained, refilled, takesNoMore).verdict).toBe(verdict);
    },
  );

  it('allows for jugs and wet walls', () => {
    expect(account(4.6, 4.0, 2.3).allowance).toBeCloseTo(0.23, 9);
    expect(account(2, 1, 1).allowance).toBeCloseTo(0.15, 9);
  });

  it('refuses litres typed as cubic metres', () => {
    expect(() => accountForFill({ ...RECORD, capacity: 4.6 as never })).toThrow('system capacity');
  });
});

const RECORD = {
  capacity: fromLitres(4.6),
  drained: fromLitres(4),
  refilled: fromLitres(2.3),
  takesNoMore: true,
};
