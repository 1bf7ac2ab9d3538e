import { judgedTrees } from '../judge.ts';
import type { ShelfRule } from '../rule.ts';
import { soundnessFaults } from '../soundness-faults.ts';

/** A test whose answer is known already, or makes no difference, on every vehicle that is asked it. */
export const testChangesNothing: ShelfRule = {
  id: 'test-changes-nothing',
  level: 'error',
  on: 'shelf',
  check: (shelf) =>
    soundnessFaults(
      judgedTrees(shelf),
      'test-changes-nothing',
      ({ step }) => ['steps', step],
      'leave the step out, or let its answers part',
      ({ step }) => step,
    ),
};
