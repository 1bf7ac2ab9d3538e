import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Mixture } from '../../src/physics/glycol.ts';
import { flowForHeat, heatGivenOff, heatToWarm } from '../../src/physics/heat-balance.ts';
import { infraredReading } from '../../src/physics/infrared.ts';
import {
  cubicMetrePerSecond,
  fromCelsius,
  fromLitres,
  kelvin,
  massFraction,
  second,
  toCelsius,
  watt,
} from '../../src/physics/units.ts';
import { type Lump, lumpTemperature, timeToReach } from '../../src/physics/warm-up.ts';
import { spread } from './spread.ts';

const HALF: Mixture = { glycol: 'ethylene', fraction: massFraction(0.5) };

describe('heat balance', () => {
  const flows = spread(1e-5, 1 / 60).map(cubicMetrePerSecond);
  const hots = spread(60, 100);
  const drops = spread(0.2, 40);

  test('turns flow and heat round', () => {
    fc.assert(
      fc.property(flows, hots, drops, (flow, hot, drop) => {
        const between = { hot: fromCelsius(hot), cold: fromCelsius(hot - drop) };
        const power = heatGivenOff(HALF, flow, between);
        fc.pre(power < 1e6);
        expect(flowForHeat(HALF, power, between) / flow).toBeCloseTo(1, 9);
      }),
    );
  });

  test('refuses a cold side above the hot one and a difference no thermometer tells', () => {
    const [warm, cool] = [fromCelsius(90), fromCelsius(80)];
    const flow = cubicMetrePerSecond(1e-4);
    expect(() => heatGivenOff(HALF, flow, { hot: cool, cold: warm })).toThrow('temperature difference');
    expect(() => flowForHeat(HALF, watt(1000), { hot: warm, cold: warm })).toThrow('temperature difference');
  });

  test('takes as much heat to warm in two steps as in one, and gives it back on cooling', () => {
    fc.assert(
      fc.property(spread(5, 95), (celsius) => {
        const heat = (from: number, to: number) =>
          heatToWarm(HALF, fromLitres(6), fromCelsius(from), fromCelsius(to));
        expect((heat(0, celsius) + heat(celsius, 100)) / heat(0, 100)).toBeCloseTo(1, 6);
        expect(heat(100, 0)).toBeCloseTo(-heat(0, 100), 3);
      }),
    );
  });
});

describe('a lump that warms up', () => {
  const lump: Lump = { capacity: 60e3, loss: 25, heat: watt(5000), surroundings: fromCelsius(10) };

  test('is at a temperature when it takes that long to reach it', () => {
    fc.assert(
      fc.property(spread(11, 200), (celsius) => {
        const answer = timeToReach(lump, fromCelsius(10), fromCelsius(celsius));
        if (!answer.reaches) throw new Error('not reached');
        expect(toCelsius(lumpTemperature(lump, fromCelsius(10), answer.after))).toBeCloseTo(celsius, 6);
      }),
    );
  });

  test('says where it settles when it never gets there', () => {
    const winter: Lump = { ...lump, loss: 300, heat: watt(8000), surroundings: fromCelsius(0) };
    const answer = timeToReach(winter, fromCelsius(0), fromCelsius(80));
    if (answer.reaches) throw new Error('reached');
    expect(toCelsius(answer.settlesAt)).toBeCloseTo(26.7, 1);
    expect(timeToReach(lump, fromCelsius(50), fromCelsius(20))).toMatchObject({ reaches: false });
  });

  test('goes on from where it was', () => {
    const start = fromCelsius(10);
    const halfway = lumpTemperature(lump, start, second(300));
    expect(lumpTemperature(lump, halfway, second(300))).toBeCloseTo(
      lumpTemperature(lump, start, second(600)),
      9,
    );
  });
});

describe('an infrared thermometer', () => {
  const bare = { emissivity: 0.1, set: 0.95, surroundings: fromCelsius(25) };

  test('reads bare aluminium at 90 °C as 34 °C', () => {
    expect(toCelsius(infraredReading(bare, fromCelsius(90)))).toBeCloseTo(34, 0);
  });

  test('shows a surface of the emissivity it is set to as it is, and the rest between the surface and the room', () => {
    fc.assert(
      fc.property(spread(0.05, 0.95), spread(300, 500), (emissivity, surface) => {
        const shown = infraredReading({ ...bare, emissivity }, kelvin(surface));
        expect(shown).toBeLessThanOrEqual(surface + 1e-9);
        expect(shown).toBeGreaterThan(bare.surroundings);
        expect(infraredReading({ ...bare, emissivity: 0.95 }, kelvin(surface))).toBeCloseTo(surface, 6);
      }),
    );
  });

  test('refuses a surface so cold in so warm a room that nothing is left to show', () => {
    const warmRoom = { emissivity: 1, set: 0.1, surroundings: kelvin(350) };
    expect(() => infraredReading(warmRoom, fromCelsius(-60))).toThrow('radiation');
  });
});
