/** The fan is judged where the drive asked for it, on logs written by hand. STAMP_87: fan from 97 to 92 °C. */
import { describe, expect, test } from 'vitest';
import type { HandPoint } from './hand-log.ts';
import { judgeByHand } from './judge-by-hand.ts';
import { STAMP_87, sheetWith } from './known-cars.ts';

const HELD: readonly HandPoint[] = [
  { at: 0, coolant: 20, speed: 0 },
  { at: 1, coolant: 25, speed: 60 },
  { at: 9, coolant: 88, speed: 60 },
  { at: 11, coolant: 90, speed: 80 },
  { at: 20, coolant: 90, speed: 80 },
];
const standing = (...course: [number, number][]): HandPoint[] => [
  ...HELD,
  { at: 20.3, coolant: 90, speed: 0 },
  ...course.map(([at, coolant]) => ({ at, coolant, speed: 0 })),
];

describe('asked for, and nothing shows', () => {
  test('without a column, 5 minutes to 4 K over its start: it should have come, and when', () => {
    const { verdict, told } = judgeByHand(standing([25, 99], [30, 101]), 20, { fanColumn: false });
    expect(verdict.open).toContain('fan-did-not-show');
    expect(verdict.open).not.toContain('fan-not-asked');
    expect(told.open.join(' ')).toMatch(/should have come at 2[45]:\d\d: over 97.°C.* to 101.°C/);
  });

  test('with a column that says off, 4 minutes at 3 K over its start: no fan', () => {
    const { verdict } = judgeByHand(standing([25, 100], [29.5, 100]), 20);
    expect(verdict).toMatchObject({ finding: 'no-fan', stop: true });
  });

  test('with a column, 2 K over and less: said, nobody blamed', () => {
    const { verdict, told } = judgeByHand(standing([25, 99], [30, 99]), 20);
    expect(verdict.causes).toEqual([]);
    expect(told.open.join(' ')).toMatch(/should have come.*fan column shows none/);
  });
});

describe('not asked for', () => {
  test('under its start: said with the highest and where it starts', () => {
    const { verdict, told } = judgeByHand(standing([28, 95]), 20);
    expect(verdict.finding).toBe('sound');
    expect(told.open.join(' ')).toMatch(/not needed on this drive: highest 95.°C, and it starts at 97.°C/);
  });

  test('over its start for less than two minutes: nothing is said about it', () => {
    const { verdict } = judgeByHand(standing([25, 97], [26.5, 99], [26.6, 98], [29, 97]), 20, {
      fanColumn: false,
    });
    expect(verdict.open).toContain('fan-not-asked');
  });

  test('a switch in the radiator feels cooler water: 4 K over its stamp on the reading is no blame', () => {
    const sheet = {
      ...STAMP_87,
      layout: { ...STAMP_87.layout, 'fan-switched-by': 'switch in the radiator' as const },
    };
    const { verdict } = judgeByHand(standing([25, 101], [30, 101]), 20, { sheet });
    expect(verdict.causes).toEqual([]);
    expect(verdict.open).not.toContain('fan-did-not-show');
  });

  test('a fan that ran cold, for the air conditioning, has not been tried', () => {
    const points = standing([28, 94]).map((each, at) => ({ ...each, fan: at === 1 }));
    expect(judgeByHand(points, 20).verdict.open).toContain('fan-not-asked');
  });
});

test('a fan that comes later and higher is not dead, and without a figure of this car it is not missed', () => {
  const points: HandPoint[] = [
    ...standing([26, 107]),
    { at: 26.1, coolant: 107, speed: 0, fan: true },
    { at: 28, coolant: 101, speed: 0 },
    { at: 29, coolant: 102, speed: 0 },
  ];
  expect(judgeByHand(points, 20, { sheet: 'unknown' }).verdict.finding).not.toBe('no-fan');
});

test('cooling down for minutes after the stop is no fan', () => {
  const { fan } = judgeByHand(standing([22, 92], [40, 76]), 20, {
    sheet: sheetWith({ 'thermostat.opens': '87 °C', 'fan.on': '96 °C' }),
    fanColumn: false,
  });
  expect(fan.runs).toEqual([]);
});

test('standing, teeth of a fan that starts at another figure than is known are no air', () => {
  const teeth: HandPoint[] = [0, 1, 2, 3, 4].flatMap((tooth) => [
    { at: 24 + 3 * tooth, coolant: 84, speed: 0 },
    { at: 24.5 + 3 * tooth, coolant: 76, speed: 0 },
  ]);
  const points = [
    { at: 0, coolant: 8, speed: 0 },
    { at: 9, coolant: 78, speed: 60 },
    { at: 20, coolant: 78, speed: 80 },
    ...teeth,
  ];
  expect(judgeByHand(points, 20, { fanColumn: false }).verdict.finding).not.toBe('swings-hot');
});

describe('a fan that comes and goes by itself far under its start', () => {
  const cycles = (on: number, off: number): HandPoint[] => [
    ...HELD.map((each) => ({ ...each, coolant: Math.min(each.coolant, 86) })),
    { at: 20.3, coolant: 85, speed: 0 },
    ...[22, 25, 28].flatMap((at): HandPoint[] => [
      { at, coolant: on, speed: 0, fan: true },
      { at: at + 1.5, coolant: off, speed: 0, fan: false },
    ]),
  ];

  test('at 88 °C three times, and 97 is its figure: the reading is low or the figure another car’s', () => {
    const { verdict, told } = judgeByHand(cycles(88, 83), 20);
    expect(verdict).toMatchObject({ finding: 'cannot-tell', open: ['fan-at-other-figure'] });
    expect(JSON.stringify(told)).toMatch(/came and went at 8[78].°C, and it starts at 97.°C/);
  });

  test('at 95 °C: a switch is 2 to 3 K out', () => {
    expect(judgeByHand(cycles(95, 90), 20).verdict.finding).toBe('sound');
  });
});
