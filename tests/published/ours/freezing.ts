import {
  type FreezingRange,
  freezingRange,
  freezingRangeByVolume,
} from '../../../src/physics/freezing-range.ts';
import type { Glycol } from '../../../src/physics/glycol.ts';
import { freezingPoint } from '../../../src/physics/mixture-properties.ts';
import { toCelsius, volumeFraction } from '../../../src/physics/units.ts';
import type { Ours, OursByTable } from '../compare.ts';
import { number } from '../tables.ts';
import { byMass } from './mixtures.ts';

const freezesByMass =
  (glycol: Glycol): Ours =>
  (row) =>
    toCelsius(freezingPoint(byMass(glycol, number(row, 'mass fraction'))));

/** The figure of the range that lies nearest to a published one: the figure itself when it is inside. */
function nearest({ lowest, highest }: FreezingRange, published: number): number {
  return Math.min(Math.max(published, toCelsius(lowest)), toCelsius(highest));
}

const insideByVolume =
  (glycol: Glycol): Ours =>
  (row, published) =>
    nearest(freezingRangeByVolume(glycol, volumeFraction(number(row, 'volume fraction'))), published);

const insideHalf: Ours = (_, published) =>
  nearest(freezingRangeByVolume('ethylene', volumeFraction(0.5)), published);
const insideUndiluted: Ours = (_, published) => nearest(freezingRange(byMass('ethylene', 1)), published);

const ethylene = freezesByMass('ethylene');
const propylene = freezesByMass('propylene');

export const FREEZING: OursByTable = {
  'eg-freezing-by-mass': {
    'Melinder polynomial': ethylene,
    'Melinder table': ethylene,
    CRC: ethylene,
    ASHRAE: ethylene,
  },
  'eg-freezing-crc': { '°C': ethylene },
  'eg-freezing-by-volume-ashrae': { '°C': insideByVolume('ethylene') },
  'eg-freezing-50-volume': { '°C': insideHalf },
  'eg-freezing-by-volume-handbook': { '°C': insideByVolume('ethylene') },
  'eg-pure-freezing': { '°C': insideUndiluted },
  'pg-freezing-by-mass': { 'Melinder polynomial': propylene, 'Melinder table': propylene, ASHRAE: propylene },
  'pg-freezing-by-volume-ashrae': { '°C': insideByVolume('propylene') },
};
