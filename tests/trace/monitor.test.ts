/**
 * The regulation's thermostat monitor, 13 CCR 1968.2 (e)(10.2.1), from memory: lowest temperature that passes by
 * nominal opening, °C. Arithmetic: opening minus 20 °F; makers round to 11 °C.
 */
import { expect, test } from 'vitest';
import { runningMean } from '../../src/trace/grid.ts';
import { thermostatMonitor } from '../../src/trace/monitor.ts';

const PASSES: readonly (readonly [number, number])[] = [
  [75, 63.9],
  [80, 68.9],
  [82, 70.9],
  [87, 75.9],
  [88, 76.9],
  [90, 78.9],
  [92, 80.9],
  [95, 83.9],
  [102, 90.9],
  [105, 93.9],
];

function monitored(celsius: readonly number[], opens: number, outside?: number) {
  const coolant = Float64Array.from(celsius, (each) => each + 273.15);
  return thermostatMonitor(
    { step: 1, length: coolant.length, signals: { coolant }, smooth: runningMean(coolant, 1) },
    opens + 273.15,
    outside === undefined ? undefined : outside + 273.15,
  );
}
const ramp = (to: number, seconds: number) =>
  Array.from({ length: seconds }, (_, at) => 20 + ((to - 20) * at) / (seconds - 1));

test.each(PASSES)('stamp %d °C: passes at %d °C', (opens, least) => {
  expect(monitored([20, 21], opens).threshold - 273.15).toBeCloseTo(least, 1);
  expect(monitored([...ramp(least + 1.5, 1000), ...Array(100).fill(least + 1.5)], opens).result).toBe(
    'meets',
  );
  expect(monitored([...ramp(least - 1, 1000), ...Array(100).fill(least - 1)], opens).result).toBe(
    'does not reach',
  );
});

test('falling back under it fails from half a minute on', () => {
  const warm = [...ramp(88, 600), ...Array(100).fill(88)];
  expect(monitored([...warm, ...Array(60).fill(70), ...Array(60).fill(85)], 88).result).toBe('falls back');
  expect(monitored([...warm, ...Array(10).fill(70), ...Array(60).fill(85)], 88).result).toBe('meets');
});

test('a short log that had not come so far proves nothing', () => {
  expect(monitored(ramp(60, 300), 88).result).toBe('cannot tell');
});

test('in deep cold a maker may leave it off, from memory under 20 °F: it neither passes nor fails', () => {
  const low = [...ramp(60, 1000), ...Array(200).fill(60)];
  expect(monitored(low, 88, -25).result).toBe('does not apply');
  expect(monitored(low, 88, -6).result).toBe('does not reach');
});
