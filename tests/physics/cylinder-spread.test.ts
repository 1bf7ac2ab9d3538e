import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compressionSpread, leakDownSpread, READ_TO } from '../../src/physics/cylinder-spread.ts';
import { spread } from './spread.ts';

const bar = (...read: number[]) => compressionSpread(read.map((each) => each * 1e5));

describe('compressionSpread', () => {
  // A rule printed in engine manuals, from memory: lowest at least 75 % of the highest, such as 134 psi needing 101, 180 needing 135.
  test.each([
    [134, 101],
    [160, 120],
    [180, 135],
    [200, 150],
    [240, 180],
  ])('with %d psi as the highest, %d is the lowest that passes', (highest, lowest) => {
    const psi = 6894.757;
    expect(compressionSpread([highest * psi, (lowest + 1) * psi]).verdict).not.toBe('low');
    expect(compressionSpread([highest * psi, (lowest - 1) * psi]).verdict).toBe('low');
  });

  test('names two low neighbours, and no two that are apart', () => {
    expect(bar(12, 7, 7.2, 12).neighbours).toEqual([1, 2]);
    expect(bar(7, 12, 12, 7).neighbours).toBeUndefined();
    expect(bar(7, 12, 12, 7).low).toEqual([0, 3]);
  });

  test('names the one that stands above even others, and none where one is merely low', () => {
    expect(bar(12, 12, 15, 12).high).toBe(2);
    expect(bar(12, 12, 9, 12).high).toBeUndefined();
  });

  test('a reading moved by its error never goes from even to low', () => {
    fc.assert(
      fc.property(
        fc.array(spread(6, 16), { minLength: 2, maxLength: 8 }),
        fc.nat(7),
        fc.boolean(),
        (read, at, up) => {
          fc.pre(bar(...read).verdict === 'even');
          const moved = read.map((each, i) =>
            i === at % read.length ? each * (up ? 1 + READ_TO : 1 - READ_TO) : each,
          );
          expect(bar(...moved).verdict).not.toBe('low');
        },
      ),
    );
  });
});

describe('leakDownSpread', () => {
  test('goes by the share lost, whatever the others lose', () => {
    expect(leakDownSpread([0.08, 0.149]).verdict).toBe('even');
    expect(leakDownSpread([0.2, 0.2]).verdict).toBe('undecided');
    expect(leakDownSpread([0.08, 0.3, 0.31]).neighbours).toEqual([1, 2]);
  });
});
