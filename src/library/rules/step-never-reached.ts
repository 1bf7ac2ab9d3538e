import type { Fault } from '../finding.ts';
import type { ShelfRule } from '../rule.ts';
import { reachedFrom } from '../tree-ways.ts';

export const stepNeverReached: ShelfRule = {
  id: 'step-never-reached',
  level: 'error',
  on: 'shelf',
  check: ({ records, faulty }) =>
    [...records.tree.values()].flatMap(({ file, data }) => {
      // Behind a broken way nothing is reached: the way is reported, not what it should have led to.
      if (faulty.has(file)) return [];
      const reached = reachedFrom(data);
      const lost = (part: 'steps' | 'ends', what: string): Fault[] =>
        Object.keys(data[part])
          .filter((id) => !reached.has(id))
          .map((id) => ({
            at: { file, path: [part, id], on: 'key' },
            found: `No answer leads to the ${what} "${id}".`,
            expected: `Every ${what} is come to from "${data.start}".`,
            byHand: `let an answer lead here, or take the ${what} out`,
          }));
      return [...lost('steps', 'step'), ...lost('ends', 'end')];
    }),
};
