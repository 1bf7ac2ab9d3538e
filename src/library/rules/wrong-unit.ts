import type { RecordRule } from '../rule.ts';
import { ruledFaults } from '../ruled-faults.ts';

export const wrongUnit: RecordRule = {
  id: 'wrong-unit',
  level: 'error',
  on: 'record',
  check: (draft) => ruledFaults(draft, 'wrong-unit', 'write the quantity with a unit of that kind'),
};
