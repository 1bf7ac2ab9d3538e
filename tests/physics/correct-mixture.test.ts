import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { correctMixture, fillAfterDrain } from '../../src/physics/correct-mixture.ts';
import { flushesToBelow, oldCoolantLeft } from '../../src/physics/flushing.ts';
import { type CubicMetre, fromLitres, volumeFraction } from '../../src/physics/units.ts';
import { spread } from './spread.ts';

const fractions = spread(0, 1).map(volumeFraction);
const litres = spread(1, 20);
const toLitres = (volume: CubicMetre) => volume * 1000;

describe('correctMixture', () => {
  test('keeps volume and glycol', () => {
    fc.assert(
      fc.property(litres, fractions, fractions, fractions, (capacity, is, wanted, adding) => {
        const answer = correctMixture({ capacity: fromLitres(capacity), is, wanted, adding });
        if (answer.verdict !== 'drain and add') return;
        const kept = capacity - toLitres(answer.drain);
        expect(kept + toLitres(answer.add)).toBeCloseTo(capacity, 9);
        expect(kept * is + toLitres(answer.add) * adding).toBeCloseTo(capacity * wanted, 9);
        expect(kept).toBeGreaterThanOrEqual(-1e-9);
      }),
    );
  });

  test('is reachable exactly when the strength wanted lies between what is inside and what is added', () => {
    fc.assert(
      fc.property(fractions, fractions, fractions, (is, wanted, adding) => {
        fc.pre([is - wanted, adding - is, adding - wanted].every((apart) => Math.abs(apart) > 1e-5));
        const { verdict } = correctMixture({ capacity: fromLitres(6), is, wanted, adding });
        const between = (wanted > is && wanted <= adding) || (wanted < is && wanted >= adding);
        expect(verdict).toBe(between ? 'drain and add' : 'not reachable');
      }),
    );
  });

  test('cannot be made stronger than the ready mix that is added', () => {
    const answer = correctMixture({
      capacity: fromLitres(6),
      is: volumeFraction(0.3),
      wanted: volumeFraction(0.55),
      adding: volumeFraction(0.5),
    });
    expect(answer).toEqual({ verdict: 'not reachable', needs: 'stronger' });
  });

  test('has nothing to do when it is right', () => {
    const half = volumeFraction(0.5);
    expect(correctMixture({ capacity: fromLitres(6), is: half, wanted: half, adding: half })).toEqual({
      verdict: 'right already',
    });
  });
});

describe('fillAfterDrain', () => {
  test('keeps volume and glycol with what stayed inside', () => {
    fc.assert(
      fc.property(litres, fractions, fractions, fractions, (capacity, share, left, wanted) => {
        const remaining = capacity * share;
        const answer = fillAfterDrain({
          capacity: fromLitres(capacity),
          remaining: fromLitres(remaining),
          remainingStrength: left,
          wanted,
          strong: volumeFraction(1),
          weak: volumeFraction(0),
        });
        if (answer.verdict === 'fill') {
          const [strong, weak] = [toLitres(answer.strong), toLitres(answer.weak)];
          expect(remaining + strong + weak).toBeCloseTo(capacity, 6);
          expect(remaining * left + strong).toBeCloseTo(capacity * wanted, 4);
        } else {
          expect(Math.abs(answer.nearest - wanted)).toBeGreaterThan(0);
          if (answer.mayRemain !== undefined) expect(toLitres(answer.mayRemain)).toBeLessThan(remaining);
        }
      }),
    );
  });

  // 6 l, 2 l of water left after flushing: 3 l concentrate and 1 l water make half and half.
  test('fills concentrate first when water stayed inside', () => {
    const answer = fillAfterDrain({
      capacity: fromLitres(6),
      remaining: fromLitres(2),
      remainingStrength: volumeFraction(0),
      wanted: volumeFraction(0.5),
      strong: volumeFraction(1),
      weak: volumeFraction(0),
    });
    if (answer.verdict !== 'fill') throw new Error(answer.verdict);
    expect(toLitres(answer.strong)).toBeCloseTo(3, 9);
    expect(toLitres(answer.weak)).toBeCloseTo(1, 9);
  });

  test('says how much more to drain when too much water stayed inside', () => {
    const answer = fillAfterDrain({
      capacity: fromLitres(6),
      remaining: fromLitres(4),
      remainingStrength: volumeFraction(0),
      wanted: volumeFraction(0.5),
      strong: volumeFraction(1),
      weak: volumeFraction(0),
    });
    if (answer.verdict !== 'not reachable') throw new Error(answer.verdict);
    expect(answer.remainder).toBe('too weak');
    expect(answer.nearest).toBeCloseTo(1 / 3, 9);
    expect(toLitres(answer.mayRemain ?? fromLitres(0))).toBeCloseTo(3, 9);
  });

  test('refuses more left inside than the system holds, and two liquids of one strength', () => {
    const question = {
      capacity: fromLitres(6),
      remaining: fromLitres(7),
      remainingStrength: volumeFraction(0),
      wanted: volumeFraction(0.5),
      strong: volumeFraction(1),
      weak: volumeFraction(0),
    };
    expect(() => fillAfterDrain(question)).toThrow('volume left inside');
    expect(() => fillAfterDrain({ ...question, remaining: fromLitres(1), weak: volumeFraction(1) })).toThrow(
      'strength of the stronger liquid',
    );
  });
});

describe('flushing', () => {
  test('takes as many rounds as it takes, and not one more', () => {
    fc.assert(
      fc.property(litres, spread(0.05, 1), spread(0.001, 1), (capacity, share, below) => {
        const [all, drained] = [
          fromLitres(capacity),
          fromLitres(Math.min(capacity, capacity * share * 1.0001)),
        ];
        const flushes = flushesToBelow(all, drained, below);
        expect(oldCoolantLeft(all, drained, flushes)).toBeLessThan(below);
        if (flushes > 0) expect(oldCoolantLeft(all, drained, flushes - 1)).toBeGreaterThanOrEqual(below);
      }),
    );
  });

  // 6 l, 4 l out each time: a third, a ninth, a 27th, an 81st.
  test('leaves an 81st after four rounds of two thirds', () => {
    expect(oldCoolantLeft(fromLitres(6), fromLitres(4), 4)).toBeCloseTo(1 / 81, 12);
    expect(flushesToBelow(fromLitres(6), fromLitres(4), 0.05)).toBe(3);
  });

  test('is refused with a thimble', () => {
    expect(() => flushesToBelow(fromLitres(6), fromLitres(0.1), 0.05)).toThrow('drained volume');
  });
});
