import { listed, nearestOf } from '../nearest.ts';
import type { RecordRule } from '../rule.ts';
import { valueAt } from '../schema-tree.ts';

export const unknownField: RecordRule = {
  id: 'unknown-field',
  level: 'error',
  on: 'record',
  check: ({ file, raw, faults }) =>
    faults.flatMap((fault) => {
      if (fault.is !== 'unknown') return [];
      const present = Object.keys((valueAt(raw, fault.path) ?? {}) as object);
      const free = fault.known.filter((name) => !present.includes(name));
      const nearest = nearestOf(fault.field, free);
      return [
        {
          at: { file, path: [...fault.path, fault.field], on: 'key' },
          found: `There is no field "${fault.field}" here.`,
          expected: nearest
            ? `Nearest: "${nearest.word}".`
            : free.length > 0
              ? `What is left to fill in: ${listed(free, 20)}.`
              : `All it has is ${listed(fault.known, 20)}.`,
          byHand: 'rename the field, or take it out',
          ...(nearest?.sure && { replaceBy: nearest.word }),
        },
      ];
    }),
};
