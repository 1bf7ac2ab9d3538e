import type { FileRule } from '../rule.ts';
import { DEEPEST, LARGEST_FILE, MOST_ENTRIES } from '../size-limits.ts';

/** A file is measured before YAML sees it: a few megabytes of brackets would take all the memory there is. */
export const tooLarge: FileRule = {
  id: 'too-large',
  level: 'error',
  on: 'file',
  ends: true,
  check: ({ file, text, unread, role }) => {
    const fault = (found: string) => [
      {
        at: { file, start: 0, end: 0 },
        found,
        expected: 'One file holds one record, a few kilobytes of text.',
        byHand: 'divide it into records, or take out what is not the record',
      },
    ];
    if (unread === 'too-large' || text.length > LARGEST_FILE)
      return fault(`The file is larger than ${LARGEST_FILE / 1024} kB.`);
    if (role.is === 'guide') return [];
    if (entriesOf(text) > MOST_ENTRIES)
      return fault(`The file has more than ${MOST_ENTRIES} lines and entries.`);
    if (deepestOf(text) > DEEPEST)
      return fault(`More than ${DEEPEST} brackets stand open inside one another.`);
    return [];
  },
};

function entriesOf(text: string): number {
  let count = 0;
  for (const sign of text) if (sign === '\n' || sign === ',') count += 1;
  return count;
}

/** Brackets in texts count too: they come in pairs, and nobody writes 64 of them inside one another. */
function deepestOf(text: string): number {
  let depth = 0;
  let deepest = 0;
  for (const sign of text) {
    if (sign === '[' || sign === '{') {
      depth += 1;
      deepest = Math.max(deepest, depth);
    } else if ((sign === ']' || sign === '}') && depth > 0) depth -= 1;
  }
  return deepest;
}
