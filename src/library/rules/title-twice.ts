import { KINDS } from '../../model/kinds.ts';
import { entriesOf } from '../draft.ts';
import type { ShelfRule } from '../rule.ts';

/** Two results of the search that read alike cannot be told apart. */
export const titleTwice: ShelfRule = {
  id: 'title-twice',
  level: 'error',
  on: 'shelf',
  check: ({ records }) => {
    const first = new Map<string, string>();
    return entriesOf(records).flatMap(({ kind, file, data }) => {
      const key = `${kind}/${data.title.toLowerCase()}`;
      const other = first.get(key);
      first.set(key, other ?? file);
      if (other === undefined) return [];
      return [
        {
          at: { file, path: ['title'] },
          found: `${other} is another ${KINDS[kind].one} with this title.`,
          expected: 'A title says what sets this one apart.',
          byHand: 'change one of the two titles',
        },
      ];
    });
  },
};
