/** A slice of the simulated road tests; tests/bench/trace.ts runs 2,000 and prints them by fault and by weather. */
import { expect, test } from 'vitest';
import { countBy, runOne } from './run-simulation.ts';
import { score } from './score.ts';

const COUNT = 240;
const FIRST = 20_000;

test(`${COUNT} road tests: right or an honest can't tell in 97 %, wrong blame under 1 %`, {
  timeout: 180_000,
}, () => {
  const runs = Array.from({ length: COUNT }, (_, at) => runOne(FIRST + at));
  const counts = countBy(runs, (run) => run.score);
  const share = (name: string) => (counts.get(name) ?? 0) / COUNT;
  const wrong = runs.filter((run) => run.score === 'wrong blame' || run.score === 'missed');
  const named = wrong.map(({ seed, fault, finding }) => `${seed} ${fault}: ${finding}`).join(', ');
  expect(share('right') + share('cannot tell'), named).toBeGreaterThanOrEqual(0.97);
  expect(share('wrong blame'), named).toBeLessThan(0.01);
  // Refusing everything would pass the two above.
  expect(share('right')).toBeGreaterThan(0.58);
  // Nor may the hot days, on which an open thermostat holds as well, carry the blame.
  const hot = runs.filter(({ outside }) => outside >= 30);
  expect(hot.length).toBeGreaterThan(20);
  expect(
    hot.filter(({ score: each }) => each === 'wrong blame'),
    named,
  ).toEqual([]);
});

test('the score tells right from wrong', () => {
  const verdict = (
    finding: 'sound' | 'cold-at-speed' | 'cannot-tell',
    causes: string[] = [],
    open: 'fan-not-asked'[] = [],
  ) => ({ finding, causes, open });
  expect(score('none', verdict('sound'))).toBe('right');
  expect(score('none', verdict('cold-at-speed', ['thermostat-stuck-open']))).toBe('wrong blame');
  expect(score('thermostat stuck open', verdict('cold-at-speed', ['thermostat-stuck-open']))).toBe('right');
  expect(score('fan dead', verdict('cold-at-speed', ['thermostat-stuck-open']))).toBe('wrong blame');
  expect(score('thermostat stuck open', verdict('sound'))).toBe('missed');
  expect(score('fan dead', verdict('sound'))).toBe('missed');
  expect(score('fan dead', verdict('sound', [], ['fan-not-asked']))).toBe('cannot tell');
  expect(score('fan dead', verdict('cannot-tell'))).toBe('cannot tell');
  expect(score('none', verdict('cold-at-speed', Array(7).fill('x')))).toBe('wrong blame');
});
