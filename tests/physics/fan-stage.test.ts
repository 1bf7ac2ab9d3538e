import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fanBehindResistor, fanOnDuty, fanOnVolts, WINDING_SHARE } from '../../src/physics/fan-stage.ts';
import { ampere, ohm, volt } from '../../src/physics/units.ts';
import { spread } from './spread.ts';

const MOTOR = { rated: volt(13), current: ampere(20) };

describe('a fan motor on less than its full voltage', () => {
  // Fan laws as printed in handbooks (ISO 5801; from memory): 80 % of the speed takes 51.2 % of the power, 90 % 72.9, half 12.5.
  test.each([
    [0.9, 0.729],
    [0.8, 0.512],
    [0.5, 0.125],
  ])('at %d of its speed the shaft takes %d of the power', (speed, power) => {
    // Without a winding the speed goes with the volts.
    const runs = fanOnVolts(MOTOR, volt(13 * speed), 0);
    expect(runs.speed).toBeCloseTo(speed, 9);
    expect(runs.power).toBeCloseTo(power, 9);
  });

  // By hand, no winding: 6 s² + 13 s − 13 = 0 with 0.3 Ω and 20 A gives s = (√481 − 13)/12 = 0.7443, 11.08 A, 3.32 V lost.
  test('behind 0.3 Ω runs at three quarters of its speed', () => {
    const runs = fanBehindResistor(MOTOR, volt(13), ohm(0.3), 0);
    expect(runs.speed).toBeCloseTo(0.7443, 3);
    expect(runs.current).toBeCloseTo(11.08, 2);
    expect(13 - runs.volts).toBeCloseTo(3.32, 2);
    expect(runs.heat).toBeCloseTo(11.08 ** 2 * 0.3, 0);
  });

  // By hand with a fifth in the winding: V/V0 = 0.8 s + 0.2 s²; half the speed takes 0.45 of the volts and a quarter of the current.
  test('with a winding takes less than its share of volts for half the speed', () => {
    const runs = fanOnVolts(MOTOR, volt(0.45 * 13), 0.2);
    expect(runs.speed).toBeCloseTo(0.5, 9);
    expect(runs.current).toBeCloseTo(5, 9);
  });

  test('is within a tenth of the speed for any winding, down to four tenths of the volts', () => {
    fc.assert(
      fc.property(spread(0.4, 1), spread(WINDING_SHARE.least, WINDING_SHARE.most), (share, winding) => {
        const usual = fanOnVolts(MOTOR, volt(13 * share)).speed;
        expect(Math.abs(fanOnVolts(MOTOR, volt(13 * share), winding).speed / usual - 1)).toBeLessThan(0.1);
      }),
    );
  });

  test('loses no energy on the way: what the motor and the resistor take is what the supply gives', () => {
    fc.assert(
      fc.property(spread(8, 15), spread(0.05, 3), spread(3, 60), (supply, resistor, current) => {
        const motor = { rated: volt(13), current: ampere(current) };
        const runs = fanBehindResistor(motor, volt(supply), ohm(resistor));
        expect(runs.volts * runs.current + runs.heat).toBeCloseTo(supply * runs.current, 6);
      }),
    );
  });
});

describe('a chopped supply', () => {
  // By hand: at 60 % duty without a winding 0.6 of the speed, 0.36 of the current in the motor and 0.216 from the battery.
  test('gives the motor its mean volts, and the battery less current than the motor has', () => {
    const runs = fanOnDuty(MOTOR, volt(13), 0.6, 0);
    expect(runs.speed).toBeCloseTo(0.6, 9);
    expect(runs.current).toBeCloseTo(7.2, 9);
    expect(runs.fromBattery).toBeCloseTo(4.32, 9);
  });
});
