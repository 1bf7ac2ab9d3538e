import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drawCar, SOUND, usualCar } from '../../src/car/car.ts';
import { type Capacities, heatAbove, moveHeat, type Surroundings } from '../../src/car/circuit.ts';
import { coolantOf } from '../../src/car/coolant-state.ts';
import { driveOf, type Leg } from '../../src/car/drive.ts';
import { FAULT_IDS, layoutFor, severityAt, withFault } from '../../src/car/faults.ts';
import { runCar } from '../../src/car/run.ts';
import { stateAt } from '../../src/car/state.ts';
import { kelvin, second, watt } from '../../src/physics/units.ts';
import { lumpTemperature } from '../../src/physics/warm-up.ts';

const MIXED: Leg[] = [
  { seconds: 300, blower: 0.4, hot: 1 },
  { seconds: 300, speed: 14 },
  { seconds: 300, speed: 33, slope: 0.04, airConditioning: true },
  { seconds: 300 },
  { seconds: 120, running: false },
];

describe('energy', () => {
  test.each(FAULT_IDS)('closes to a thousandth with %s', (id) => {
    const car = withFault(drawCar(3, { layout: layoutFor(id) }), id, severityAt(id, 1));
    const { given, unaccounted } = runCar(car, driveOf(298.15, MIXED));
    expect(given).toBeGreaterThan(1e6);
    expect(Math.abs(unaccounted)).toBeLessThan(1e-3 * given);
  });

  test('is counted by its own book: a car that boils loses heat with steam', () => {
    const car = withFault(usualCar(), 'electric-pump-dead', 1);
    const drive = driveOf(303.15, [{ seconds: 1800, speed: 10, slope: 0.08, rpm: 3000 }]);
    const { samples } = runCar(car, drive);
    const [first, last] = [samples[0], samples.at(-1)];
    expect(last?.head ?? 0).toBeGreaterThan(373);
    expect(last?.liquid ?? 1).toBeLessThan(first?.liquid ?? 0);
  });
});

test('is the closed form of one lump when nothing holds its parts apart', () => {
  const even = 25;
  const carries = coolantOf(0.5).heatPerVolume;
  const capacities: Capacities = {
    metal: 9000,
    block: 20000,
    jacket: 5000,
    hose: 1,
    slice: 1,
    heater: 1000,
    tank: 1000,
    cabin: 1,
  };
  const values = {
    ...usualCar().values,
    metalToCoolant: 9000,
    metalToBlock: 9000,
    blockToCoolant: 9000,
    stillMixing: 500,
  };
  const car = { ...usualCar(), values };
  const outside = 293.15;
  const [loss, heat] = [10, 600];
  const around: Surroundings = {
    toMetal: heat / 2,
    toBlock: heat / 2,
    outside,
    radiator: 0,
    airBefore: outside,
    heater: 0,
    cabinAir: 0,
    skin: loss,
    boilsAt: 420,
    carries,
  };
  const flow = { total: 1.1e-3, radiator: 0, heater: 0.4e-3, byPass: 0.3e-3, vent: 0.4e-3 };
  const state = stateAt(outside, 101325);
  const step = 0.1;
  const lump = {
    capacity: 9000 + 20000 + 10000 + 2000,
    loss,
    heat: watt(heat),
    surroundings: kelvin(outside),
  };
  for (let at = 1; at <= 3600 / step; at++) {
    moveHeat(car, capacities, state, flow, around, step);
    if (at % (300 / step) !== 0) continue;
    const closed = lumpTemperature(lump, kelvin(outside), second(at * step));
    for (const node of [state.metal, state.block, state.head, state.low])
      expect(Math.abs(node - closed)).toBeLessThan(even / 250);
  }
  expect(heatAbove(capacities, state, outside)).toBeGreaterThan(0);
});

test('gives the same answer to the same seed, and another to another', () => {
  const drive = driveOf(283.15, MIXED);
  const run = (seed: number) =>
    JSON.stringify(runCar(withFault(drawCar(seed), 'sensor-intermittent', 1), drive, seed).samples);
  expect(run(11)).toBe(run(11));
  expect(run(11)).not.toBe(run(12));
});

test('is never NaN, whatever is drawn', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 1e6 }),
      fc.constantFrom(...FAULT_IDS),
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.double({ min: 238, max: 318, noNaN: true }),
      fc.array(
        fc.record({
          seconds: fc.integer({ min: 1, max: 200 }),
          speed: fc.double({ min: 0, max: 60, noNaN: true }),
          slope: fc.double({ min: -0.15, max: 0.2, noNaN: true }),
          rpm: fc.option(fc.double({ min: 500, max: 6500, noNaN: true }), { nil: undefined }),
          running: fc.boolean(),
          blower: fc.double({ min: 0, max: 1, noNaN: true }),
          hot: fc.double({ min: 0, max: 1, noNaN: true }),
          airConditioning: fc.boolean(),
        }),
        { minLength: 1, maxLength: 5 },
      ),
      (seed, id, at, outside, legs) => {
        const car = withFault(drawCar(seed, { layout: layoutFor(id) }), id, severityAt(id, at, 2));
        const { samples, unaccounted, given } = runCar(car, driveOf(outside, legs), seed, 7);
        for (const sample of samples)
          for (const [name, value] of Object.entries(sample))
            if (value !== undefined && !Number.isFinite(value)) throw new Error(`${name} is ${value}`);
        for (const { head, pressure, lift } of samples) {
          expect(head).toBeGreaterThan(225);
          expect(head).toBeLessThan(430);
          expect(pressure).toBeGreaterThan(2e4);
          expect(lift).toBeGreaterThanOrEqual(0);
          expect(lift).toBeLessThanOrEqual(1);
        }
        expect(Math.abs(unaccounted)).toBeLessThanOrEqual(Math.max(1, 1e-3 * given));
      },
    ),
    { numRuns: 150 },
  );
});

describe('a sound car', () => {
  test('has nothing but neutral figures', () => {
    expect(withFault(usualCar(), 'normal-behaviour', 1).condition).toEqual(SOUND);
  });

  test('swings at the outlet at small openings in cold air, and not at the inlet', () => {
    const swing = (thermostat: 'inlet side' | 'outlet side') => {
      const { samples } = runCar(
        usualCar({ thermostat }),
        driveOf(258.15, [{ seconds: 2400, speed: 25 }], 343.15),
      );
      const settled = samples.slice(1200).map(({ head }) => head);
      return Math.max(...settled) - Math.min(...settled);
    };
    expect(swing('inlet side')).toBeLessThan(1);
    expect(swing('outlet side')).toBeGreaterThan(swing('inlet side'));
  });
});

describe('a fault', () => {
  const at = (
    id: (typeof FAULT_IDS)[number],
    severity: number,
    legs: Leg[],
    outside = 283.15,
    start = outside,
  ) => runCar(withFault(usualCar(layoutFor(id)), id, severity), driveOf(outside, legs, start)).samples;

  test('of the thermostat: stuck open it sinks at speed and comes back at idle', () => {
    const samples = at(
      'thermostat-stuck-open',
      0.5,
      [{ seconds: 1500, speed: 25 }, { seconds: 1200 }],
      283.15,
      343.15,
    );
    const cruise = samples[1490]?.head ?? 0;
    expect(cruise).toBeLessThan(273.15 + 70);
    expect(samples.at(-1)?.head ?? 0).toBeGreaterThan(cruise + 8);
  });

  test('of the thermostat: stuck shut it goes straight past and the radiator stays cold', () => {
    const samples = at('thermostat-stuck-shut', 1, [{ seconds: 1200, speed: 15 }], 293.15);
    expect(Math.max(...samples.map(({ head }) => head))).toBeGreaterThan(273.15 + 103);
    const past = samples.find(({ head }) => head > 273.15 + 96);
    expect(past?.lowerHose ?? 400).toBeLessThan(313.15);
  });

  test('of the fan: dead it climbs standing and holds at speed', () => {
    const samples = at('fan-motor-dead', 1, [{ seconds: 1500 }, { seconds: 600, speed: 25 }], 303.15, 353.15);
    expect(samples[1490]?.head ?? 0).toBeGreaterThan(273.15 + 103);
    expect(samples.at(-1)?.head ?? 400).toBeLessThan(273.15 + 96);
  });

  test('of the sensor: ohms in series read low, ohms beside it read high', () => {
    const legs = [{ seconds: 900, speed: 20 }];
    const off = (id: 'sensor-reads-low' | 'sensor-reads-high', severity: number) => {
      const last = at(id, severity, legs, 293.15, 353.15).at(-1);
      return (last?.scan ?? 0) - (last?.head ?? 0);
    };
    expect(off('sensor-reads-low', 150)).toBeLessThan(-8);
    expect(off('sensor-reads-high', 600)).toBeGreaterThan(5);
  });

  test('of the head gasket: pressure comes before the heat', () => {
    const bar = (id: 'normal-behaviour' | 'head-gasket-combustion-leak', severity: number) => {
      const sample = at(id, severity, [{ seconds: 130 }])[119];
      return ((sample?.pressure ?? 0) - 101325) / 1e5;
    };
    expect(bar('normal-behaviour', 1)).toBeLessThan(0.12);
    expect(bar('head-gasket-combustion-leak', 4)).toBeGreaterThan(0.3);
  });
});
