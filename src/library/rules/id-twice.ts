import { KINDS } from '../../model/kinds.ts';
import type { ShelfRule } from '../rule.ts';

export const idTwice: ShelfRule = {
  id: 'id-twice',
  level: 'error',
  on: 'shelf',
  check: ({ drafts }) => {
    const first = new Map<string, string>();
    return drafts.flatMap(({ kind, id, file }) => {
      if (kind === 'shop' || kind === 'words' || kind === 'learning' || kind === 'counts') return [];
      const key = `${kind}/${id}`;
      const other = first.get(key);
      first.set(key, other ?? file);
      if (other === undefined) return [];
      return [
        {
          at: { file, start: 0, end: 0 },
          found: `The ${KINDS[kind].one} "${id}" is already in ${other}.`,
          expected: 'An id is used once.',
          byHand: 'rename one of the two files, or put both into one',
        },
      ];
    });
  },
};
