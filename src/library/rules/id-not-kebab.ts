import { ID_FORM } from '../../model/scalars.ts';
import type { Fault } from '../finding.ts';
import type { RecordRule } from '../rule.ts';
import { valueAt } from '../schema-tree.ts';

/** Ids are part of addresses and live for ever: lower-case words joined by hyphens, and nothing else. */
export const idNotKebab: RecordRule = {
  id: 'id-not-kebab',
  level: 'error',
  on: 'record',
  check: ({ kind, id, file, raw, faults }) => {
    const found: Fault[] = [];
    if (kind !== 'shop' && !ID_FORM.test(id))
      found.push({
        at: { file, start: 0, end: 0 },
        found: `The file name "${id}" is not an id.`,
        expected: `Right is "${kebab(id)}".`,
        byHand: 'rename the file',
      });
    for (const fault of faults) {
      if (fault.is !== 'id') continue;
      const written = fault.on === 'key' ? String(fault.path.at(-1)) : String(valueAt(raw, fault.path));
      const right = kebab(written);
      found.push({
        at: { file, path: fault.path, on: fault.on },
        found: `"${written}" is not an id.`,
        expected:
          right === ''
            ? 'An id is lower-case words joined by hyphens, such as thermostat-stuck-open.'
            : `Right is "${right}".`,
        byHand: 'write lower-case words joined by hyphens',
        ...(right !== '' && { replaceBy: right }),
      });
    }
    return found;
  },
};

function kebab(text: string): string {
  return text
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
}
