import type { TextRule } from '../rule.ts';

export const duplicateKey: TextRule = {
  id: 'duplicate-key',
  level: 'error',
  on: 'text',
  ends: true,
  check: ({ source, errors }) =>
    errors.flatMap((error) => {
      if (error.code !== 'DUPLICATE_KEY') return [];
      const [start] = error.pos;
      const name = /^[^\s:]*/.exec(source.text.slice(start))?.[0] ?? '';
      return [
        {
          at: { file: source.file, start, end: start + Math.max(name.length, 1) },
          found: `"${name}" stands here a second time.`,
          expected: 'A field is given once.',
          byHand: 'keep one of the two',
        },
      ];
    }),
};
