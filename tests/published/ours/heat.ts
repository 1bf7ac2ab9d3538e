import { flowForHeat, heatToWarm } from '../../../src/physics/heat-balance.ts';
import { exchanged } from '../../../src/physics/heat-exchanger.ts';
import { infraredReading } from '../../../src/physics/infrared.ts';
import { fromCelsius, fromLitres, second, toCelsius, watt } from '../../../src/physics/units.ts';
import { type Lump, lumpTemperature, settlesAt, timeToReach } from '../../../src/physics/warm-up.ts';
import type { OursByTable } from '../compare.ts';
import { number, type Row } from '../tables.ts';
import { half } from './mixtures.ts';

const COOLING: Lump = { capacity: 36e3, loss: 10, heat: watt(0), surroundings: fromCelsius(20) };
const WARMING: Lump = { capacity: 60e3, loss: 25, heat: watt(5000), surroundings: fromCelsius(10) };

const exchangerOf = (row: Row) =>
  exchanged({
    hot: fromCelsius(number(row, 'hot °C')),
    cold: fromCelsius(number(row, 'out °C')),
    airIn: fromCelsius(number(row, 'in °C')),
    airOut: fromCelsius(number(row, 'behind °C')),
  });

export const HEAT: OursByTable = {
  'coolant-heat': {
    kJ: (row) =>
      heatToWarm(
        half('ethylene'),
        fromLitres(number(row, 'litres')),
        fromCelsius(number(row, 'from °C')),
        fromCelsius(number(row, 'to °C')),
      ) / 1000,
  },
  'flow-for-heat': {
    'l/min': (row) =>
      flowForHeat(half('ethylene'), watt(number(row, 'kW') * 1000), {
        hot: fromCelsius(90 + number(row, 'K') / 2),
        cold: fromCelsius(90 - number(row, 'K') / 2),
      }) * 60e3,
  },
  'newton-cooling': {
    '°C': (row) => toCelsius(lumpTemperature(COOLING, fromCelsius(90), second(number(row, 'min') * 60))),
  },
  'lumped-warm-up': {
    '°C': (row) => toCelsius(lumpTemperature(WARMING, fromCelsius(10), second(number(row, 's')))),
  },
  'lumped-time': {
    s: (row) => {
      const answer = timeToReach(WARMING, fromCelsius(10), fromCelsius(number(row, '°C')));
      return answer.reaches ? answer.after : Number.NaN;
    },
  },
  'settles-at': {
    '°C': (row) =>
      toCelsius(
        settlesAt({
          capacity: 60e3,
          loss: number(row, 'W/K'),
          heat: watt(8000),
          surroundings: fromCelsius(0),
        }),
      ),
  },
  exchanger: {
    effectiveness: (row) => exchangerOf(row).ofCoolant,
    'ratio of streams': (row) => exchangerOf(row).carries,
  },
  infrared: {
    '°C': (row) =>
      toCelsius(
        infraredReading(
          { emissivity: number(row, 'emissivity'), set: 0.95, surroundings: fromCelsius(25) },
          fromCelsius(90),
        ),
      ),
  },
};
