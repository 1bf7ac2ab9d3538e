import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sensorVoltage } from '../../src/physics/sensor-circuit.ts';
import {
  bValue,
  curveFromB,
  curveFromTable,
  curveThroughThree,
  type SensorCurve,
  type SensorPoint,
} from '../../src/physics/thermistor.ts';
import { fromCelsius, ohm, toCelsius, volt } from '../../src/physics/units.ts';
import { spread } from './spread.ts';

const point = (celsius: number, resistance: number): SensorPoint => ({
  temperature: fromCelsius(celsius),
  resistance: ohm(resistance),
});

// Bosch Motorsport data sheet, fluid temperature sensor NTC M8, 10 kohm at 25 °C.
const TABLE = [point(0, 27936), point(25, 10000), point(50, 4103), point(80, 1629), point(100, 946.6)];
const [AT_0, AT_25, AT_50, , AT_100] = TABLE as [
  SensorPoint,
  SensorPoint,
  SensorPoint,
  SensorPoint,
  SensorPoint,
];

const curves: readonly [string, SensorCurve][] = [
  ['a table', curveFromTable(TABLE)],
  ['three points', curveThroughThree([AT_0, AT_50, AT_100])],
  ['a B value', curveFromB(AT_25, 3500)],
];

describe.each(curves)('a curve from %s', (_, curve) => {
  test('turns temperature and resistance round', () => {
    fc.assert(
      fc.property(spread(curve.from, curve.to), (temperature) => {
        const resistance = curve.resistanceAt(temperature as SensorPoint['temperature']);
        expect(curve.temperatureAt(resistance)).toBeCloseTo(temperature, 6);
      }),
    );
  });

  test('falls as it warms', () => {
    fc.assert(
      fc.property(spread(curve.from, curve.to - 1), (temperature) => {
        const at = (t: number) => curve.resistanceAt(t as SensorPoint['temperature']);
        expect(at(temperature + 1)).toBeLessThan(at(temperature));
      }),
    );
  });

  test('refuses an open and a shorted sensor', () => {
    expect(() => curve.temperatureAt(ohm(1e8))).toThrow('sensor resistance');
    expect(() => curve.temperatureAt(ohm(0))).toThrow('sensor resistance');
  });
});

describe('a curve from a table', () => {
  test('goes through every printed point, the outer ones included', () => {
    const curve = curveFromTable(TABLE.toReversed());
    for (const { temperature, resistance } of TABLE) {
      expect(curve.temperatureAt(resistance)).toBeCloseTo(temperature, 6);
      expect(curve.resistanceAt(temperature) / resistance).toBeCloseTo(1, 9);
    }
  });

  // Printed 60 °C row of the same sheet, left out above: between its neighbours within 0.4 K.
  test('reads between points what the sheet prints there', () => {
    expect(toCelsius(curveFromTable(TABLE).temperatureAt(ohm(2967)))).toBeCloseTo(60, 0);
  });

  test('does not go on beyond its ends', () => {
    expect(() => curveFromTable(TABLE).resistanceAt(fromCelsius(110))).toThrow('sensor temperature');
  });
});

describe('a curve through three points', () => {
  test('goes through the points in any order', () => {
    const curve = curveThroughThree([AT_100, AT_0, AT_50]);
    for (const { temperature, resistance } of [AT_0, AT_50, AT_100])
      expect(curve.temperatureAt(resistance)).toBeCloseTo(temperature, 6);
  });

  test.each([
    ['a resistance that rises as it warms', [AT_0, point(50, 30000), AT_100]],
    ['two points at one temperature', [AT_0, point(0, 20000), AT_100]],
    ['a bend that no sensor has', [point(0, 5000), point(95, 4990), point(100, 100)]],
    ['a resistance of nothing', [AT_0, AT_50, point(100, 0)]],
  ] as const)('refuses %s', (_, points) => {
    expect(() => curveThroughThree(points)).toThrow('is outside');
  });
});

describe('B value', () => {
  test('of the sheet is 3,497 K between 25 and 100 °C, in either order', () => {
    expect(bValue(AT_25, AT_100)).toBeCloseTo(3497.1, 0);
    expect(bValue(AT_100, AT_25)).toBeCloseTo(3497.1, 0);
  });

  test('is refused when absurd', () => {
    expect(() => curveFromB(AT_25, 35)).toThrow('B value');
  });
});

describe('a sensor on its pull-up', () => {
  const pullUp = { supply: volt(5), resistance: ohm(2200) };

  test('halves the supply at its own resistance, and rises with that of the sensor towards the supply', () => {
    expect(sensorVoltage(pullUp, ohm(2200))).toBeCloseTo(2.5, 9);
    fc.assert(
      fc.property(spread(0, 1e6), (resistance) => {
        const across = sensorVoltage(pullUp, ohm(resistance));
        expect(sensorVoltage(pullUp, ohm(resistance * 2 + 1))).toBeGreaterThan(across);
        expect(across).toBeLessThan(5);
      }),
    );
  });

  test('shows a short as nothing', () => {
    expect(sensorVoltage(pullUp, ohm(0))).toBe(0);
  });
});
