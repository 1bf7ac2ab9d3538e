import type { FileRule } from '../rule.ts';

export const notUtf8: FileRule = {
  id: 'not-utf-8',
  level: 'error',
  on: 'file',
  ends: true,
  check: ({ file, text, utf8 }) => {
    if (utf8) return [];
    const start = Math.max(text.indexOf('\uFFFD'), 0);
    return [
      {
        at: { file, start, end: start + 1 },
        found: 'From here on the file is not UTF-8 text.',
        expected: 'Letters such as é, ° and Ω are only right in UTF-8.',
        byHand: 'save the file as UTF-8 in the editor, and look at this character again',
      },
    ];
  },
};
