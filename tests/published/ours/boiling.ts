import { boilingPoint, boilingPointUnderCap, mixtureVapourPressure } from '../../../src/physics/boiling.ts';
import type { Glycol, Mixture } from '../../../src/physics/glycol.ts';
import { glycolVapourPressure } from '../../../src/physics/glycol-vapour-pressure.ts';
import { absolutePascal, fromCelsius, gaugePascal, metre, toCelsius } from '../../../src/physics/units.ts';
import type { Ours, OursByTable } from '../compare.ts';
import { number, type Row, text } from '../tables.ts';
import { byMass, byVolume, half } from './mixtures.ts';

const SEA_LEVEL = metre(0);
const WATER = byMass('ethylene', 0);

function boils(mixture: Mixture, kilopascal: number): number {
  return toCelsius(boilingPoint(mixture, absolutePascal(kilopascal * 1000)));
}

const boilsByMass =
  (glycol: Glycol, kilopascal: number): Ours =>
  (row) =>
    boils(byMass(glycol, number(row, 'mass fraction')), kilopascal);

const underCap =
  (mixture: Mixture): Ours =>
  (row) =>
    toCelsius(boilingPointUnderCap(mixture, gaugePascal(number(row, 'cap bar') * 1e5), SEA_LEVEL));

const atAltitude =
  (mixture: Mixture, bar: number): Ours =>
  (row) =>
    toCelsius(boilingPointUnderCap(mixture, gaugePascal(bar * 1e5), metre(number(row, 'm'))));

const byVolumeAt = (kilopascal: number): Ours => {
  return (row) => boils(byVolume('ethylene', number(row, 'volume fraction')), kilopascal);
};

const pureVapour =
  (glycol: Glycol): Ours =>
  (row) =>
    glycolVapourPressure(glycol, fromCelsius(number(row, '°C'))) / 1000;

const atMass = (fraction: number): Ours => {
  return (row) => boils(byMass('ethylene', fraction), number(row, 'kPa absolute'));
};

const pureBoils = (row: Row): number =>
  boils(byMass(text(row, 'glycol') === 'ethylene' ? 'ethylene' : 'propylene', 1), 101.325);

export const BOILING: OursByTable = {
  'eg-boiling-measured': { '°C': boilsByMass('ethylene', 101.3) },
  'eg-boiling-model': { '50 %': atMass(0.5), '70 %': atMass(0.7) },
  'eg-boiling-ashrae': { '°C': boilsByMass('ethylene', 100.7) },
  'pg-boiling-ashrae': { '°C': boilsByMass('propylene', 100.7) },
  'pure-glycol-boiling': { '°C': pureBoils },
  'boiling-under-cap': {
    water: underCap(WATER),
    EG: underCap(half('ethylene')),
    PG: underCap(half('propylene')),
  },
  'boiling-at-altitude': {
    'water open': atAltitude(WATER, 0),
    'EG open': atAltitude(half('ethylene'), 0),
    'EG 1.0 bar': atAltitude(half('ethylene'), 1.0),
    'EG 1.4 bar': atAltitude(half('ethylene'), 1.4),
  },
  'eg-boiling-by-volume': {
    '101.325': byVolumeAt(101.325),
    '201.325': byVolumeAt(201.325),
    '241.325': byVolumeAt(241.325),
    '301.325': byVolumeAt(301.325),
  },
  'coolant-vapour-pressure': {
    kPa: (row) => mixtureVapourPressure(half('ethylene'), fromCelsius(number(row, '°C'))) / 1000,
  },
  'eg-vapour-pressure': {
    Perry: pureVapour('ethylene'),
    ChemSep: pureVapour('ethylene'),
    producer: pureVapour('ethylene'),
  },
  'pg-vapour-pressure': { Perry: pureVapour('propylene'), Eisenbach: pureVapour('propylene') },
};
