import type { FileRule } from '../rule.ts';

export const byteOrderMark: FileRule = {
  id: 'byte-order-mark',
  level: 'error',
  on: 'file',
  check: ({ file, text }) =>
    text.startsWith('\uFEFF')
      ? [
          {
            at: { file, start: 0, end: 0 },
            found: 'The file begins with a byte-order mark that nobody sees.',
            expected: 'It begins with its first letter.',
            byHand: 'save the file as UTF-8 without a byte-order mark',
            edits: [{ start: 0, end: 1, text: '' }],
          },
        ]
      : [],
};
