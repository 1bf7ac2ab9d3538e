/** Stamp and fan read off a car that no record holds: it is judged like one that has a record. */
import { expect, test } from 'vitest';
import { judgeTrace } from '../../src/trace/judge-trace.ts';
import { finish, readLog } from '../../src/trace/read/read-log.ts';
import { traceVehicleOf, type VehicleFigures } from '../../src/trace/vehicle.ts';
import { MAKERS, ownFigures } from './both-makers.ts';
import { handLog, OPENS_EARLY } from './hand-log.ts';
import { STAMP_88, sheetWith } from './known-cars.ts';

const kelvin = (celsius: number) => celsius + 273.15;

function verdictOf(text: string, ...[sheet, typed]: Parameters<typeof traceVehicleOf>) {
  const read = finish(readLog(text));
  if (!read.ok) throw new Error(read.fault.message);
  return judgeTrace(read.trace, traceVehicleOf(sheet, typed)).verdict;
}

test.each(Array.from({ length: 12 }, (_, at) => 50_000 + at))(
  'road test %d: typed or on the shelf',
  (number) => {
    const car = MAKERS.second(number);
    const own = ownFigures(car);
    const bare: VehicleFigures = { ...own, figures: {} };
    const typed = {
      stamp: kelvin(car.stamp),
      fanOn: kelvin(Math.round(car.fanOn)),
      fanOff: kelvin(Math.round(car.fanOff)),
    };
    expect(verdictOf(car.text, bare, typed)).toEqual(verdictOf(car.text, own));
  },
);

test('76 to 78 °C at speed: cannot tell without a stamp of 87, and blamed with it', () => {
  const log = handLog(OPENS_EARLY, 14);
  expect(verdictOf(log, undefined, { stamp: kelvin(87) }).finding).toBe('cold-at-speed');
  expect(verdictOf(log, undefined, { stamp: kelvin(80) }).causes).toEqual([]);
});

test('what is typed goes before the record, and what the record says around its own stamp goes with that', () => {
  const vehicle = traceVehicleOf(
    sheetWith({
      'thermostat.opens': '88 °C',
      'thermostat.fully-open': '103 °C',
      'running.low-limit': '79 °C',
      'running.cruise': '88 to 95 °C',
      'fan.on': '97 °C',
      'fan.off': '92 °C',
      'fan.fast': '103 °C',
    }),
    { stamp: kelvin(82), fanOn: kelvin(93) },
  );
  expect(vehicle.opens).toEqual({ low: kelvin(82), high: kelvin(82), from: 'vehicle' });
  expect(vehicle.lowLimit.high).toBeLessThan(kelvin(76));
  expect(vehicle.fullyOpen.high).toBeLessThan(kelvin(101));
  expect(vehicle.cruise.low).toBe(kelvin(80));
  expect(vehicle.fanOn.low).toBe(kelvin(93));
  expect(vehicle.fanOff.high).toBeLessThan(kelvin(90));
  expect(vehicle.stopBy).toBe('over the fan');
  // Untyped, the record stands.
  expect(traceVehicleOf(STAMP_88).fanOff.low).toBe(kelvin(92));
});
