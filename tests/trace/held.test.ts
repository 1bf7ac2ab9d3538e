/** What is called held, on logs written by hand: never under the stamp less what stamp and reading are out. */
import { describe, expect, test } from 'vitest';
import { eventsOf } from '../../src/trace/events.ts';
import { eventText } from '../../src/trace/say.ts';
import type { HandPoint } from './hand-log.ts';
import { judgeByHand } from './judge-by-hand.ts';
import { sheetWith } from './known-cars.ts';

/** From cold, then half an hour at 85 km/h at one figure. */
const holdsAt = (coolant: number): HandPoint[] => [
  { at: 0, coolant: 10, speed: 0 },
  { at: 1, coolant: 14, speed: 55 },
  { at: 9, coolant, speed: 55 },
  { at: 11, coolant, speed: 85 },
  { at: 30, coolant, speed: 85 },
];
const stamp = (celsius: number, layout?: Parameters<typeof sheetWith>[1]) =>
  sheetWith({ 'thermostat.opens': `${celsius} °C`, 'fan.on': `${celsius + 10} °C` }, layout);
const holds = (told: { sentence: string }) =>
  /The thermostat (holds|opens where it should)/.test(told.sentence);

describe('under the stamp', () => {
  test.each([84, 83, 82, 81])(
    'stamp 89, %d °C at steady speed: not called held, nobody blamed',
    (coolant) => {
      const { verdict, told } = judgeByHand(holdsAt(coolant), 12, { sheet: stamp(89) });
      expect(holds(told)).toBe(false);
      expect(verdict.causes).toEqual([]);
      expect(told.open.join(' ')).toMatch(/under the 89.°C where it should start to open/);
    },
  );

  test.each([87, 89, 92])('stamp 89, %d °C: held', (coolant) => {
    const { verdict, told } = judgeByHand(holdsAt(coolant), 12, { sheet: stamp(89) });
    expect(verdict.finding).toBe('sound');
    expect(holds(told)).toBe(true);
  });
});

describe('over the stamp', () => {
  test('an inlet-side thermostat reads higher at the outlet by what the engine gives: 10 K over is no blame', () => {
    const points = holdsAt(98);
    const inlet = { thermostat: 'inlet side', fan: 'electric, one stage' } as const;
    expect(judgeByHand(points, 12, { sheet: stamp(88, inlet) }).verdict.causes).toEqual([]);
    expect(judgeByHand(points, 12, { sheet: stamp(88) }).verdict.finding).toBe('holds-high');
  });
});

test('it opens once: a rise from idling after an hour of road is not the opening', () => {
  const result = judgeByHand(
    [
      { at: 0, coolant: 60, speed: 50 },
      { at: 5, coolant: 80, speed: 0 },
      { at: 9, coolant: 88, speed: 0 },
      { at: 9.5, coolant: 89, speed: 90 },
      { at: 88, coolant: 90, speed: 90 },
      { at: 90, coolant: 83, speed: 0 },
      { at: 95, coolant: 93, speed: 0 },
      { at: 105, coolant: 93, speed: 0 },
    ],
    10,
  );
  const late = eventsOf(result, result.vehicle).filter(({ at }) => at > 3600);
  expect(late.map((event) => eventText(event)).join(' ')).not.toContain('breaks off');
  expect(result.course.pause?.at ?? 0).toBeLessThan(1200);
});

test('where the rise breaks off far from the stamp nobody says that the thermostat opens there', () => {
  const result = judgeByHand(holdsAt(66), 12);
  const told = eventsOf(result, result.vehicle).map((event) => eventText(event));
  expect(told).toContain('The rise breaks off');
  expect(told.join(' ')).not.toContain('starts to open');
});
