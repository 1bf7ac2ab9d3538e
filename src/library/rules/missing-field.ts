import type { Path } from '../finding.ts';
import type { RecordRule } from '../rule.ts';
import { metaOf, schemaAt } from '../schema-tree.ts';

export const missingField: RecordRule = {
  id: 'missing-field',
  level: 'error',
  on: 'record',
  check: ({ file, schema: whole, raw, faults }) => {
    const purpose = (path: Path): string | undefined => {
      const schema = schemaAt(whole, path, raw);
      return schema && metaOf(schema).description;
    };
    return faults.flatMap((fault) => {
      if (fault.is === 'missing') {
        const path = [...fault.path, fault.field];
        const says = purpose(path);
        return [
          {
            at: { file, path, on: 'key' },
            found: `The field "${fault.field}" is missing.`,
            isMissing: true,
            ...(says !== undefined && { expected: `It says: ${says}` }),
            byHand: `add a line "${fault.field}: …"`,
          },
        ];
      }
      if (fault.is !== 'empty') return [];
      const says = purpose(fault.path);
      return [
        {
          at: { file, path: fault.path, on: 'key' },
          found: `Nothing is written behind "${fault.path.at(-1)}".`,
          ...(says !== undefined && { expected: `It says: ${says}` }),
          byHand: 'fill it in, or take the line out if the field may be left out',
        },
      ];
    });
  },
};
