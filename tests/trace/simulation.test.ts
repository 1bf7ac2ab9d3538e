/** A slice of the road tests of both makers, counted; tests/bench/trace-truth.ts prints 260 of each by fault and finding. */
import { describe, expect, test } from 'vitest';
import { MAKERS, ownFigures, scored } from './both-makers.ts';
import { countBy } from './run-simulation.ts';
import { score } from './score.ts';

const COUNT = 51;
const FIRST = 20_000;

/** Counts of this slice as they are; a change of the reader that moves one has to say which way. */
const COUNTED = {
  first: { own: { right: 26, 'cannot tell': 25 }, none: { right: 19, 'cannot tell': 32 } },
  second: { own: { right: 34, 'cannot tell': 17 }, none: { right: 22, 'cannot tell': 29 } },
};

describe.each(['first', 'second'] as const)(`${COUNT} road tests of the %s maker`, (maker) => {
  const roadTests = Array.from({ length: COUNT }, (_, at) => MAKERS[maker](FIRST + at));

  // The car's own stamp and fan, or nothing known of the car.
  test.each(['own', 'none'] as const)(
    'figures: %s',
    (figures) => {
      const all = roadTests.map((each) => scored(each, figures === 'own' ? ownFigures(each) : undefined));
      const wrong = all.filter((each) => each.score === 'wrong blame' || each.score === 'missed');
      expect(wrong.map(({ number, fault, finding }) => `${number} ${fault}: ${finding}`)).toEqual([]);
      expect(Object.fromEntries(countBy(all, (each) => each.score))).toEqual(COUNTED[maker][figures]);
    },
    90_000,
  );
});

test('the score tells right from wrong', () => {
  const verdict = (
    finding: 'sound' | 'cold-at-speed' | 'cannot-tell',
    causes: string[] = [],
    open: ('fan-not-asked' | 'fan-did-not-show')[] = [],
  ) => ({ finding, causes, open });
  const sound = { causes: [] };
  const open = { causes: ['thermostat-stuck-open'] };
  const fan = (fanAsked: number) => ({ causes: ['fan-motor-dead'], fanAsked });
  expect(score(sound, verdict('sound'))).toBe('right');
  expect(score(sound, verdict('cold-at-speed', ['thermostat-stuck-open']))).toBe('wrong blame');
  expect(score(open, verdict('cold-at-speed', ['thermostat-stuck-open']))).toBe('right');
  expect(score(fan(300), verdict('cold-at-speed', ['thermostat-stuck-open']))).toBe('wrong blame');
  expect(score(open, verdict('sound'))).toBe('missed');
  expect(score(fan(0), verdict('sound'))).toBe('missed');
  expect(score(fan(0), verdict('sound', [], ['fan-not-asked']))).toBe('cannot tell');
  // Asked for minutes and called not needed: that is a fan overlooked.
  expect(score(fan(300), verdict('sound', [], ['fan-not-asked']))).toBe('missed');
  expect(score(fan(300), verdict('sound', [], ['fan-did-not-show']))).toBe('cannot tell');
  expect(score(fan(300), verdict('cannot-tell'))).toBe('cannot tell');
  expect(score(sound, verdict('cold-at-speed', Array(7).fill('x')))).toBe('wrong blame');
});
