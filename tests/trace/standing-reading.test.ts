/** Readings that stand still: regulated coolant does it too, so only what leapt there and never moves again is blamed. */
import { describe, expect, test } from 'vitest';
import type { HandPoint } from './hand-log.ts';
import { judgeByHand } from './judge-by-hand.ts';
import { sheetWith } from './known-cars.ts';

/** Warms up to a figure by 9 min and stands there to the end: town, road, a stop, road. */
function standsAt(coolant: number, start = 15): HandPoint[] {
  return [
    { at: 0, coolant: start, speed: 0 },
    { at: 1, coolant: start + 4, speed: 50 },
    { at: 9, coolant, speed: 50 },
    { at: 12, coolant, speed: 90 },
    { at: 22, coolant, speed: 0 },
    { at: 24, coolant, speed: 90 },
    { at: 36, coolant, speed: 90 },
  ];
}

describe('came by a slope: no blame on the sensor', () => {
  test.each([60, 66, 72, 79, 84, 89, 92, 96])('%d °C for 27 minutes', (coolant) => {
    const { verdict } = judgeByHand(standsAt(coolant), 15);
    expect(verdict.finding).not.toBe('sensor-stands-still');
    expect(verdict.causes).not.toContain('sensor-intermittent');
  });

  test('ten minutes of motorway at one figure, then it moves: a thermostat that opens early', () => {
    const { verdict } = judgeByHand(
      [
        { at: 0, coolant: 0, speed: 0 },
        { at: 4, coolant: 30, speed: 60 },
        { at: 12, coolant: 27, speed: 120 },
        { at: 23, coolant: 27, speed: 120 },
        { at: 30, coolant: 60, speed: 0 },
      ],
      0,
    );
    expect(verdict.finding).toBe('cold-at-speed');
  });

  test('20 minutes at its stamp on a car whose fan always runs: sound', () => {
    const sheet = sheetWith({ 'thermostat.opens': '83 °C', 'fan.on': '94 °C' });
    const points = standsAt(84).map((each) => ({ ...each, fan: true }));
    expect(judgeByHand(points, 10, { sheet }).verdict.finding).toBe('sound');
  });

  test('a car that nothing is known of, at 95 °C for long: no blame', () => {
    expect(judgeByHand(standsAt(95), 15, { sheet: 'unknown' }).verdict.causes).toEqual([]);
  });
});

describe('came by a step', () => {
  const leaps = (after: readonly HandPoint[]) =>
    judgeByHand(
      [
        { at: 0, coolant: 15, speed: 0 },
        { at: 6, coolant: 70, speed: 60 },
        { at: 6.02, coolant: 80, speed: 60 },
        ...after,
      ],
      15,
    );

  test('and never moves again: a substitute', () => {
    const { verdict, told } = leaps([
      { at: 12, coolant: 80, speed: 90 },
      { at: 20, coolant: 80, speed: 0 },
      { at: 22, coolant: 80, speed: 0 },
    ]);
    expect(verdict).toMatchObject({ finding: 'sensor-stands-still', sure: 'clear' });
    expect(verdict.causes).toContain('sensor-open-circuit');
    expect(told.sentence).toMatch(/leaps to 80.°C and never moves again/);
  });

  test('and moves again later: no substitute', () => {
    const { verdict } = leaps([
      { at: 20, coolant: 80, speed: 90 },
      { at: 26, coolant: 88, speed: 0 },
    ]);
    expect(verdict.finding).not.toBe('sensor-stands-still');
  });
});

test('95 to 70 °C between two readings on the motorway, and nothing since: a substitute after two minutes of it', () => {
  const points = (minutes: number): HandPoint[] => [
    { at: 0, coolant: 32, speed: 0 },
    { at: 4, coolant: 95, speed: 67 },
    { at: 5.5, coolant: 95, speed: 126 },
    { at: 5.52, coolant: 70, speed: 126 },
    { at: 5.52 + minutes, coolant: 70, speed: 126 },
  ];
  expect(judgeByHand(points(6.8), 31).verdict.finding).toBe('sensor-stands-still');
  expect(judgeByHand(points(1.5), 31).verdict.finding).toBe('sensor-jumps');
});
