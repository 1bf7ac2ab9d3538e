import { judgedTrees } from '../judge.ts';
import type { ShelfRule } from '../rule.ts';
import { soundnessFaults } from '../soundness-faults.ts';

/** An end whose named causes together are too few of the cars that come there. */
export const endNamesTooLittle: ShelfRule = {
  id: 'end-names-too-little',
  level: 'error',
  on: 'shelf',
  check: (shelf) =>
    soundnessFaults(
      judgedTrees(shelf),
      'end-names-too-little',
      ({ step }) => ['ends', step],
      'name the missing causes, or ask one more test before this end',
    ),
};
