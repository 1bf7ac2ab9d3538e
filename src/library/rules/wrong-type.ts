import type { RecordRule } from '../rule.ts';
import { valueAt } from '../schema-tree.ts';

export const wrongType: RecordRule = {
  id: 'wrong-type',
  level: 'error',
  on: 'record',
  check: ({ file, raw, faults }) =>
    faults.flatMap((fault) => {
      if (fault.is !== 'type') return [];
      const value = valueAt(raw, fault.path);
      const isPlain = Number.isFinite(value) || typeof value === 'boolean';
      const quoted = isPlain && fault.wanted.startsWith('a text');
      return [
        {
          at: { file, path: fault.path },
          found: `Here stands ${kindOfValue(value)}.`,
          expected: `This place takes ${fault.wanted}.`,
          ...(quoted
            ? { byHand: `put it in quotes: "${String(value)}"`, replaceBy: `"${String(value)}"` }
            : { byHand: 'write it that way' }),
        },
      ];
    }),
};

function kindOfValue(value: unknown): string {
  if (Array.isArray(value)) return 'a list';
  switch (typeof value) {
    case 'number':
      return Number.isFinite(value) ? `the number ${value}` : 'a number without a value';
    case 'boolean':
      return String(value);
    case 'string':
      return 'a text';
    default:
      return 'a group of fields';
  }
}
