import { pumpSpeed } from '../../../src/physics/belt-drive.ts';
import { metre } from '../../../src/physics/units.ts';
import type { OursByTable } from '../compare.ts';
import { number } from '../tables.ts';

export const DRIVES: OursByTable = {
  'belt-speed': {
    'driven 1/min': (row) =>
      pumpSpeed(
        {
          crankPulley: metre(number(row, 'driver mm') / 1000),
          pumpPulley: metre(number(row, 'driven mm') / 1000),
        },
        number(row, '1/min'),
        number(row, 'slip'),
      ),
  },
};
