import { describeTreeFault } from '../../diagnosis/tree.ts';
import { judgedTrees } from '../judge.ts';
import type { ShelfRule } from '../rule.ts';

/** Unfollowed, a tree would pass as sound. Its other faults are told step by step, by the rules about steps. */
export const tooManyWays: ShelfRule = {
  id: 'too-many-ways',
  level: 'error',
  on: 'shelf',
  check: (shelf) =>
    judgedTrees(shelf).flatMap(({ tree, layouts }) => {
      const [fault] = layouts.flatMap(({ faults }) => faults).filter(({ kind }) => kind === 'too-many-ways');
      if (!fault) return [];
      return [
        {
          at: { file: tree.file, path: ['start'], on: 'key' as const },
          found: describeTreeFault(fault),
          expected: 'Each way is priced by itself, so a tree is no more than a person would draw.',
          byHand: 'let fewer steps lead to the same later step, or end the ways sooner',
        },
      ];
    }),
};
