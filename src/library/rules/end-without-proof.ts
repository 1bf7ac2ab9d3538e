import type { ShelfRule } from '../rule.ts';
import { walkCauses } from '../walk-causes.ts';

export const endWithoutProof: ShelfRule = {
  id: 'end-without-proof',
  level: 'error',
  on: 'shelf',
  check: ({ records }) =>
    [...walkCauses(records)].flatMap(([id, from]) => {
      const cause = records.cause.get(id);
      if (!cause || cause.data.confirm) return [];
      return [
        {
          at: { file: cause.file, path: ['confirm'] },
          found: `A walk can end at "${id}" (${from}), and nothing here proves it.`,
          expected:
            'Before a part is bought a cause is proven: by an outcome of a test, or by what shows after the repair.',
          byHand: 'add "confirm: { test: …, outcome: … }" or "confirm: { recheck: …, minutes: … }"',
        },
      ];
    }),
};
