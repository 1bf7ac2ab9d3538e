import type { TextRule } from '../rule.ts';

export const emptyFile: TextRule = {
  id: 'empty-file',
  level: 'error',
  on: 'text',
  ends: true,
  check: ({ source, document, errors }) =>
    document.contents === null && errors.length === 0
      ? [
          {
            at: { file: source.file, start: 0, end: 0 },
            found: 'There is nothing in this file.',
            byHand: 'write the record, or delete the file',
          },
        ]
      : [],
};
