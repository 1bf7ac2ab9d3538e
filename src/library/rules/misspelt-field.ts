import type { RecordRule } from '../rule.ts';

/** An unknown field beside a missing one, alike in spelling: one slip, one finding. */
export const misspeltField: RecordRule = {
  id: 'misspelt-field',
  level: 'error',
  on: 'record',
  check: ({ file, faults }) =>
    faults.flatMap((fault) =>
      fault.is === 'misspelt'
        ? [
            {
              at: { file, path: [...fault.path, fault.field], on: 'key' },
              found: `There is no field "${fault.field}" here, and "${fault.meant}" is missing.`,
              expected: `Right is "${fault.meant}".`,
              byHand: 'rename the field',
              replaceBy: fault.meant,
            },
          ]
        : [],
    ),
};
