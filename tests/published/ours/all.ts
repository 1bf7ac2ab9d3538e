import type { OursByTable } from '../compare.ts';
import { BOILING } from './boiling.ts';
import { CIRCUITS } from './circuits.ts';
import { DRIVES } from './drives.ts';
import { FASTENERS } from './fasteners.ts';
import { FILLING } from './filling.ts';
import { FREEZING } from './freezing.ts';
import { HEAT } from './heat.ts';
import { PROPERTIES } from './properties.ts';
import { SENSORS } from './sensors.ts';
import { WATER } from './water.ts';

/** Our figures for every table of data/. */
export const OURS: OursByTable = {
  ...WATER,
  ...FREEZING,
  ...PROPERTIES,
  ...BOILING,
  ...FILLING,
  ...HEAT,
  ...SENSORS,
  ...CIRCUITS,
  ...FASTENERS,
  ...DRIVES,
};
