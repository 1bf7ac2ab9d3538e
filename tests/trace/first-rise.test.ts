/** What the first rise and the drive under the opening show, on logs written by hand as the trade tells them (common practice). */
import { describe, expect, test } from 'vitest';
import type { HandPoint } from './hand-log.ts';
import { judgeByHand } from './judge-by-hand.ts';

/** Town only: it never gets to three minutes at speed. */
const TOWN_TO_STAMP: readonly HandPoint[] = [
  { at: 0, coolant: 10, speed: 0 },
  { at: 1, coolant: 14, speed: 40 },
  { at: 6, coolant: 50, speed: 40 },
  { at: 10.5, coolant: 87, speed: 40 },
  { at: 13, coolant: 88, speed: 40 },
  { at: 17, coolant: 90, speed: 40 },
  { at: 22, coolant: 89, speed: 40 },
];

describe('the rise breaks off at the stamp', () => {
  test('and stays about there: it opens where it should, and what was not asked is said', () => {
    const { verdict, told } = judgeByHand(TOWN_TO_STAMP, 10);
    expect(verdict).toMatchObject({ finding: 'sound', sure: 'likely', causes: [] });
    expect(told.sentence).toMatch(/^The thermostat opens where it should: the rise breaks off at 8[567]\s°C/);
    expect(told.open.join(' ')).toContain('never at speed');
    expect(verdict.outcomes).toContainEqual({ test: 'warm-up-timing', outcome: 'on-time' });
    // At steady speed nothing was seen.
    expect(verdict.outcomes.map(({ test: id }) => id)).not.toContain('cruise-trace');
  });

  test('but sinks far under it later: nothing is called sound', () => {
    const sinks = [
      ...TOWN_TO_STAMP.slice(0, -2),
      { at: 17, coolant: 84, speed: 40 },
      { at: 22, coolant: 70, speed: 40 },
    ];
    expect(judgeByHand(sinks, 10).verdict.finding).not.toBe('sound');
  });

  test('fifteen under it is no stamp', () => {
    const low = TOWN_TO_STAMP.map((each) => ({ ...each, coolant: Math.min(each.coolant, 72) }));
    expect(judgeByHand(low, 10).verdict.finding).not.toBe('sound');
  });

  test('and once a fall of 14 K that nothing explains: nothing is called sound', () => {
    const dips = [
      ...TOWN_TO_STAMP.slice(0, -1),
      { at: 17.5, coolant: 76, speed: 40 },
      { at: 18.5, coolant: 89, speed: 40 },
      { at: 24, coolant: 89, speed: 40 },
    ];
    const { verdict, told } = judgeByHand(dips, 10);
    expect(verdict.finding).toBe('cannot-tell');
    expect(told.open.join(' ')).toContain('Air passing the sensor');
  });

  test('and the reading then stands quite still: that may be no reading, and nothing is called sound', () => {
    const still = [
      ...TOWN_TO_STAMP.slice(0, 4),
      { at: 12, coolant: 88, speed: 40 },
      { at: 24, coolant: 88, speed: 40 },
    ];
    expect(judgeByHand(still, 10).verdict.finding).not.toBe('sound');
  });

  test('a minute after it the log ends: that is no hold', () => {
    expect(judgeByHand(TOWN_TO_STAMP.slice(0, 5), 10).verdict.finding).toBe('cannot-tell');
  });
});

describe('driven under its opening', () => {
  /** Warms standing, sinks each time it is driven, in town. */
  const SINKS: readonly HandPoint[] = [
    { at: 0, coolant: 5, speed: 0 },
    { at: 8, coolant: 55, speed: 0 },
    { at: 8.1, coolant: 55, speed: 45 },
    { at: 11, coolant: 44, speed: 45 },
    { at: 11.1, coolant: 44, speed: 0 },
    { at: 15, coolant: 60, speed: 0 },
    { at: 15.1, coolant: 60, speed: 45 },
    { at: 18, coolant: 46, speed: 45 },
  ];

  test('it sinks: an open way to the radiator, though it was never at speed', () => {
    const { verdict, told } = judgeByHand(SINKS, 5);
    expect(verdict).toMatchObject({
      finding: 'cold-at-speed',
      sure: 'likely',
      symptom: 'reads-low-at-cruise',
    });
    expect(verdict.causes.slice(0, 2)).toEqual(['thermostat-stuck-open', 'thermostat-opens-early']);
    expect(told.sentence).toMatch(/driven, it sinks from 60\s°C to 4[67]\s°C/);
  });

  test('standing in the frost alone blames nobody: engines differ too much at idle', () => {
    const idle = [
      { at: 0, coolant: -15, speed: 0 },
      { at: 20, coolant: 22, speed: 0 },
      { at: 40, coolant: 35, speed: 0 },
    ];
    expect(judgeByHand(idle, -15).verdict.finding).toBe('cannot-tell');
  });
});

describe('steady, but not at its figure', () => {
  const cruise = (level: number, speed: number, start = 12): readonly HandPoint[] => [
    { at: 0, coolant: start, speed: 0 },
    { at: 1, coolant: start + 6, speed: 60 },
    { at: 9, coolant: Math.min(level, 84), speed: 60 },
    { at: 12, coolant: level, speed },
    { at: 24, coolant: level, speed },
  ];

  test('half the lift over the stamp at 85 km/h and 12 °C: the heat does not get out as it should; no alarm', () => {
    const { verdict, told } = judgeByHand(cruise(97, 85), 12);
    expect(verdict).toMatchObject({ finding: 'holds-high', stop: false, symptom: 'hot-under-load' });
    expect(verdict.causes).toContain('thermostat-opens-late');
    expect(told.sentence).toMatch(/^It holds, but too high: 97\s°C/);
  });

  test('the same at 125 km/h, or on a day of 33 °C, blames nobody', () => {
    expect(judgeByHand(cruise(96, 125), 12).verdict.causes).toEqual([]);
    expect(judgeByHand(cruise(96, 85, 33), 33).verdict.causes).toEqual([]);
  });

  test('as high, but coming down: it is not held', () => {
    const falls = [
      { at: 0, coolant: 12, speed: 0 },
      { at: 1, coolant: 18, speed: 60 },
      { at: 9, coolant: 84, speed: 60 },
      { at: 11, coolant: 90, speed: 50 },
      { at: 13, coolant: 98, speed: 50 },
      { at: 13.2, coolant: 98, speed: 85 },
      { at: 17.7, coolant: 95, speed: 20 },
      { at: 19.7, coolant: 95, speed: 20 },
    ];
    expect(judgeByHand(falls, 12).verdict).toMatchObject({ finding: 'cannot-tell', causes: [] });
  });

  test('five over the stamp is a usual figure', () => {
    expect(judgeByHand(cruise(92, 85), 12).verdict.finding).toBe('sound');
  });

  test('a degree over the figure that is too low: a sensor and a stamp are that far out, nobody is passed or blamed', () => {
    const { verdict, told } = judgeByHand(cruise(79, 85), 12);
    expect(verdict).toMatchObject({ finding: 'cannot-tell', causes: [] });
    expect(told.open.join(' ')).toMatch(
      /79.°C at speed, under the 87.°C .* less than a thermostat is blamed for/,
    );
  });

  test('breaks off at 70 and holds 72 in the cold: something opens there, heater or not', () => {
    const low: readonly HandPoint[] = [
      { at: 0, coolant: -5, speed: 0 },
      { at: 1, coolant: 0, speed: 60 },
      { at: 8, coolant: 70, speed: 60 },
      { at: 10, coolant: 71, speed: 60 },
      { at: 12, coolant: 72, speed: 85 },
      { at: 24, coolant: 72, speed: 85 },
    ];
    const { verdict } = judgeByHand(low, -5);
    expect(verdict.finding).toBe('low-throughout');
    expect(verdict.causes).toContain('thermostat-opens-early');
  });

  test('the same figure reached slowly, bending over a quarter of an hour: cold air may do that', () => {
    const slow: readonly HandPoint[] = [
      { at: 0, coolant: -20, speed: 0 },
      { at: 4, coolant: 5, speed: 60 },
      { at: 8, coolant: 28, speed: 60 },
      { at: 12, coolant: 45, speed: 60 },
      { at: 16, coolant: 57, speed: 60 },
      { at: 20, coolant: 65, speed: 60 },
      { at: 24, coolant: 70, speed: 60 },
      { at: 28, coolant: 73, speed: 60 },
      { at: 32, coolant: 74, speed: 60 },
    ];
    expect(judgeByHand(slow, -20).verdict.causes).toEqual([]);
  });
});
