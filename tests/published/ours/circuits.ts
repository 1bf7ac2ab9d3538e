import { cableResistance, copperFactor, voltageDrop, wireGaugeArea } from '../../../src/physics/cable.ts';
import { BLADE_FUSE_RESISTANCE, currentFromFuseDrop } from '../../../src/physics/fuse.ts';
import { joint } from '../../../src/physics/joint.ts';
import { ampere, fromCelsius, metre, ohm, squareMetre, volt } from '../../../src/physics/units.ts';
import type { OursByTable } from '../compare.ts';
import { number, type Row } from '../tables.ts';

const COLD = fromCelsius(20);
const ONE_METRE = metre(1);

const badJoint = (row: Row) => joint(volt(number(row, 'V')), ampere(number(row, 'A')), 'connection');

export const CIRCUITS: OursByTable = {
  'copper-temperature': { 'R/R20': (row) => copperFactor(fromCelsius(number(row, '°C'))) },
  awg: {
    'area mm2': (row) => wireGaugeArea(number(row, 'AWG')) * 1e6,
    'mohm/m': (row) => cableResistance(ONE_METRE, wireGaugeArea(number(row, 'AWG')), COLD) * 1000,
  },
  'iec-60228': {
    'rho/A': (row) => cableResistance(ONE_METRE, squareMetre(number(row, 'mm2') * 1e-6), COLD) * 1000,
  },
  'cable-drop': {
    V: (row) =>
      voltageDrop(ampere(25), cableResistance(metre(3), squareMetre(4e-6), fromCelsius(number(row, '°C')))),
  },
  joint: { W: (row) => badJoint(row).heat, mohm: (row) => badJoint(row).resistance * 1000 },
  'fuse-current': {
    A: (row) =>
      currentFromFuseDrop(
        volt(number(row, 'mV') / 1000),
        BLADE_FUSE_RESISTANCE[String(number(row, 'fuse A'))] ?? ohm(0),
      ),
  },
};
