import type { RecordRule } from '../rule.ts';
import { ruledFaults } from '../ruled-faults.ts';

export const unreadableQuantity: RecordRule = {
  id: 'unreadable-quantity',
  level: 'error',
  on: 'record',
  check: (draft) => ruledFaults(draft, 'unreadable-quantity', 'write a number with its unit'),
};
