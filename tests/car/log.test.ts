/** Logs of the simulated car, read by the reader of road tests. Neither knows the other. */
import { describe, expect, test } from 'vitest';
import { drawCar } from '../../src/car/car.ts';
import { driveOf, town } from '../../src/car/drive.ts';
import { type FaultId, severityAt } from '../../src/car/faults.ts';
import { logOf, SHAPES } from '../../src/car/log.ts';
import { randomOf } from '../../src/car/random.ts';
import { finish, readLog } from '../../src/trace/read/read-log.ts';

const DRIVE = driveOf(288.15, [
  { seconds: 90 },
  ...town(randomOf(2, 'town'), 360, 12),
  { seconds: 660, speed: 24 },
  { seconds: 600 },
]);
const car = drawCar(4, {
  layout: {
    fan: 'electric, one stage',
    fanSwitchedBy: 'engine controller',
    thermostat: 'outlet side',
    kind: 'by-pass closing',
  },
});

function read(text: string) {
  const result = finish(readLog(text));
  if (!result.ok) throw new Error(result.fault.message);
  return result.trace;
}

test('writes the same text for the same seed', () => {
  expect(logOf(DRIVE, car, undefined, 3).text).toBe(logOf(DRIVE, car, undefined, 3).text);
  expect(logOf(DRIVE, car, undefined, 3).text).not.toBe(logOf(DRIVE, car, undefined, 4).text);
});

describe.each(Object.entries(SHAPES))('a log in the shape %s', (_, shape) => {
  test('is read with every column it has', () => {
    const { text, samples } = logOf(DRIVE, car, undefined, 3, { shape });
    const trace = read(text);
    expect(text.split('\n').length - 2).toBe(Math.ceil(samples.length / shape.every));
    expect(Object.keys(trace)).toEqual(
      expect.arrayContaining(['coolant', 'speed', 'rpm', 'intake', 'ambient', 'fan']),
    );
  });
});

test('shows an open circuit as the lowest figure of the byte', () => {
  const id: FaultId = 'sensor-open-circuit';
  const { text } = logOf(DRIVE, car, { id, severity: severityAt(id, 0) }, 3);
  expect(text.split('\n')[500]?.split(',')[1]).toBe('-40');
});

test('has no fan column on a viscous clutch', () => {
  const viscous = drawCar(4, { layout: { fan: 'viscous clutch', fanSwitchedBy: 'none' } });
  expect(logOf(DRIVE, viscous, undefined, 3).text.split('\n')[0]).not.toContain('fan');
});
