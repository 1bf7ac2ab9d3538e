import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pullUpFrom, resistanceForVolts, sensorVoltage } from '../../src/physics/sensor-circuit.ts';
import { ohm, volt } from '../../src/physics/units.ts';
import { spread } from './spread.ts';

const circuit = (resistance: number, supply = 5) => ({ supply: volt(supply), resistance: ohm(resistance) });

describe('a sensor fed through a resistor', () => {
  // Ohm's law by hand: 5 V over 1,000 + 250 Ω is 4 mA, so 1 V over the sensor; equal resistors halve the supply.
  test.each([
    [1000, 250, 1],
    [1000, 1000, 2.5],
    [2200, 8800, 4],
    [3000, 2000, 2],
  ])('%d Ω and a sensor of %d Ω leave %d V', (pull, sensor, volts) => {
    expect(sensorVoltage(circuit(pull), ohm(sensor))).toBeCloseTo(volts, 9);
    expect(resistanceForVolts(circuit(pull), volt(volts))).toBeCloseTo(sensor, 6);
    expect(pullUpFrom(volt(5), ohm(sensor), volt(volts))).toBeCloseTo(pull, 6);
  });

  test('gives the resistance back that made the volts', () => {
    fc.assert(
      fc.property(spread(100, 20e3), spread(50, 40e3), spread(4.5, 5.5), (pull, sensor, supply) => {
        const volts = sensorVoltage(circuit(pull, supply), ohm(sensor));
        fc.pre(volts > 0.02 * supply && volts < 0.98 * supply);
        expect(resistanceForVolts(circuit(pull, supply), volts) / sensor).toBeCloseTo(1, 6);
        expect(pullUpFrom(volt(supply), ohm(sensor), volts) / pull).toBeCloseTo(1, 6);
      }),
    );
  });

  test('refuses volts that are open or shorted', () => {
    expect(() => resistanceForVolts(circuit(1000), volt(4.99))).toThrow('voltage at the plug');
    expect(() => resistanceForVolts(circuit(1000), volt(0.02))).toThrow('voltage at the plug');
  });
});
