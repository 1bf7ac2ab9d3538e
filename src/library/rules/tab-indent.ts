import type { FileRule } from '../rule.ts';

export const tabIndent: FileRule = {
  id: 'tab-indent',
  level: 'error',
  on: 'file',
  ends: true,
  check: ({ file, text, role }) => {
    if (role.is === 'guide' || role.is === 'unexpected') return [];
    const indents = [...text.matchAll(/^[ \t]*\t[ \t]*/gm)];
    const [first] = indents;
    if (!first) return [];
    return [
      {
        at: { file, start: first.index, end: first.index + first[0].length },
        found:
          indents.length === 1
            ? 'This line is indented with a tab.'
            : `${indents.length} lines are indented with tabs, this one first.`,
        expected: 'Two spaces for each step inwards.',
        byHand: 'replace the tabs by spaces',
        edits: indents.map((indent) => ({
          start: indent.index,
          end: indent.index + indent[0].length,
          text: indent[0].replaceAll('\t', '  '),
        })),
      },
    ];
  },
};
