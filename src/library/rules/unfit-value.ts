import type { RecordRule } from '../rule.ts';

/** A value that the schema refuses for a reason of its own: a length, a range, a choice of fields. */
export const unfitValue: RecordRule = {
  id: 'unfit-value',
  level: 'error',
  on: 'record',
  check: ({ file, faults }) =>
    faults.flatMap((fault) =>
      fault.is === 'unfit'
        ? [{ at: { file, path: fault.path }, found: fault.found, byHand: 'change it so that it fits' }]
        : [],
    ),
};
