/** Two cars beside each other: what the simulated car says stands in the drawing. */
import { expect, test } from 'vitest';
import { usualCar } from '../../../src/car/car.ts';
import { severityAt, withFault } from '../../../src/car/faults.ts';
import { drawMoment, PICTURES, phaseAt } from '../../../src/site/moves/draw-moves.ts';
import { twoRuns } from '../../../src/site/moves/two-runs.ts';

const runs = twoRuns(
  withFault(usualCar(), 'thermostat-stuck-open', severityAt('thermostat-stuck-open', 0.5)),
);
const onTheRoad = 38;

test('a thermostat stuck open is colder on the road, a sound one holds near its stamp', () => {
  expect([runs.sound.length, runs.faulty.length]).toEqual([PICTURES, PICTURES]);
  expect(runs.sound[onTheRoad]?.head).toBeGreaterThan(83);
  expect(runs.faulty[onTheRoad]?.head).toBeLessThan(75);
  expect(runs.faulty[2]?.lift).toBeGreaterThan(0.3);
  expect(runs.sound[2]?.lift).toBe(0);
});

test('every picture is drawn, with its own figures and ids', () => {
  for (let at = 0; at < PICTURES; at++) {
    const drawn = drawMoment({ id: 'm', fault: 'Stuck open', runs, at });
    expect(drawn.join('')).not.toMatch(/NaN|undefined|Infinity/);
    expect(new Set(drawn.map((svg) => /id="([^"]+)"/.exec(svg)?.[1])).size).toBe(3);
    const head = `Head ${Math.round(runs.faulty[at]?.head ?? 0)} °C`;
    expect(drawn[1]).toContain(head);
  }
  expect(phaseAt(onTheRoad)).toBe('19 min, 80 km/h');
  expect(() => drawMoment({ id: 'm', fault: '', runs, at: PICTURES })).toThrow(RangeError);
});

test('in Fahrenheit for who reads it so', () => {
  const [sound] = drawMoment({ id: 'm', fault: 'Stuck open', runs, at: 0, habit: { temperature: '°F' } });
  expect(sound).toContain('59 °F');
  expect(sound).not.toContain('°C');
});
