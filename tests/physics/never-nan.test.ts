import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { atmosphericPressure } from '../../src/physics/atmosphere.ts';
import { driveRatio, judgeSlip, pumpSpeed, slipOf } from '../../src/physics/belt-drive.ts';
import { benchTest } from '../../src/physics/bench-test.ts';
import {
  boilingPoint,
  boilingPointUnderCap,
  boilingUncertainty,
  boilMargin,
  flashTemperature,
  mixtureVapourPressure,
} from '../../src/physics/boiling.ts';
import { PROPERTY_CLASSES } from '../../src/physics/bolt.ts';
import {
  cableBears,
  cableResistance,
  copperFactor,
  heatsCableIn,
  voltageDrop,
  wireGaugeArea,
} from '../../src/physics/cable.ts';
import { daysBetween, monthsAfter, nextChange, paceOf } from '../../src/physics/coolant-change.ts';
import { cansFor, partsOf } from '../../src/physics/coolant-order.ts';
import { coolingTime, coolingTimeSeen } from '../../src/physics/cooling-time.ts';
import { correctMixture, fillAfterDrain } from '../../src/physics/correct-mixture.ts';
import { compressionSpread, leakDownSpread } from '../../src/physics/cylinder-spread.ts';
import { expansion, levelAboveColdMark, roomWhenHot, volumeRatio } from '../../src/physics/expansion.ts';
import { fanBehindResistor, fanOnDuty, fanOnVolts } from '../../src/physics/fan-stage.ts';
import { accountForFill } from '../../src/physics/fill-account.ts';
import { flushesToBelow, oldCoolantLeft } from '../../src/physics/flushing.ts';
import {
  freezingRange,
  freezingRangeByVolume,
  strengthForFreezing,
  strengthRangeForFreezing,
} from '../../src/physics/freezing-range.ts';
import { torqueAtFriction } from '../../src/physics/friction.ts';
import { currentFromFuseDrop } from '../../src/physics/fuse.ts';
import type { Glycol } from '../../src/physics/glycol.ts';
import { glycolVapourPressure } from '../../src/physics/glycol-vapour-pressure.ts';
import { flowForHeat, heatGivenOff, heatToWarm } from '../../src/physics/heat-balance.ts';
import { airBehind, exchanged, judgeExchanger } from '../../src/physics/heat-exchanger.ts';
import { infraredReading } from '../../src/physics/infrared.ts';
import { joint } from '../../src/physics/joint.ts';
import { againstTester, judgeLoss, lastsFor } from '../../src/physics/loss-rate.ts';
import { freezingPoint, mixtureDensity, mixtureSpecificHeat } from '../../src/physics/mixture-properties.ts';
import { OutOfRange } from '../../src/physics/out-of-range.ts';
import { judgePressureTest, tightReading } from '../../src/physics/pressure-decay.ts';
import {
  indexOfBrix,
  refractiveIndex,
  strengthForIndex,
  strengthForIndexAt,
  strengthReadOnScaleOf,
} from '../../src/physics/refractive-index.ts';
import { pullUpFrom, resistanceForVolts, sensorVoltage } from '../../src/physics/sensor-circuit.ts';
import { toMassFraction, toVolumeFraction } from '../../src/physics/strength.ts';
import { strippingLoad } from '../../src/physics/stripping.ts';
import { bValue, curveFromB, curveFromTable, curveThroughThree } from '../../src/physics/thermistor.ts';
import { parseThread } from '../../src/physics/thread.ts';
import {
  assemblyPreload,
  breakingTorque,
  clampLoad,
  clampLoadByNutFactor,
  nutFactor,
  tighteningTorque,
} from '../../src/physics/tightening.ts';
import { HOLE_MATERIALS, torquePlausibility } from '../../src/physics/torque-plausibility.ts';
import { vacuumDraw } from '../../src/physics/vacuum-fill.ts';
import { lumpTemperature, settlesAt, timeToReach } from '../../src/physics/warm-up.ts';
import { waterDensity } from '../../src/physics/water-density.ts';
import { waterBoilingPoint, waterVapourPressure } from '../../src/physics/water-saturation.ts';
import { wrenchSetting } from '../../src/physics/wrench-extension.ts';
import { spread } from './spread.ts';

/** Any number at all, forced past the types as untyped input would be. */
const wild = fc.oneof(
  fc.double(),
  fc.constantFrom(NaN, Infinity, -Infinity, 0, -0, 1, -1, 5e-324, 1e-9, 1e9, 1e308, -1e308),
);

/** A number in a span, or now and then any number at all. */
const near = (min: number, max: number) =>
  fc
    .oneof({ weight: 9, arbitrary: spread(min, max) }, { weight: 1, arbitrary: wild })
    .map((value) => value as never);

const glycol = fc.constantFrom<Glycol>('ethylene', 'propylene');
const fraction = near(0, 1);
const mixture = fc.record({ glycol, fraction });
const weakMixture = fc.record({ glycol, fraction: near(0, 0.6) });
const kelvins = near(250, 380);
const pressure = near(20e3, 500e3);
const gauge = near(-50e3, 300e3);
const altitude = near(-500, 6000);
const volume = near(0, 0.02);
const resistance = near(1, 1e5);
const thread = fc.constantFrom('M4', 'M6', 'M8x1', 'M12').map((name) => {
  const found = parseThread(name);
  if (!found) throw new Error(name);
  return found;
});
const anyDay = fc.oneof(
  fc.constantFrom('2024-02-29', '2022-05-10', '1999-12-31', '2040-08-31'),
  fc.constantFrom('', '2024-13-01', 'May'),
);
const pulleys = fc.record({ crankPulley: near(0.02, 0.5), pumpPulley: near(0.02, 0.5) });
const exchangerReadings = fc.record({
  hot: near(345, 385),
  cold: near(320, 375),
  airIn: near(250, 320),
  airOut: near(280, 360),
});
const propertyClass = fc.constantFrom(...PROPERTY_CLASSES);
const friction = near(0.04, 0.4);
const system = fc.record({ mixture: weakMixture, volume, coldAt: kelvins, bottleArea: near(0, 0.1) });
const pressurised = fc.record({
  mixture: weakMixture,
  liquid: volume,
  air: near(0, 0.005),
  outside: near(5e4, 11e4),
});
const reading = fc.record({ gauge, temperature: kelvins });
/** Points as a sensor has them, or now and then any two numbers. */
const sensorPoint = fc.oneof(
  {
    weight: 9,
    arbitrary: spread(250, 380).map((temperature) => ({
      temperature: temperature as never,
      resistance: (1e4 * Math.exp(3500 / temperature - 3500 / 298.15)) as never,
    })),
  },
  { weight: 1, arbitrary: fc.record({ temperature: kelvins, resistance }) },
);
const lump = fc.record({
  capacity: near(1e3, 1e6),
  loss: near(0.1, 1000),
  heat: near(0, 1e5),
  surroundings: near(240, 320),
});
const spot = fc.record({ emissivity: near(0.05, 1), set: near(0.1, 1), surroundings: near(250, 320) });
const between = fc.record({ hot: kelvins, cold: kelvins });
const flow = near(0, 1 / 60);
const pullUp = fc.record({ supply: near(1, 30), resistance });

const fanMotor = fc.record({ rated: near(5, 30), current: near(0.5, 150) });

/** A function with what to feed it, as one thing that can be called with anything. */
function fed<Values extends unknown[]>(
  arbitraries: { [K in keyof Values]: fc.Arbitrary<Values[K]> },
  act: (...values: Values) => unknown,
): fc.Arbitrary<() => unknown> {
  return fc.tuple(...arbitraries).map((values) => () => act(...(values as Values)));
}

const calls: Readonly<Record<string, fc.Arbitrary<() => unknown>>> = {
  atmosphericPressure: fed([altitude], atmosphericPressure),
  benchTest: fed([near(320, 395), altitude, mixture], benchTest),
  boilingPoint: fed([mixture, pressure], boilingPoint),
  boilingPointUnderCap: fed([mixture, gauge, altitude], boilingPointUnderCap),
  boilingUncertainty: fed([mixture], boilingUncertainty),
  boilMargin: fed([kelvins, mixture, gauge, altitude], boilMargin),
  flashTemperature: fed([mixture, altitude], flashTemperature),
  mixtureVapourPressure: fed([mixture, near(270, 480)], mixtureVapourPressure),
  glycolVapourPressure: fed([glycol, near(200, 730)], glycolVapourPressure),
  waterVapourPressure: fed([near(270, 650)], waterVapourPressure),
  waterBoilingPoint: fed([near(600, 23e6)], waterBoilingPoint),
  waterDensity: fed([kelvins], waterDensity),
  freezingPoint: fed([mixture], freezingPoint),
  mixtureDensity: fed([weakMixture, kelvins], mixtureDensity),
  mixtureSpecificHeat: fed([weakMixture, kelvins], mixtureSpecificHeat),
  freezingRange: fed([mixture], freezingRange),
  freezingRangeByVolume: fed([glycol, fraction], freezingRangeByVolume),
  strengthForFreezing: fed([glycol, near(215, 275)], strengthForFreezing),
  strengthRangeForFreezing: fed([glycol, near(215, 275)], strengthRangeForFreezing),
  toMassFraction: fed([glycol, fraction], toMassFraction),
  toVolumeFraction: fed([glycol, fraction], toVolumeFraction),
  refractiveIndex: fed([mixture], refractiveIndex),
  indexOfBrix: fed([near(0, 45)], indexOfBrix),
  strengthForIndexAt: fed([glycol, near(1.33, 1.41), near(273, 323)], (which, index, sample) =>
    strengthForIndexAt(which, index, sample, 'at 20 °C'),
  ),
  strengthForIndex: fed([glycol, near(1.33, 1.41)], strengthForIndex),
  strengthReadOnScaleOf: fed([glycol, glycol, near(220, 275)], strengthReadOnScaleOf),
  volumeRatio: fed([weakMixture, kelvins, kelvins], volumeRatio),
  expansion: fed([weakMixture, volume, kelvins, kelvins], expansion),
  levelAboveColdMark: fed([system, kelvins], levelAboveColdMark),
  roomWhenHot: fed([system, volume, kelvins], roomWhenHot),
  correctMixture: fed(
    [fc.record({ capacity: volume, is: fraction, wanted: fraction, adding: fraction })],
    correctMixture,
  ),
  fillAfterDrain: fed(
    [
      fc.record({
        capacity: volume,
        remaining: volume,
        remainingStrength: fraction,
        wanted: fraction,
        strong: fraction,
        weak: fraction,
      }),
    ],
    fillAfterDrain,
  ),
  oldCoolantLeft: fed([volume, volume, near(0, 20)], oldCoolantLeft),
  flushesToBelow: fed([volume, volume, fraction], flushesToBelow),
  accountForFill: fed(
    [fc.record({ capacity: volume, drained: volume, refilled: volume, takesNoMore: fc.boolean() })],
    accountForFill,
  ),
  vacuumDraw: fed(
    [
      fc.record({
        empty: volume,
        vacuum: near(-1e5, 0),
        outside: near(5e4, 11e4),
        temperature: kelvins,
        mixture: weakMixture,
        lift: near(0, 3),
      }),
    ],
    vacuumDraw,
  ),
  compressionSpread: fed([fc.array(near(0, 4e6), { maxLength: 8 })], compressionSpread),
  leakDownSpread: fed([fc.array(near(0, 1), { maxLength: 8 })], leakDownSpread),
  partsOf: fed([volume, fraction, fraction], partsOf),
  cansFor: fed(
    [volume, fc.array(fc.record({ holds: near(1e-3, 0.02), price: near(0, 100) }), { maxLength: 3 })],
    cansFor,
  ),
  judgeLoss: fed(
    [
      fc.record({
        lost: near(-0.01, 0.01),
        error: near(0, 0.001),
        time: near(3600, 1e7),
        distance: near(1e3, 1e7),
        justFilled: fc.boolean(),
      }),
    ],
    judgeLoss,
  ),
  lastsFor: fed([volume, near(0, 0.01), near(0, 0.001), near(1, 1e7)], lastsFor),
  againstTester: fed([near(0, 0.01), near(0, 1e-5), near(0, 1e6)], againstTester),
  tightReading: fed([pressurised, reading, kelvins], tightReading),
  judgePressureTest: fed([pressurised, reading, reading, near(10, 86400)], judgePressureTest),
  curveFromTable: fed([fc.array(sensorPoint, { maxLength: 4 }), resistance, kelvins], (points, r, t) => {
    const curve = curveFromTable(points);
    return [curve.temperatureAt(r), curve.resistanceAt(t)];
  }),
  curveThroughThree: fed([sensorPoint, sensorPoint, sensorPoint, resistance, kelvins], (a, b, c, r, t) => {
    const curve = curveThroughThree([a, b, c]);
    return [curve.resistanceAt(t), curve.temperatureAt(r)];
  }),
  curveFromB: fed([sensorPoint, near(1500, 7000), resistance, kelvins], (point, b, r, t) => {
    const curve = curveFromB(point, b);
    return [curve.resistanceAt(t), curve.temperatureAt(r)];
  }),
  bValue: fed([sensorPoint, sensorPoint], bValue),
  resistanceForVolts: fed([pullUp, near(0, 6)], resistanceForVolts),
  pullUpFrom: fed([near(1, 30), resistance, near(0, 6)], pullUpFrom),
  fanOnVolts: fed([fanMotor, near(0, 20)], (motor, volts) => fanOnVolts(motor, volts)),
  fanBehindResistor: fed([fanMotor, near(5, 30), near(0, 10)], (motor, supply, resistor) =>
    fanBehindResistor(motor, supply, resistor),
  ),
  fanOnDuty: fed([fanMotor, near(5, 30), near(0, 1)], (motor, supply, duty) =>
    fanOnDuty(motor, supply, duty),
  ),
  coolingTime: fed([volume, kelvins, kelvins, near(240, 330)], (capacity, from, to, outside) =>
    coolingTime(capacity, 'bonnet open', from, to, outside),
  ),
  coolingTimeSeen: fed([kelvins, kelvins, near(100, 2e4), kelvins, near(240, 330)], coolingTimeSeen),
  sensorVoltage: fed([pullUp, resistance], sensorVoltage),
  cableBears: fed([near(1e-7, 2e-4)], cableBears),
  heatsCableIn: fed([near(0, 2000), near(1e-7, 2e-4)], heatsCableIn),
  cableResistance: fed([near(0, 100), near(1e-7, 2e-4), kelvins], cableResistance),
  copperFactor: fed([kelvins], copperFactor),
  wireGaugeArea: fed([near(0, 40)], wireGaugeArea),
  voltageDrop: fed([near(0, 2000), near(0, 1)], voltageDrop),
  joint: fed([near(0, 30), near(0, 2000)], (drop, current) => joint(drop, current, 'connection')),
  currentFromFuseDrop: fed([near(0, 0.5), near(0, 0.1)], currentFromFuseDrop),
  heatGivenOff: fed([weakMixture, flow, between], heatGivenOff),
  flowForHeat: fed([weakMixture, near(0, 1e5), between], flowForHeat),
  heatToWarm: fed([weakMixture, volume, kelvins, kelvins], heatToWarm),
  settlesAt: fed([lump], settlesAt),
  lumpTemperature: fed([lump, kelvins, near(0, 1e5)], lumpTemperature),
  timeToReach: fed([lump, kelvins, kelvins], timeToReach),
  infraredReading: fed([spot, near(200, 800)], infraredReading),
  assemblyPreload: fed([thread, propertyClass, friction], assemblyPreload),
  breakingTorque: fed([thread, propertyClass, friction], breakingTorque),
  tighteningTorque: fed([thread, propertyClass, friction], tighteningTorque),
  clampLoad: fed([thread, near(0, 2000), friction], clampLoad),
  clampLoadByNutFactor: fed([thread, near(0, 2000), near(0.05, 0.6)], clampLoadByNutFactor),
  nutFactor: fed([thread, friction], nutFactor),
  strippingLoad: fed([thread, near(0, 0.1)], (bolt, engagement) =>
    strippingLoad(bolt, engagement, 'aluminium'),
  ),
  exchanged: fed([exchangerReadings], exchanged),
  judgeExchanger: fed([fc.constantFrom('radiator', 'heater'), exchangerReadings], judgeExchanger),
  airBehind: fed([near(0, 1), kelvins, kelvins], airBehind),
  driveRatio: fed([pulleys], driveRatio),
  pumpSpeed: fed([pulleys, near(0, 8000), near(0, 1)], pumpSpeed),
  slipOf: fed([pulleys, near(0, 8000), near(0, 8000)], slipOf),
  judgeSlip: fed([near(-0.2, 1)], judgeSlip),
  monthsAfter: fed([anyDay, fc.oneof(fc.integer({ min: -60, max: 300 }), near(0, 300))], monthsAfter),
  daysBetween: fed([anyDay, anyDay], daysBetween),
  nextChange: fed(
    [
      fc.record({
        last: anyDay,
        months: fc.oneof(fc.integer({ min: 0, max: 300 }), near(0, 300)),
        distance: near(1e6, 1e9),
        pace: near(0, 2e8),
        seen: fc.record({ day: anyDay, driven: near(0, 2e9) }),
      }),
    ],
    nextChange,
  ),
  paceOf: fed([anyDay, anyDay, near(0, 1e9)], paceOf),
  torqueAtFriction: fed([thread, near(0, 2000)], (each, torque) =>
    torqueAtFriction(each, torque, 'dry', 'oiled'),
  ),
  torquePlausibility: fed(
    [
      fc.record({
        thread: fc.oneof(fc.constantFrom('M6', 'M8x1', 'M12'), fc.string()),
        propertyClass,
        torque: near(0, 2000),
        into: fc.constantFrom(...HOLE_MATERIALS),
      }),
    ],
    torquePlausibility,
  ),
  wrenchSetting: fed([near(0, 2000), near(0, 2), near(0, 1), near(-4, 4)], wrenchSetting),
};

describe('whatever the input, a finite answer or OutOfRange', () => {
  test.each(Object.entries(calls))('%s', (_, call) => {
    let answered = 0;
    fc.assert(
      fc.property(call, (act) => {
        const answer = answerOf(act);
        if (answer === 'out of range') return;
        answered++;
        for (const number of numbersIn(answer)) expect(number).toSatisfy(Number.isFinite);
      }),
      { numRuns: 400 },
    );
    // A function that refused everything would pass the above and prove nothing.
    expect(answered).toBeGreaterThan(0);
  });
});

function answerOf(act: () => unknown): unknown {
  try {
    return act();
  } catch (error) {
    if (error instanceof OutOfRange) return 'out of range';
    throw error;
  }
}

function numbersIn(answer: unknown): number[] {
  if (typeof answer === 'number') return [answer];
  if (typeof answer !== 'object' || answer === null) return [];
  return Object.values(answer).flatMap(numbersIn);
}
