import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { OutOfRange } from '../../src/physics/out-of-range.ts';
import { fromCelsius, second, watt } from '../../src/physics/units.ts';
import { lumpTemperature } from '../../src/physics/warm-up.ts';
import {
  ENGINE_CAPACITY,
  fitHeat,
  IDLE_HEAT,
  SKIN_LOSS,
  type WarmUpConditions,
  type WarmUpDrive,
  type WarmUpVehicle,
  warmUp,
} from '../../src/physics/warm-up-model.ts';

const VEHICLE: WarmUpVehicle = {
  opens: fromCelsius(87),
  fullyOpen: fromCelsius(102),
  fan: { on: fromCelsius(97), off: fromCelsius(92) },
};

const USUAL: WarmUpConditions = { heat: 1, heater: 0.3, air: 1, leak: 0, shift: 0 };

function steady(kmh: number, outside: number, seconds: number, start = outside): WarmUpDrive {
  return {
    step: second(1),
    speed: new Float64Array(seconds).fill(kmh / 3.6),
    running: undefined,
    start: fromCelsius(start),
    outside: fromCelsius(outside),
  };
}
const last = (run: Float64Array) => (run.at(-1) ?? Number.NaN) - 273.15;

describe('warm-up model', () => {
  test('is the closed form of one lump while the thermostat is shut and the engine stands', () => {
    const drive = steady(0, 10, 1200);
    const run = warmUp(VEHICLE, drive, { heat: 1, heater: 0, air: 1, leak: 0, shift: 0 });
    const lump = {
      capacity: ENGINE_CAPACITY,
      loss: SKIN_LOSS,
      heat: watt(IDLE_HEAT),
      surroundings: fromCelsius(10),
    };
    for (const at of [60, 300, 600, 1199])
      expect((run[at] ?? 0) - lumpTemperature(lump, fromCelsius(10), second(at))).toBeCloseTo(0, 1);
  });

  test('cools to the air with the engine off', () => {
    const drive = { ...steady(0, 20, 40000, 90), running: new Uint8Array(40000) };
    const run = warmUp(VEHICLE, drive, USUAL);
    expect(last(run)).toBeCloseTo(20, 0);
    expect(Math.max(...run)).toBeCloseTo(90 + 273.15, 6);
  });

  test('takes the time it was fitted to, from 3 to 20 minutes', () => {
    for (const minutes of [5, 8, 12, 18]) {
      const slow = fitHeat(VEHICLE, second(minutes * 60));
      const quick = fitHeat(VEHICLE, second((minutes * 60) / 1.5));
      expect(quick).toBeGreaterThan(slow);
    }
  });

  // Common practice: near the opening at cruise; a few kelvin either side of it is the wax.
  test.each([
    [50, 20],
    [90, 0],
    [90, 20],
    [130, 35],
  ])('holds near the opening at %d km/h and %d °C', (kmh, outside) => {
    const run = warmUp(VEHICLE, steady(kmh, outside, 2400), { ...USUAL, heat: 1.4 });
    expect(last(run)).toBeGreaterThan(82);
    expect(last(run)).toBeLessThan(93);
  });

  // Published beside it: tests/published, stuck-open-steady; cold on the road in winter, nearly warm in traffic.
  test('runs cold on the road with the thermostat stuck open, and nearly warm in summer traffic', () => {
    const open = { ...USUAL, heat: 1.4, leak: 1 };
    expect(last(warmUp(VEHICLE, steady(90, 0, 2400), open))).toBeLessThan(45);
    expect(last(warmUp(VEHICLE, steady(0, 35, 3600), open))).toBeGreaterThan(80);
  });

  test('standing on a warm day the fan comes and keeps it under its figure', () => {
    const run = warmUp(VEHICLE, steady(0, 30, 6000), { ...USUAL, heat: 1.4, heater: 0 });
    expect(Math.max(...run) - 273.15).toBeLessThan(99);
    expect(Math.max(...run) - 273.15).toBeGreaterThan(96);
    const without = warmUp({ ...VEHICLE, fan: undefined }, steady(0, 30, 6000), {
      ...USUAL,
      heat: 1.4,
      heater: 0,
    });
    expect(last(without)).toBeGreaterThan(103);
  });

  test('is finite, between the air and boiling over, for any drive in range', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0, max: 55, noNaN: true }), { minLength: 2, maxLength: 300 }),
        fc.double({ min: -40, max: 45, noNaN: true }),
        fc.double({ min: 0.3, max: 3, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.integer({ min: 1, max: 10 }),
        (speed, outside, heat, leak, step) => {
          const drive: WarmUpDrive = {
            step: second(step),
            speed: Float64Array.from(speed),
            running: undefined,
            start: fromCelsius(outside),
            outside: fromCelsius(outside),
          };
          const run = warmUp(VEHICLE, drive, { ...USUAL, heat, leak });
          expect(run.every((each) => Number.isFinite(each) && each >= outside + 273.15 - 1e-6)).toBe(true);
        },
      ),
    );
  });

  test('refuses what it cannot be asked', () => {
    const drive = steady(50, 20, 10);
    expect(() => warmUp(VEHICLE, { ...drive, speed: Float64Array.of(Number.NaN) }, USUAL)).toThrow(
      OutOfRange,
    );
    expect(() => warmUp(VEHICLE, drive, { ...USUAL, leak: 2 })).toThrow('opening that never closes');
    expect(() => fitHeat(VEHICLE, second(5))).toThrow('warm-up time');
  });
});
