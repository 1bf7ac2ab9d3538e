import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { USUAL_DIFFERENCE } from '../../src/physics/heat-balance.ts';
import { AIR_COMES, airBehind, exchanged, judgeExchanger } from '../../src/physics/heat-exchanger.ts';
import { OutOfRange } from '../../src/physics/out-of-range.ts';
import { fromCelsius, kelvin, toCelsius } from '../../src/physics/units.ts';

const read = (hot: number, cold: number, airIn: number, airOut: number) => ({
  hot: fromCelsius(hot),
  cold: fromCelsius(cold),
  airIn: fromCelsius(airIn),
  airOut: fromCelsius(airOut),
});

/** Crossflow, both streams unmixed: Kays and London; Incropera, table 11.3. From memory. */
function crossflow(units: number, ratio: number): number {
  return 1 - Math.exp((Math.exp(-ratio * units ** 0.78) - 1) * (units ** 0.22 / ratio));
}

describe('exchanged', () => {
  // Incropera, example 11.3 (from memory): exhaust gas of 300 °C leaves at 100 and heats water from 35 to 125: 0.755, streams 0.45.
  test('gives the effectiveness and the ratio of a worked example', () => {
    const found = exchanged(read(300, 100, 35, 125));
    expect(found.ofCoolant).toBeCloseTo(0.755, 3);
    expect(found.carries).toBeCloseTo(0.45, 2);
    expect(found.approach).toBeCloseTo(175, 6);
  });

  test.each([
    ['coolant that gets warmer', read(80, 90, 10, 60)],
    ['coolant colder than the air', read(90, 5, 10, 60)],
    ['air hotter than the coolant', read(90, 80, 10, 95)],
    ['air that gets colder', read(90, 80, 10, 5)],
    ['air nearly as hot as the coolant', read(90, 80, 70, 85)],
    ['hoses alike', read(90, 90, 10, 60)],
  ])('refuses %s', (_, readings) => {
    expect(() => exchanged(readings)).toThrow(OutOfRange);
  });
});

describe('AIR_COMES', () => {
  test('lies where the crossflow formula puts cores of as many transfer units', () => {
    expect(AIR_COMES.radiator.works).toBeCloseTo(crossflow(1, 0.3), 1);
    expect(AIR_COMES.heater.works).toBeLessThan(crossflow(1.5, 0.15));
    expect(AIR_COMES.heater.past).toBeLessThan(crossflow(1, 0.15));
  });
});

describe('airBehind', () => {
  test('keeps the effectiveness on another day', () => {
    expect(toCelsius(airBehind(0.8, fromCelsius(85), fromCelsius(0)))).toBeCloseTo(68, 6);
    expect(() => airBehind(1.1, fromCelsius(85), fromCelsius(0))).toThrow(OutOfRange);
  });
});

describe('judgeExchanger', () => {
  const readings = fc.record({
    place: fc.constantFrom('radiator' as const, 'heater' as const),
    hot: fc.double({ min: 75, max: 110, noNaN: true }),
    fall: fc.double({ min: 0.5, max: 40, noNaN: true }),
    airIn: fc.double({ min: -20, max: 40, noNaN: true }),
    comes: fc.double({ min: 0.02, max: 0.98, noNaN: true }),
  });
  /** A hose or the air before to a degree, the air behind to two. */
  const ERRORS = { hot: 1, cold: 1, airIn: 1, airOut: 2 } as const;

  test('never goes from works to a fault by one reading moved by its error', () => {
    let works = 0;
    fc.assert(
      fc.property(readings, ({ place, hot, fall, airIn, comes }) => {
        const before = read(hot, hot - fall, airIn, airIn + comes * (hot - airIn));
        fc.pre(hot - airIn >= 32 && before.cold > before.airIn + 2 && before.hot > before.airOut + 3);
        if (judgeExchanger(place, before) !== 'works') return;
        works += 1;
        for (const name of ['hot', 'cold', 'airIn', 'airOut'] as const)
          for (const way of [-1, 1]) {
            const moved = { ...before, [name]: kelvin(before[name] + way * ERRORS[name]) };
            expect(['works', 'edge'], `${place} ${JSON.stringify(before)} ${name}`).toContain(
              judgeExchanger(place, moved),
            );
          }
      }),
      { numRuns: 2000 },
    );
    expect(works).toBeGreaterThan(20);
  });

  test('blames no air side before the coolant flows, and no coolant while its fall is usual', () => {
    fc.assert(
      fc.property(readings, ({ place, hot, fall, airIn, comes }) => {
        fc.pre(hot - airIn > Math.max(31, fall + 1));
        const said = judgeExchanger(place, read(hot, hot - fall, airIn, airIn + comes * (hot - airIn)));
        const [low, high] = USUAL_DIFFERENCE[place];
        if (fall > high + 2.001) expect(said).toBe('little coolant');
        if (fall <= high) expect(said).not.toBe('little coolant');
        if (said === 'little air') expect(fall).toBeLessThan(low);
        if (said === 'works') expect(fall).toBeGreaterThanOrEqual(low - 1e-6);
      }),
    );
  });
});
