import type { RecordRule } from '../rule.ts';
import { ruledFaults } from '../ruled-faults.ts';

export const implausibleQuantity: RecordRule = {
  id: 'implausible-quantity',
  level: 'error',
  on: 'record',
  check: (draft) =>
    ruledFaults(
      draft,
      'implausible-quantity',
      'look at the source again: number, decimal point and unit',
      'What can be meant here is',
    ),
};
