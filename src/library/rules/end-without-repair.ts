import type { ShelfRule } from '../rule.ts';
import { walkCauses } from '../walk-causes.ts';

export const endWithoutRepair: ShelfRule = {
  id: 'end-without-repair',
  level: 'error',
  on: 'shelf',
  check: ({ records }) =>
    [...walkCauses(records)].flatMap(([id, from]) => {
      const cause = records.cause.get(id);
      if (!cause || cause.data.repair !== undefined) return [];
      return [
        {
          at: { file: cause.file, path: ['repair'] },
          found: `A walk can end at "${id}" (${from}), and no procedure puts it right.`,
          expected: 'Every walk ends at a repair, be it a handing on.',
          byHand: 'add "repair: <name of a file in content/procedures/>"',
        },
      ];
    }),
};
