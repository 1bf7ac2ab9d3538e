import { ID_FORM } from '../../model/scalars.ts';
import type { Fault } from '../finding.ts';
import type { RecordRule } from '../rule.ts';
import { valueAt } from '../schema-tree.ts';

/** Its page would have the address of the list. */
const LIST = 'index';
const LOST = '__proto__';

/** Ids are part of addresses and live for ever: lower-case words joined by hyphens, and nothing else. */
export const idNotKebab: RecordRule = {
  id: 'id-not-kebab',
  level: 'error',
  on: 'record',
  check: ({ kind, id, file, raw, texts, faults }) => {
    const found: Fault[] = [];
    if (kind !== 'shop' && id === LIST)
      found.push({
        at: { file, start: 0, end: 0 },
        found: `"${LIST}" is the address of the list of all records of this kind.`,
        expected: 'A record is called by what it is about.',
        byHand: 'rename the file',
      });
    // A map with this key loses it, and the figure under it, without a word.
    const lost = texts.find(({ path }) => path.includes(LOST));
    if (lost)
      found.push({
        at: { file, path: lost.path.slice(0, lost.path.indexOf(LOST) + 1), on: 'key' },
        found: `"${LOST}" is not an id: what stands under it would be lost.`,
        expected: 'An id is lower-case words joined by hyphens, such as thermostat-stuck-open.',
        byHand: 'write lower-case words joined by hyphens',
      });
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
