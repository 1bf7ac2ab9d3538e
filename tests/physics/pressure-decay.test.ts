import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { volumeRatio } from '../../src/physics/expansion.ts';
import { judgePressureTest, type PressurisedSystem, tightReading } from '../../src/physics/pressure-decay.ts';
import { toMassFraction } from '../../src/physics/strength.ts';
import {
  fromCelsius,
  fromLitres,
  gaugePascal,
  STANDARD_ATMOSPHERE,
  second,
  volumeFraction,
} from '../../src/physics/units.ts';
import { spread } from './spread.ts';

const SYSTEM: PressurisedSystem = {
  mixture: { glycol: 'ethylene', fraction: toMassFraction('ethylene', volumeFraction(0.5)) },
  liquid: fromLitres(6),
  air: fromLitres(1),
  outside: STANDARD_ATMOSPHERE,
};
const QUARTER_HOUR = second(900);

const reading = (kilopascal: number, celsius: number) => ({
  gauge: gaugePascal(kilopascal * 1000),
  temperature: fromCelsius(celsius),
});

describe('tightReading', () => {
  test('falls from 100 to 58 kPa as a tight system cools from 80 to 60 °C', () => {
    expect(tightReading(SYSTEM, reading(100, 80), fromCelsius(60)) / 1000).toBeCloseTo(58, 0);
  });

  test('stays where it is at one temperature', () => {
    fc.assert(
      fc.property(spread(10, 95), spread(0, 150), (celsius, kilopascal) => {
        const start = reading(kilopascal, celsius);
        expect(tightReading(SYSTEM, start, start.temperature)).toBeCloseTo(start.gauge, 6);
      }),
    );
  });

  test('goes there and back to where it was', () => {
    fc.assert(
      fc.property(spread(15, 90), spread(15, 90), (from, to) => {
        const there = tightReading(SYSTEM, reading(100, from), fromCelsius(to));
        // The air space at the far end is what the coolant left there.
        fc.pre(there > -80e3 && there < 390e3);
        const moved = { ...SYSTEM, air: airAt(from, to) };
        const back = tightReading(moved, { gauge: there, temperature: fromCelsius(to) }, fromCelsius(from));
        expect(back / 1000).toBeCloseTo(100, 6);
      }),
    );
  });

  test('is refused when the coolant would fill all the air space', () => {
    const tiny = { ...SYSTEM, air: fromLitres(0.1) };
    expect(() => tightReading(tiny, reading(100, 20), fromCelsius(90))).toThrow('air left at the end');
  });

  test('is refused when the reading is below the vapour pressure', () => {
    expect(() => tightReading(SYSTEM, reading(-60, 90), fromCelsius(80))).toThrow('reading at the start');
  });
});

describe('judgePressureTest', () => {
  test('calls a cooling system tight, where the bare gauge says it lost 10 kPa', () => {
    const end = tightReading(SYSTEM, reading(100, 40), fromCelsius(36)) / 1000;
    expect(end).toBeLessThan(95);
    expect(judgePressureTest(SYSTEM, reading(100, 40), reading(end, 36), QUARTER_HOUR).verdict).toBe('tight');
  });

  test('calls a loss at steady temperature a leak and gives it in volume', () => {
    const answer = judgePressureTest(SYSTEM, reading(100, 20), reading(80, 20), QUARTER_HOUR);
    expect(answer.verdict).toBe('leaks');
    expect(answer.loss).toBeCloseTo(20e3, 3);
    // Boyle's law by hand: 1 l (201.3 - 1.8)/(181.3 - 1.8) - 1 l = 0.111 l.
    expect(answer.lostVolume * 1000).toBeCloseTo(0.111, 3);
    expect(answer.lossRate * 60e6).toBeCloseTo(7.4, 1);
  });

  test('cannot tell after a large change of temperature', () => {
    const end = tightReading(SYSTEM, reading(100, 90), fromCelsius(40)) / 1000;
    expect(judgePressureTest(SYSTEM, reading(100, 90), reading(end, 40), QUARTER_HOUR).verdict).toBe(
      'cannot tell',
    );
  });

  test('sees a reading that rose at steady temperature', () => {
    const answer = judgePressureTest(SYSTEM, reading(100, 20), reading(110, 20), QUARTER_HOUR);
    expect(answer.verdict).toBe('rose');
    expect(answer.lostVolume).toBe(0);
  });

  test.each([
    [95, 'leaks'],
    [96, 'repeat'],
    [97, 'tight'],
    [100, 'tight'],
    [103, 'tight'],
    [104, 'repeat'],
    [105, 'rose'],
  ])('holds within 3 kPa and leaks from 5 at steady temperature: 100 to %i kPa is “%s”', (end, verdict) => {
    expect(judgePressureTest(SYSTEM, reading(100, 20), reading(end, 20), QUARTER_HOUR).verdict).toBe(verdict);
  });

  test('doubts a fifth of what the temperature explains, and half a degree: 3 + 0.2 × 42 + 1 kPa from 80 to 60 °C', () => {
    const answer = judgePressureTest(SYSTEM, reading(100, 80), reading(58, 60), QUARTER_HOUR);
    expect(answer.uncertainty / 1000).toBeCloseTo(12.4, 0);
  });

  test('doubts it as much where the system warmed', () => {
    const tight = tightReading(SYSTEM, reading(100, 20), fromCelsius(40));
    expect(tight).toBeGreaterThan(110e3);
    const answer = judgePressureTest(SYSTEM, reading(100, 20), reading(tight / 1000, 40), QUARTER_HOUR);
    expect(answer.uncertainty).toBeGreaterThan(3e3 + 0.2 * (tight - 100e3));
    expect(answer.uncertainty).toBeLessThan(3e3 + 0.2 * (tight - 100e3) + 1.5e3);
  });

  test('gives the weather and the hoses of a night 3 kPa more', () => {
    const overNight = (end: number) =>
      judgePressureTest(SYSTEM, reading(100, 20), reading(end, 20), second(8 * 3600));
    expect(overNight(94).verdict).not.toBe('leaks');
    expect(overNight(92).verdict).toBe('leaks');
  });

  test('one reading moved by its error never goes from tight to a leak', () => {
    fc.assert(
      fc.property(
        spread(10, 90),
        spread(-3, 3),
        spread(20, 120),
        spread(40, 140),
        (from, warmer, start, end) => {
          const at = (kilopascal: number) =>
            judgePressureTest(SYSTEM, reading(start, from), reading(kilopascal, from + warmer), QUARTER_HOUR)
              .verdict;
          fc.pre(at(end) === 'tight');
          // Two pascals short of the error: the verdict's own rounding, one at either limit.
          for (const moved of [end - 1.998, end + 1.998]) expect(['leaks', 'rose']).not.toContain(at(moved));
        },
      ),
    );
  });
});

/** Air space at a second temperature, where it was 1 l at the first: what the coolant left of it. */
function airAt(from: number, to: number) {
  const grown = (celsius: number) => 6 * volumeRatio(SYSTEM.mixture, fromCelsius(20), fromCelsius(celsius));
  return fromLitres(1 + grown(from) - grown(to));
}
