import { judgedTrees } from '../judge.ts';
import type { ShelfRule } from '../rule.ts';
import { soundnessFaults } from '../soundness-faults.ts';

/** An end whose first cause is not the likeliest of those that come there. */
export const endLeadsWithUnlikelyCause: ShelfRule = {
  id: 'end-leads-with-unlikely-cause',
  level: 'error',
  on: 'shelf',
  check: (shelf) =>
    soundnessFaults(
      judgedTrees(shelf),
      'end-leads-with-unlikely-cause',
      ({ step }) => ['ends', step],
      'change the order of the causes, the tests before this end, or the evidence',
    ),
};
