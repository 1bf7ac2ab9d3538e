/** The timer's arithmetic: kept by the moment of its end, whatever the page and the device's clock do meanwhile. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  clockText,
  isDue,
  lengthText,
  MOST,
  mended,
  readTimers,
  timeLeft,
  timerFor,
} from '../../../src/site/timer/timers.ts';

const ABOUT = {
  id: 'timer-a',
  title: 'Does it hold?',
  step: 'Valve shut.',
  from: 'tests/vacuum-hold.html#wait-3',
};
const AT = Date.UTC(2026, 10, 25, 10);
const MINUTE = 60_000;

const minutes = fc.integer({ min: 1, max: 720 });
const moment = fc.integer({ min: AT - 400 * 86_400_000, max: AT + 400 * 86_400_000 });

describe('time left', () => {
  test('is the length at the start, half of it half-way, and nothing from the end on', () => {
    const timer = timerFor(ABOUT, 15, AT);
    expect(timeLeft(timer, AT)).toBe(15 * MINUTE);
    expect(timeLeft(timer, AT + 7.5 * MINUTE)).toBe(7.5 * MINUTE);
    expect(isDue(timer, AT + 15 * MINUTE - 1)).toBe(false);
    expect(isDue(timer, AT + 15 * MINUTE)).toBe(true);
    expect(timeLeft(timer, AT + 90 * MINUTE)).toBe(0);
  });

  test('does not depend on how often it was looked at, nor on being kept and read back', () => {
    fc.assert(
      fc.property(minutes, moment, fc.array(fc.integer({ min: 0, max: 50_000_000 })), (length, at, looks) => {
        let timer = timerFor(ABOUT, length, at);
        for (const after of looks.sort((a, b) => a - b)) {
          const [back] = readTimers(JSON.parse(JSON.stringify([mended(timer, at + after)])));
          if (!back) throw new Error('was not read back');
          timer = back;
          expect(timeLeft(timer, at + after)).toBe(Math.max(length * MINUTE - after, 0));
        }
      }),
    );
  });

  test('is never below nothing nor above the length, whatever the clock says', () => {
    fc.assert(
      fc.property(minutes, moment, moment, (length, at, now) => {
        const left = timeLeft(timerFor(ABOUT, length, at), now);
        expect(left).toBeGreaterThanOrEqual(0);
        expect(left).toBeLessThanOrEqual(length * MINUTE);
      }),
    );
  });
});

describe('a clock that was set back', () => {
  test('by an hour after ten of fifteen minutes: the whole fifteen run once more, not an hour and five', () => {
    const timer = mended(timerFor(ABOUT, 15, AT), AT - 50 * MINUTE);
    expect(timeLeft(timer, AT - 50 * MINUTE)).toBe(15 * MINUTE);
    expect(isDue(timer, AT - 35 * MINUTE)).toBe(true);
  });

  test('a timer is due within its length from any look, never sooner than first said, and mending twice changes nothing', () => {
    fc.assert(
      fc.property(minutes, moment, moment, (length, at, now) => {
        const before = timerFor(ABOUT, length, at);
        const timer = mended(before, now);
        expect(isDue(timer, now + length * MINUTE)).toBe(true);
        expect(timeLeft(timer, now)).toBe(timeLeft(before, now));
        expect(mended(timer, now)).toBe(timer);
      }),
    );
  });
});

test.each([
  [15 * MINUTE, '15:00'],
  [15 * MINUTE - 1, '15:00'],
  [14 * MINUTE + 59_000, '14:59'],
  [1, '0:01'],
  [0, '0:00'],
  [64 * MINUTE, '1:04:00'],
])('%i ms are shown as %s', (left, text) => {
  expect(clockText(left)).toBe(text);
});

test.each([
  [1, '1 min'],
  [15, '15 min'],
  [60, '1 h'],
  [90, '1 h 30 min'],
  [120, '2 h'],
])('%i minutes are called %s', (length, text) => {
  expect(lengthText(length)).toBe(text);
});

describe('what a device has kept', () => {
  const good = timerFor(ABOUT, 15, AT);
  test.each<[string, unknown]>([
    ['no list', { 0: good }],
    ['nothing', null],
    ['an end that is no moment', [{ ...good, ends: null }]],
    ['no length', [{ ...good, length: 0 }]],
    ['a length of a year', [{ ...good, length: 365 * 86_400_000 }]],
    ['a script for an address', [{ ...good, from: 'javascript:alert(1)//x.html' }]],
    ['an address elsewhere', [{ ...good, from: '//elsewhere.example/x.html' }]],
    ['a title that is no text', [{ ...good, title: { toString: 1 } }]],
  ])('is passed over: %s', (_, value) => {
    expect(readTimers(value)).toEqual([]);
  });

  test('is read where it is whole, and no more than fit a page', () => {
    expect(readTimers([good, 'x', good])).toEqual([good, good]);
    expect(readTimers(Array.from({ length: 50 }, () => good))).toHaveLength(MOST);
  });
});
