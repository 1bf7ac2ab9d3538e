import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PressurisedSystem } from '../../src/physics/pressure-decay.ts';
import { judgePressureRise } from '../../src/physics/pressure-rise.ts';
import { toMassFraction } from '../../src/physics/strength.ts';
import {
  fromCelsius,
  fromLitres,
  gaugePascal,
  STANDARD_ATMOSPHERE,
  volumeFraction,
} from '../../src/physics/units.ts';
import { spread } from './spread.ts';

const CAR: PressurisedSystem = {
  mixture: { glycol: 'ethylene', fraction: toMassFraction('ethylene', volumeFraction(0.5)) },
  liquid: fromLitres(6),
  air: fromLitres(0.8),
  outside: STANDARD_ATMOSPHERE,
};

const rise = (celsius: number, kilopascal: number, system = CAR, cold = 20) =>
  judgePressureRise(system, fromCelsius(cold), fromCelsius(celsius), gaugePascal(kilopascal * 1e3));

describe('judgePressureRise', () => {
  // By hand: Boyle and Gay-Lussac for the air, Melinder's growth (0.14 l to 60 °C, 0.27 l to 90 °C), vapour over half and half
  // (about 16 and 55 kPa): 0.8 l come to 52 kPa at 60 °C and to 140 kPa at 90 °C.
  test.each([
    [60, 52],
    [90, 140],
  ])('at %d °C the %d kPa worked by hand are those of a sound system', (celsius, kilopascal) => {
    const { verdict, lowest, highest } = rise(celsius, kilopascal);
    expect(verdict).toBe('as a sound one');
    expect(lowest / 1e3).toBeLessThan(kilopascal);
    expect(highest / 1e3).toBeGreaterThan(kilopascal);
  });

  // Gay-Lussac: air alone, 20 to 80 °C, comes from 101.3 to 122 kPa; the vapour of the little coolant adds about 35.
  test('is near the gas law where there is hardly any coolant', () => {
    const airy = { ...CAR, liquid: fromLitres(0.5), air: fromLitres(20) };
    const { lowest, highest } = rise(80, 50, airy);
    expect(lowest / 1e3).toBeGreaterThan(20.7);
    expect(highest / 1e3).toBeLessThan(20.7 + 45);
  });

  test('calls half a bar at 35 °C gas, and nothing at 90 °C too little', () => {
    expect(rise(35, 50).verdict).toBe('gas gets in');
    expect(rise(90, 0).verdict).toBe('below');
  });

  test('a reading moved by its error never goes from sound to gas', () => {
    fc.assert(
      fc.property(spread(30, 95), spread(0, 200), (celsius, kilopascal) => {
        fc.pre(rise(celsius, kilopascal).verdict === 'as a sound one');
        expect(rise(celsius, kilopascal + 2).verdict).not.toBe('gas gets in');
      }),
    );
  });
});
