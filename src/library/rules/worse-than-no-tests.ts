import { judgedTrees } from '../judge.ts';
import type { ShelfRule } from '../rule.ts';
import { soundnessFaults } from '../soundness-faults.ts';

/** A tree that costs more than proving the causes by chance per minute, without a single test. */
export const worseThanNoTests: ShelfRule = {
  id: 'worse-than-no-tests',
  level: 'error',
  on: 'shelf',
  check: (shelf) =>
    soundnessFaults(
      judgedTrees(shelf),
      'worse-than-no-tests',
      () => ['start'],
      'change the order of the steps',
    ),
};
