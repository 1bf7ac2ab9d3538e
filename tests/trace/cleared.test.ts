/** What a sound log clears and does not, and the dips that make one unsound: logs written by hand as the trade tells them (common practice). */
import { describe, expect, test } from 'vitest';
import { SHOWN_BY_LOGS } from '../../src/trace/cleared.ts';
import { FINDINGS, pointsTo } from '../../src/trace/verdict.ts';
import { type HandPoint, SOUND_RUN } from './hand-log.ts';
import { judgeByHand } from './judge-by-hand.ts';
import { STAMP_88 } from './known-cars.ts';

const judge = (points: readonly HandPoint[], outside = 12) =>
  judgeByHand(points, outside, { sheet: STAMP_88 });

test('every cause that a finding points to is cleared or not', () => {
  const named = new Set(FINDINGS.flatMap((finding) => pointsTo(finding).causes));
  expect([...named].filter((cause) => !SHOWN_BY_LOGS.some((each) => each === cause))).toEqual([]);
});

describe('a sound run', () => {
  test('clears thermostat and fan, and says what it cannot clear with the test that does', () => {
    const { verdict, told } = judge(SOUND_RUN);
    expect(verdict.finding).toBe('sound');
    expect(verdict.clears?.cleared).toEqual(
      expect.arrayContaining(['thermostat-stuck-shut', 'thermostat-opens-late', 'fan-motor-dead']),
    );
    expect(told.because).toMatch(/Cleared: a thermostat stuck shut, .*the fan/);
    const words = told.open.join('\n');
    expect(words).toMatch(/Not cleared: low coolant, trapped air.*Level cold/);
    expect(words).toMatch(/Not cleared: a radiator half blocked.*Fins by eye/);
    expect(words).not.toMatch(/Not cleared: the fan/);
    for (const line of told.open) expect(line.split(' ').length).toBeLessThanOrEqual(60);
  });

  test('without its fan clears no fan, and says so once', () => {
    const { verdict, told } = judge(SOUND_RUN.slice(0, 9));
    expect(verdict.finding).toBe('sound');
    expect(verdict.clears?.cleared).not.toContain('fan-motor-dead');
    expect(told.open.filter((line) => /\bfan was not needed|Not cleared: the fan/.test(line))).toHaveLength(
      1,
    );
  });

  test('on a mild day does not clear a seat that leaks; on a cold one it does', () => {
    const seat = (outside: number) => {
      const shifted = SOUND_RUN.map((each) => ({ ...each, coolant: Math.max(each.coolant, outside) }));
      return judge(shifted, outside).verdict.clears?.cleared.includes('thermostat-not-seated');
    };
    expect(seat(5)).toBe(true);
    expect(seat(22)).toBe(false);
  });

  test('anything but sound clears nothing', () => {
    const { verdict } = judge(SOUND_RUN.map((each) => ({ ...each, coolant: Math.min(each.coolant, 70) })));
    expect(verdict.finding).not.toBe('sound');
    expect(verdict.clears).toBeUndefined();
  });
});

/** A fall of ten at 50 °C within 12 s and back within so many seconds. */
const dip = (at: number, coolant: number, back: number, to = coolant + 1): HandPoint[] => [
  { at, coolant, speed: 50 },
  { at: at + 0.2, coolant: coolant - 10, speed: 50 },
  { at: at + 0.2 + back / 60, coolant: to, speed: 50 },
];

describe('a fall in the first rise', () => {
  test('twice, and back as quickly: air passes the sensor', () => {
    const { verdict, told } = judge([
      ...SOUND_RUN.slice(0, 2),
      ...dip(3.5, 40, 12),
      ...dip(4.8, 52, 12),
      ...SOUND_RUN.slice(2),
    ]);
    expect(verdict).toMatchObject({ finding: 'dips-warming', sure: 'likely', stop: false });
    expect(verdict.causes).toEqual(expect.arrayContaining(['trapped-air', 'coolant-low']));
    expect(told.sentence).toMatch(
      /falls by (8|9|10).K within seconds.*more than once: air passes the sensor/,
    );
  });

  test('once: nothing is blamed, and nothing called sound', () => {
    const { verdict, told } = judge([...SOUND_RUN.slice(0, 2), ...dip(4, 45, 12), ...SOUND_RUN.slice(2)]);
    expect(verdict).toMatchObject({ finding: 'cannot-tell', causes: [] });
    expect(told.open.join(' ')).toContain('Air passing the sensor');
  });

  test('that comes back as slowly as the engine warms is the heater turned on: sound', () => {
    const { verdict } = judge([...SOUND_RUN.slice(0, 2), ...dip(3.5, 40, 100), ...SOUND_RUN.slice(2)]);
    expect(verdict.finding).toBe('sound');
  });
});

test('six causes at most are named, and what the log speaks for stays among them', () => {
  const past: HandPoint[] = [
    { at: 0, coolant: 55, speed: 50 },
    { at: 9, coolant: 125, speed: 60 },
  ];
  const { verdict } = judge(past, 10);
  expect(verdict.finding).toBe('straight-past');
  expect(verdict.causes).toHaveLength(6);
  // It began far over the air: an engine that had run, or a sensor that reads high.
  expect(verdict.causes).toContain('sensor-reads-high');
  // It went on 37 K over its stamp; one that opens late has opened there.
  expect(verdict.causes).not.toContain('thermostat-opens-late');
});
