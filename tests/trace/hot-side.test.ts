/** Too hot standing or just short of it, on logs written by hand as the trade tells them (common practice): whose fault it is. */
import { describe, expect, test } from 'vitest';
import { fanCourse } from '../../src/trace/fan-course.ts';
import { traceVehicleOf } from '../../src/trace/vehicle.ts';
import { MAKERS, ownFigures, scored } from './both-makers.ts';
import type { HandPoint } from './hand-log.ts';
import { judgeByHand } from './judge-by-hand.ts';
import { STAMP_87, sheetWith } from './known-cars.ts';

const VEHICLE = traceVehicleOf(STAMP_87);

const verdictOf = (points: readonly HandPoint[]) => judgeByHand(points, 20).verdict;

/** Warms up and holds 90 °C at 80 km/h: the thermostat lets the heat out. Its fan comes at 97 °C; nobody drives on past 105. */
const HELD: readonly HandPoint[] = [
  { at: 0, coolant: 20, speed: 0 },
  { at: 1, coolant: 25, speed: 60 },
  { at: 9, coolant: 88, speed: 60 },
  { at: 11, coolant: 90, speed: 80 },
  { at: 20, coolant: 90, speed: 80 },
];

describe('too hot, standing', () => {
  test('with the fan standing still it is the fan', () => {
    const verdict = verdictOf([
      ...HELD,
      { at: 20.3, coolant: 90, speed: 0 },
      { at: 27, coolant: 112, speed: 0 },
    ]);
    expect(verdict).toMatchObject({ finding: 'no-fan', sure: 'clear', stop: true });
  });

  test('with the fan logged as on it is air, flow or a fan that was only asked for', () => {
    const verdict = verdictOf([
      ...HELD,
      { at: 20.3, coolant: 90, speed: 0 },
      { at: 23, coolant: 98, speed: 0, fan: true },
      { at: 27, coolant: 112, speed: 0, fan: true },
    ]);
    expect(verdict).toMatchObject({ finding: 'fan-does-not-help', stop: true });
    expect(verdict.causes).toEqual(
      expect.arrayContaining(['radiator-fins-blocked', 'fan-motor-dead', 'fan-relay-stuck-off']),
    );
  });

  test('hot already when it came to a stand: the fan is not blamed', () => {
    const verdict = verdictOf([
      ...HELD,
      { at: 23, coolant: 102, speed: 80 },
      { at: 23.2, coolant: 102, speed: 0 },
      { at: 26, coolant: 112, speed: 0 },
    ]);
    expect(verdict.stop).toBe(true);
    expect(verdict.finding).not.toBe('no-fan');
    expect(verdict.causes).not.toContain('fan-motor-dead');
  });
});

test('a fan that comes late, but within the minute, has come', () => {
  const verdict = verdictOf([
    ...HELD,
    { at: 20.3, coolant: 90, speed: 0 },
    { at: 24.3, coolant: 101, speed: 0 },
    { at: 24.8, coolant: 102, speed: 0, fan: true },
    { at: 25.4, coolant: 103, speed: 0, fan: true },
    { at: 28, coolant: 92, speed: 0 },
    { at: 29, coolant: 93, speed: 0 },
  ]);
  expect(verdict.finding).not.toBe('no-fan');
});

test('a fan column in percent: a trickle of three is standing still, forty is running', () => {
  const fan = Float64Array.from({ length: 300 }, (_, at) => (at >= 100 && at < 200 ? 40 : 3));
  const coolant = new Float64Array(300).fill(365);
  const { runs, duty } = fanCourse(
    { step: 1, length: 300, signals: { coolant, fan }, smooth: coolant },
    undefined,
    VEHICLE,
  );
  expect(runs.map(({ from, to }) => [from, to])).toEqual([[100, 200]]);
  expect(duty).toBe(0.5);
});

test('ten minutes level at 74 °C at speed, then up to the fan at idle: a way to the radiator that is open, not shut', () => {
  const verdict = judgeByHand(
    [
      { at: 0, coolant: 31, speed: 0 },
      { at: 1, coolant: 34, speed: 45 },
      { at: 10, coolant: 65, speed: 45 },
      { at: 14, coolant: 72, speed: 90 },
      { at: 16, coolant: 74, speed: 90 },
      { at: 24, coolant: 74, speed: 90 },
      { at: 24.2, coolant: 74, speed: 0 },
      { at: 34, coolant: 100, speed: 0 },
      { at: 36, coolant: 103, speed: 0 },
    ],
    31,
    { fanColumn: false, sheet: sheetWith({ 'thermostat.opens': '87 °C', 'fan.on': '103 °C' }) },
  ).verdict;
  expect(verdict.finding).not.toBe('straight-past');
  expect(verdict.causes).not.toContain('thermostat-stuck-shut');
});

describe('level 16 K over the stamp of a thermostat in the inlet', () => {
  const sheet = sheetWith(
    { 'thermostat.opens': '80 °C', 'fan.on': '103 °C' },
    { thermostat: 'inlet side', fan: 'electric, one stage' },
  );
  const points = (start: number): HandPoint[] => [
    { at: 0, coolant: start, speed: 0 },
    { at: 5, coolant: 86, speed: 60 },
    { at: 7, coolant: 96, speed: 64 },
    { at: 20, coolant: 96, speed: 64 },
  ];

  test('at 15 °C: the heat does not get out as it should', () => {
    expect(judgeByHand(points(15), 15, { sheet }).verdict.finding).toBe('holds-high');
  });

  test('at −22 °C the cold water that comes back holds it nearly shut: no blame', () => {
    expect(judgeByHand(points(-22), -22, { sheet }).verdict.causes).toEqual([]);
  });
});

test('sound, stamp 80 in the inlet, breaks off at 89 °C at the outlet and idles to its fan: not straight past', () => {
  const roadTest = MAKERS.second(83_151);
  expect(scored(roadTest, ownFigures(roadTest))).toMatchObject({ fault: 'sound', score: 'right' });
});
