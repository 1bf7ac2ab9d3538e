import { KIND_NAMES, KINDS, type Kind, SOMETHING_ELSE } from '../../model/kinds.ts';
import { ID_FORM } from '../../model/scalars.ts';
import type { DraftShelf } from '../draft.ts';
import { nearestOf } from '../nearest.ts';
import type { ShelfRule } from '../rule.ts';

export const unknownReference: ShelfRule = {
  id: 'unknown-reference',
  level: 'error',
  on: 'shelf',
  check: (shelf) =>
    shelf.drafts.flatMap(({ kind, file, references }) =>
      references.flatMap(({ to, id, path, on }) => {
        if (shelf.ids[to].has(id) || shelf.moved.some((each) => each.kind === to && each.id === id))
          return [];
        // What is no id at all is another rule's.
        if (!ID_FORM.test(id)) return [];
        if (id === SOMETHING_ELSE && kind === 'tree' && path[0] === 'ends') return [];
        const { one, folder } = KINDS[to];
        const other = kindWith(shelf, id, to);
        const nearest = nearestOf(id, [...shelf.ids[to]]);
        return [
          {
            at: { file, path, on },
            found: `No ${one} has the id "${id}"${other ? `; it is the id of a ${KINDS[other].one}` : ''}.`,
            ...(nearest && { expected: `Nearest: "${nearest.word}".` }),
            byHand: `use the name of a file in content/${folder}/`,
            ...(nearest?.sure && !other && { replaceBy: nearest.word }),
          },
        ];
      }),
    ),
};

/** Another kind that has a record of this id. */
function kindWith(shelf: DraftShelf, id: string, not: Kind): Kind | undefined {
  return KIND_NAMES.find((kind) => kind !== not && shelf.ids[kind].has(id));
}
