import { sensorVoltage } from '../../../src/physics/sensor-circuit.ts';
import {
  bValue,
  curveFromB,
  curveThroughThree,
  type SensorCurve,
  type SensorPoint,
} from '../../../src/physics/thermistor.ts';
import { fromCelsius, ohm, toCelsius, volt } from '../../../src/physics/units.ts';
import type { Ours, OursByTable } from '../compare.ts';
import { number, rowsOf, TABLES } from '../tables.ts';

/** A printed point of a sensor table. */
function pointAt(table: string, celsius: number): SensorPoint {
  const found = TABLES.find(({ id }) => id === table);
  const row = found && rowsOf(found).find((candidate) => candidate['°C'] === celsius);
  if (!row) throw new Error(`table "${table}" has no row at ${celsius} °C`);
  return { temperature: fromCelsius(celsius), resistance: ohm(number(row, 'ohm')) };
}

function through(table: string, celsius: readonly [number, number, number]): SensorCurve {
  const [cold, middle, hot] = celsius;
  return curveThroughThree([pointAt(table, cold), pointAt(table, middle), pointAt(table, hot)]);
}

/** Temperature our curve reads from the printed resistance, beside the printed temperature. */
const reads = (curve: SensorCurve): Readonly<Record<string, Ours>> => ({
  '°C': (row) => toCelsius(curve.temperatureAt(ohm(number(row, 'ohm')))),
});

const at25 = pointAt('ntc-10k-m8', 25);
const byB = curveFromB(at25, bValue(at25, pointAt('ntc-10k-m8', 100)));
const small = reads(through('ntc-2252', [0, 40, 100]));
const medium = reads(through('ntc-5000', [0, 40, 100]));
const large = reads(through('ntc-10000-precision', [0, 40, 100]));

export const SENSORS: OursByTable = {
  'ntc-10k-m8': reads(through('ntc-10k-m8', [0, 50, 100])),
  'ntc-15k-m8': reads(through('ntc-15k-m8', [0, 60, 100])),
  'ntc-10k-8016': reads(through('ntc-10k-8016', [20, 60, 100])),
  'ntc-2k5-at-20': reads(through('ntc-2k5-at-20', [0, 50, 100])),
  'ntc-10k-b': reads(byB),
  'ntc-2252': small,
  'ntc-2252-recalled': small,
  'ntc-5000': medium,
  'ntc-5000-recalled': medium,
  'ntc-10000-precision': large,
  'ntc-10000-precision-recalled': large,
  divider: {
    V: (row) =>
      sensorVoltage(
        { supply: volt(5), resistance: ohm(2200) },
        pointAt('ntc-10k-m8', number(row, '°C')).resistance,
      ),
  },
};
