import { KINDS } from '../../model/kinds.ts';
import type { ShelfRule } from '../rule.ts';

export const movedReference: ShelfRule = {
  id: 'moved-reference',
  level: 'error',
  on: 'shelf',
  check: (shelf) => {
    const targets = new Map(shelf.moved.map(({ kind, id, to }) => [`${kind}/${id}`, to]));
    return shelf.drafts.flatMap(({ file, references }) =>
      references.flatMap(({ to: kind, id, path, on }) => {
        const target = targets.get(`${kind}/${id}`);
        if (target === undefined) return [];
        return [
          {
            at: { file, path, on },
            found: `The ${KINDS[kind].one} "${id}" has moved.`,
            expected: `Its id is now "${target}".`,
            byHand: 'use the new id',
            replaceBy: target,
          },
        ];
      }),
    );
  },
};
