import type { Glycol } from '../../../src/physics/glycol.ts';
import { mixtureDensity, mixtureSpecificHeat } from '../../../src/physics/mixture-properties.ts';
import { refractiveIndex } from '../../../src/physics/refractive-index.ts';
import { toMassFraction, toVolumeFraction } from '../../../src/physics/strength.ts';
import { fromCelsius, massFraction, volumeFraction } from '../../../src/physics/units.ts';
import type { Ours, OursByTable } from '../compare.ts';
import { number } from '../tables.ts';
import { byMass } from './mixtures.ts';

const TEMPERATURES = [-20, -10, 0, 20, 40, 60, 80, 90, 100];

/** One column per temperature. */
function atEach(glycol: Glycol, property: typeof mixtureDensity): Readonly<Record<string, Ours>> {
  return Object.fromEntries(
    TEMPERATURES.map((celsius): [string, Ours] => [
      String(celsius),
      (row) => property(byMass(glycol, number(row, 'mass fraction')), fromCelsius(celsius)),
    ]),
  );
}

const massFrom =
  (glycol: Glycol): Ours =>
  (row) =>
    toMassFraction(glycol, volumeFraction(number(row, 'volume fraction')));

const volumeFrom =
  (glycol: Glycol): Ours =>
  (row) =>
    toVolumeFraction(glycol, massFraction(number(row, 'mass fraction')));

const indexOf =
  (glycol: Glycol): Ours =>
  (row) =>
    refractiveIndex(byMass(glycol, number(row, 'mass fraction')));

export const PROPERTIES: OursByTable = {
  'eg-density-by-mass': atEach('ethylene', mixtureDensity),
  'eg-density-ashrae': atEach('ethylene', mixtureDensity),
  'eg-specific-heat-by-mass': atEach('ethylene', mixtureSpecificHeat),
  'eg-specific-heat-ashrae': atEach('ethylene', mixtureSpecificHeat),
  'pg-density-by-mass': atEach('propylene', mixtureDensity),
  'pg-density-ashrae': atEach('propylene', mixtureDensity),
  'pg-specific-heat-by-mass': atEach('propylene', mixtureSpecificHeat),
  'pg-specific-heat-ashrae': atEach('propylene', mixtureSpecificHeat),
  'eg-density-crc': {
    density: (row) => mixtureDensity(byMass('ethylene', number(row, 'mass fraction')), fromCelsius(20)),
  },
  'volume-to-mass': {
    'EG before mixing': massFrom('ethylene'),
    'EG ASHRAE': massFrom('ethylene'),
    'PG before mixing': massFrom('propylene'),
    'PG ASHRAE': massFrom('propylene'),
  },
  'mass-to-volume': { EG: volumeFrom('ethylene'), PG: volumeFrom('propylene') },
  'eg-refractive-index': { n: indexOf('ethylene') },
  'pg-refractive-index': { n: indexOf('propylene') },
};
