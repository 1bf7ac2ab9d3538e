import type { RecordRule } from '../rule.ts';
import { ruledFaults } from '../ruled-faults.ts';

export const badDate: RecordRule = {
  id: 'bad-date',
  level: 'error',
  on: 'record',
  check: (draft) => ruledFaults(draft, 'bad-date', 'write a day of the calendar'),
};
