import { IAPWS97_EoS } from '@neutrium/thermo.eos.iapws97';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { kelvin } from '../../src/physics/units.ts';
import { waterDensity } from '../../src/physics/water-density.ts';
import { waterBoilingPoint, waterVapourPressure } from '../../src/physics/water-saturation.ts';
import { spread } from './spread.ts';

const reference = new IAPWS97_EoS();

describe('water', () => {
  test('turns boiling point and vapour pressure round', () => {
    fc.assert(
      fc.property(spread(273.16, 640), (temperature) => {
        expect(waterBoilingPoint(waterVapourPressure(kelvin(temperature)))).toBeCloseTo(temperature, 4);
      }),
    );
  });

  test('boils hotter under more pressure', () => {
    fc.assert(
      fc.property(spread(274, 640), (temperature) => {
        expect(waterVapourPressure(kelvin(temperature + 1))).toBeGreaterThan(
          waterVapourPressure(kelvin(temperature)),
        );
      }),
    );
  });

  // @neutrium/thermo.eos.iapws97 2.0.2, IAPWS-IF97 region 1, run here; solve() takes Pa and K.
  test('weighs what IAPWS-IF97 says, within 0.02 % from 1 to 119 °C at 3 bar', () => {
    for (let celsius = 1; celsius < 120; celsius += 2) {
      const temperature = kelvin(celsius + 273.15);
      const { rho } = reference.solve({ p: 300e3, t: temperature });
      expect(Math.abs(waterDensity(temperature) / Number(rho) - 1)).toBeLessThan(2e-4);
    }
  });

  test('is liquid in the reference just below our boiling point and steam just above it', () => {
    for (const pressure of [50e3, 101325, 200e3, 300e3]) {
      const boils = waterBoilingPoint(pressure as Parameters<typeof waterBoilingPoint>[0]);
      expect(Number(reference.solve({ p: pressure, t: boils - 0.001 }).rho)).toBeGreaterThan(900);
      expect(Number(reference.solve({ p: pressure, t: boils + 0.001 }).rho)).toBeLessThan(5);
    }
  });

  test('is densest near 4 °C', () => {
    const at = (celsius: number) => waterDensity(kelvin(celsius + 273.15));
    expect(at(4)).toBeGreaterThan(at(1));
    expect(at(4)).toBeGreaterThan(at(8));
  });
});
