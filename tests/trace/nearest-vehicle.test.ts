/** Figures of the nearest vehicle on the shelf: what two vehicles may differ by is nobody's blame (common practice, no source). */
import { describe, expect, test } from 'vitest';
import { judgeTrace } from '../../src/trace/judge-trace.ts';
import { finish, readLog } from '../../src/trace/read/read-log.ts';
import { traceVehicleOf } from '../../src/trace/vehicle.ts';
import { type HandPoint, handLog, OPENS_EARLY, SOUND_RUN } from './hand-log.ts';
import { STAMP_87 } from './known-cars.ts';

const NEAREST = traceVehicleOf(STAMP_87, {}, 'nearest');
const THIS_CAR = traceVehicleOf(STAMP_87);

function verdictOf(points: readonly HandPoint[], outside: number, vehicle: typeof NEAREST) {
  const read = finish(readLog(handLog(points, outside)));
  if (!read.ok) throw new Error(read.fault.message);
  return judgeTrace(read.trace, vehicle).verdict;
}

/** Warms up and holds a figure at 80 km/h. */
const holds = (coolant: number): HandPoint[] => [
  { at: 0, coolant: 15, speed: 0 },
  { at: 1, coolant: 20, speed: 60 },
  { at: 9, coolant: coolant - 2, speed: 60 },
  { at: 11, coolant, speed: 80 },
  { at: 24, coolant, speed: 80 },
];

test('its stamp is 3 K and its fan 6 K wide, and where its thermostat sits is left open', () => {
  const { opens, fanOn, layout } = NEAREST;
  expect([opens.low, opens.high, opens.from]).toEqual([357.15, 363.15, 'nearest']);
  expect([fanOn.low, fanOn.high, fanOn.from]).toEqual([364.15, 376.15, 'nearest']);
  expect(layout).toEqual({});
});

test('without a vehicle nothing is nearest', () => {
  expect(traceVehicleOf(undefined, {}, 'nearest')).toEqual(traceVehicleOf(undefined));
});

test('a stamp and a fan that were typed are the car’s own', () => {
  const { opens, fanOn } = traceVehicleOf(STAMP_87, { stamp: 365.15, fanOn: 378.15 }, 'nearest');
  expect([opens.low, opens.high, opens.from]).toEqual([365.15, 365.15, 'vehicle']);
  expect([fanOn.low, fanOn.from]).toEqual([378.15, 'vehicle']);
});

describe('no blame for what two vehicles differ by', () => {
  test('98 °C on a mild day over a stamp of 87: high for this car, unknown by the nearest', () => {
    expect(verdictOf(holds(98), 15, THIS_CAR).finding).toBe('holds-high');
    expect(verdictOf(holds(98), 15, NEAREST)).toMatchObject({ finding: 'cannot-tell', causes: [] });
    expect(verdictOf(holds(98), 15, NEAREST).open).toContain('vehicle-unknown');
  });

  test('4 K over its fan’s start for minutes: this car’s fan, not one’s that may start at 103 °C', () => {
    const points: HandPoint[] = [
      ...holds(90),
      { at: 24.3, coolant: 90, speed: 0 },
      { at: 29, coolant: 101, speed: 0 },
      { at: 32, coolant: 101, speed: 0 },
    ];
    expect(verdictOf(points, 20, THIS_CAR).finding).toBe('no-fan');
    expect(verdictOf(points, 20, NEAREST).causes).toEqual([]);
  });
});

describe('still said by the nearest', () => {
  test('a sound run is sound', () => {
    expect(verdictOf(SOUND_RUN, 15, NEAREST)).toMatchObject({ finding: 'sound', sure: 'likely' });
  });

  test('62 °C at speed is cold for any stamp near 87', () => {
    const cold = OPENS_EARLY.map((each) => (each.at > 24 ? { ...each, coolant: each.coolant - 14 } : each));
    expect(verdictOf(cold, 14, NEAREST).finding).toBe('cold-at-speed');
  });
});
