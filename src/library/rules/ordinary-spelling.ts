import type { RecordRule } from '../rule.ts';

/** A spelling that is read as what it means; the shelf itself keeps one spelling, so that it can be searched. */
export const ordinarySpelling: RecordRule = {
  id: 'ordinary-spelling',
  level: 'warning',
  on: 'record',
  check: ({ file, respelled }) =>
    respelled.map(({ path, written, read, isCut }) => ({
      at: { file, path },
      found: `"${written}" is read as "${read}".`,
      expected: `The shelf writes "${read}".`,
      byHand: isCut
        ? 'write it that way; nothing goes wrong if it stays'
        : 'leave it as it is: nothing goes wrong',
      ...(!isCut && { replaceBy: read }),
    })),
};
