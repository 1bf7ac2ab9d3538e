import type { ShelfRule } from '../rule.ts';

/** Steps and ends are named in one place, an answer's target: the two share their names. */
export const stepAndEndAlike: ShelfRule = {
  id: 'step-and-end-alike',
  level: 'error',
  on: 'shelf',
  check: ({ records }) =>
    [...records.tree.values()].flatMap(({ file, data }) =>
      Object.keys(data.ends)
        .filter((id) => Object.hasOwn(data.steps, id))
        .map((id) => ({
          at: { file, path: ['ends', id], on: 'key' },
          found: `"${id}" is the name of a step and of an end.`,
          expected: 'An answer that leads there could mean either.',
          byHand: 'rename the end and the answers that lead to it',
        })),
    ),
};
