import { atmosphericPressure } from '../../../src/physics/atmosphere.ts';
import { volumeRatio } from '../../../src/physics/expansion.ts';
import { absolutePascal, fromCelsius, kelvin, metre, toCelsius } from '../../../src/physics/units.ts';
import { waterBoilingPoint, waterVapourPressure } from '../../../src/physics/water-saturation.ts';
import type { OursByTable } from '../compare.ts';
import { number, type Row } from '../tables.ts';
import { byMass } from './mixtures.ts';

const boilsAtKilopascal = (row: Row): number =>
  toCelsius(waterBoilingPoint(absolutePascal(number(row, 'kPa absolute') * 1000)));

const pressureAt = (row: Row) => atmosphericPressure(metre(number(row, 'm')));

export const WATER: OursByTable = {
  'water-boiling': { 'python3-iapws': boilsAtKilopascal, neutrium: boilsAtKilopascal },
  'if97-boiling-points': { K: (row) => waterBoilingPoint(absolutePascal(number(row, 'MPa') * 1e6)) },
  'if97-vapour-pressures': { MPa: (row) => waterVapourPressure(kelvin(number(row, 'K'))) / 1e6 },
  'water-expansion': {
    'IAPWS-95': (row) =>
      100 * (volumeRatio(byMass('ethylene', 0), fromCelsius(20), fromCelsius(number(row, '°C'))) - 1),
  },
  'standard-atmosphere': {
    Pa: pressureAt,
    'water boils': (row) => toCelsius(waterBoilingPoint(pressureAt(row))),
  },
  'standard-atmosphere-printed': { hPa: (row) => pressureAt(row) / 100 },
};
