import fc from 'fast-check';
import { describe, expect, expectTypeOf, test } from 'vitest';
import { boilingPoint } from '../../src/physics/boiling.ts';
import {
  type AbsolutePascal,
  absolutePascal,
  fromCelsius,
  fromLitres,
  type GaugePascal,
  gaugePascal,
  type Kelvin,
  kelvin,
  type MassFraction,
  massFraction,
  STANDARD_ATMOSPHERE,
  toAbsolute,
  toCelsius,
  type VolumeFraction,
  volumeFraction,
} from '../../src/physics/units.ts';
import { spread } from './spread.ts';

describe('units', () => {
  test('keep apart what looks alike', () => {
    expectTypeOf<GaugePascal>().not.toExtend<AbsolutePascal>();
    expectTypeOf<VolumeFraction>().not.toExtend<MassFraction>();
    expectTypeOf<number>().not.toExtend<Kelvin>();
    expectTypeOf(boilingPoint).parameter(1).toEqualTypeOf<AbsolutePascal>();
  });

  test('turn Celsius and kelvin round', () => {
    fc.assert(
      fc.property(spread(-270, 2000), (celsius) => {
        expect(toCelsius(fromCelsius(celsius))).toBeCloseTo(celsius, 9);
      }),
    );
  });

  test('count a thousand litres to the cubic metre', () => {
    expect(fromLitres(1000)).toBe(1);
    expect(fromLitres(4.6)).toBeCloseTo(0.0046, 12);
  });

  test('add the air outside to a gauge pressure', () => {
    expect(toAbsolute(gaugePascal(140e3), STANDARD_ATMOSPHERE)).toBe(241325);
  });

  test.each([
    ['a temperature below absolute zero', () => kelvin(-1)],
    ['a Celsius temperature below absolute zero', () => fromCelsius(-274)],
    ['an absolute pressure below zero', () => absolutePascal(-1)],
    ['a vacuum deeper than the air', () => toAbsolute(gaugePascal(-102e3), STANDARD_ATMOSPHERE)],
    ['more glycol than all', () => massFraction(1.01)],
    ['a volume per cent typed as a fraction', () => volumeFraction(50)],
    ['no number', () => fromLitres(NaN)],
  ])('refuse %s', (_, act) => {
    expect(act).toThrow('is outside');
  });
});
