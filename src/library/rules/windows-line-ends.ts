import type { FileRule } from '../rule.ts';

/** Mixed line ends make every change look like a change of the whole file. */
export const windowsLineEnds: FileRule = {
  id: 'windows-line-ends',
  level: 'error',
  on: 'file',
  check: ({ file, text }) => {
    const ends = [...text.matchAll(/\r\n?/g)];
    const [first] = ends;
    if (!first) return [];
    return [
      {
        at: { file, start: first.index, end: first.index },
        found:
          ends.length === 1
            ? 'One line ends as on Windows.'
            : `${ends.length} lines end as on Windows, this one first.`,
        expected: 'A line ends with a line feed alone.',
        byHand: 'choose "LF" as line end in the editor',
        edits: ends.map((end) => ({ start: end.index, end: end.index + end[0].length, text: '\n' })),
      },
    ];
  },
};
