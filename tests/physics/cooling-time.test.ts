import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { coolingTime, coolingTimeSeen, warmUpTime } from '../../src/physics/cooling-time.ts';
import { fromCelsius, fromLitres, second } from '../../src/physics/units.ts';
import { spread } from './spread.ts';

const MINUTE = 60;
const c = fromCelsius;

describe('coolingTimeSeen', () => {
  // Newton's law of cooling, the textbook's body in a room of 20 °C: from 80 to 60 °C in 20 minutes, then to 40 °C in 20 ln 2/ln 1.5 = 34.2.
  test('carries the pace of two readings on, the textbook’s answer inside', () => {
    const { soonest, latest } = coolingTimeSeen(c(80), c(60), second(20 * MINUTE), c(40), c(20));
    expect(soonest / MINUTE).toBeLessThan(34.2);
    expect(latest / MINUTE).toBeGreaterThan(34.2);
    expect(latest / soonest).toBeLessThan(2.2);
  });

  test('a quicker fall never means a longer wait', () => {
    fc.assert(
      fc.property(
        spread(70, 100),
        spread(5, 30),
        spread(0.5, 8),
        spread(0, 35),
        (first, fall, more, outside) => {
          const wait = (by: number) =>
            coolingTimeSeen(c(first + 20), c(first + 20 - by), second(1800), c(50), c(outside));
          fc.pre(first + 20 - fall - more > 52);
          expect(wait(fall + more).latest).toBeLessThanOrEqual(wait(fall).latest + 1e-6);
        },
      ),
    );
  });
});

describe('coolingTime', () => {
  // Common practice: one to two hours with the bonnet open, half of it with a blower.
  test('is one to two hours from warm to 50 °C', () => {
    const open = coolingTime(fromLitres(6), 'bonnet open', c(95), c(50), c(20));
    expect(open.soonest / MINUTE).toBeCloseTo(60, -0.5);
    expect(open.latest / MINUTE).toBeCloseTo(120, -0.5);
    const blown = coolingTime(fromLitres(6), 'blower before it', c(95), c(50), c(20));
    expect(blown.latest).toBeCloseTo(open.latest / 2, 6);
  });

  test('refuses an end that the air does not allow', () => {
    expect(() => coolingTime(fromLitres(6), 'bonnet open', c(95), c(50), c(52))).toThrow(
      'temperature to cool to',
    );
  });
});

describe('warmUpTime', () => {
  const warm = (how: 'town' | 'standing, fast idle' | 'open road', at: number) =>
    warmUpTime(c(88), second(9 * MINUTE), how, { start: c(at), outside: c(at), heater: 0 });

  test('holds the usual time on the usual day', () => {
    const { gets, ...span } = warm('town', 20);
    expect(gets).toBe('there');
    if ('latest' in span) {
      expect(span.soonest / MINUTE).toBeLessThan(9);
      expect(span.latest / MINUTE).toBeGreaterThan(9);
    }
  });

  test('takes longer in frost', () => {
    const [mild, frost] = [warm('town', 20), warm('town', -15)];
    expect(mild.gets).toBe('there');
    if ('soonest' in mild && 'soonest' in frost) expect(frost.soonest).toBeGreaterThan(mild.soonest);
  });
});
