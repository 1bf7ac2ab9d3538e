import { describe, expect, test } from 'vitest';
import { BACK, lastBefore, OUT, STUCK_OPEN, warmUpLog } from '../../../src/site/guides/warm-up-example.ts';

const sound = warmUpLog();
const stuck = warmUpLog(STUCK_OPEN);

/** The trade's own figures for a thermostat that opens too early; common practice, no source. */
describe('the example of the warm-up guide', () => {
  test('idles up to about 85 °C when stuck open, then falls below 78 °C at steady speed', () => {
    expect(lastBefore(stuck, OUT).celsius).toBeGreaterThan(78);
    expect(lastBefore(stuck, OUT).celsius).toBeLessThan(88);
    expect(lastBefore(stuck, BACK).celsius).toBeLessThan(78);
  });

  test('holds a steady figure on the road when sound, above the stamp and below the fan', () => {
    const road = sound
      .filter(({ minute }) => minute > OUT + 4 && minute < BACK)
      .map(({ celsius }) => celsius);
    expect(Math.max(...road) - Math.min(...road)).toBeLessThan(1);
    expect(Math.min(...road)).toBeGreaterThan(88);
    expect(Math.max(...road)).toBeLessThan(96);
  });

  test('brings the fan in and out at idle, and the fan brings the temperature down', () => {
    const idle = sound.filter(({ minute }) => minute >= BACK);
    const changes = idle.filter(({ fan }, index) => index > 0 && fan !== idle[index - 1]?.fan);
    expect(changes.length).toBeGreaterThanOrEqual(4);
    expect(Math.max(...idle.map(({ celsius }) => celsius))).toBeLessThan(99);
  });
});
