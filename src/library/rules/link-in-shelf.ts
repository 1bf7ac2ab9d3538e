import type { FileRule } from '../rule.ts';

/** A link could lead to any file of the machine, whose first line would then stand in a report. */
export const linkInShelf: FileRule = {
  id: 'link-in-shelf',
  level: 'error',
  on: 'file',
  ends: true,
  check: ({ file, unread }) => {
    if (unread !== 'link' && unread !== 'no-file') return [];
    return [
      {
        at: { file, start: 0, end: 0 },
        found:
          unread === 'link'
            ? 'This is a link to somewhere else; nothing behind it is read.'
            : 'This is neither a file nor a folder.',
        expected: 'Every record lies as a file in the folder of its kind.',
        byHand: 'put the file itself here, or delete this',
      },
    ];
  },
};
