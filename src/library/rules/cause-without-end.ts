import { type KnownLayout, type LayoutFeature, layoutAllows } from '../../model/layout.ts';
import { knownLayoutWords, layoutsToldApart } from '../layouts-told-apart.ts';
import type { ShelfRule } from '../rule.ts';
import { branchFeatures, causesReached, treesOf } from '../tree-ways.ts';

/** A candidate cause must be found by the walk on every vehicle that can have it. */
export const causeWithoutEnd: ShelfRule = {
  id: 'cause-without-end',
  level: 'error',
  on: 'shelf',
  check: ({ records, faulty }) =>
    [...records.symptom.values()].flatMap(({ file, data }) => {
      const trees = treesOf(records, data.tree);
      // Where a way is broken, what it does not come to follows from that.
      if (trees.length === 0 || trees.some((tree) => faulty.has(tree.file))) return [];
      const branches = branchFeatures(records, data.tree);
      const conditions = Object.keys(data.causes).map((id) => records.cause.get(id)?.data.layout);
      const reached = layoutsToldApart(branches, conditions).map((known) => ({
        known,
        causes: causesReached(records, data.tree, known),
      }));
      return Object.keys(data.causes).flatMap((id) => {
        const cause = records.cause.get(id);
        if (!cause) return [];
        const possible = reached.filter(({ known }) => layoutAllows(cause.data.layout, known));
        const without = possible.filter(({ causes }) => !causes.has(id));
        const [first] = without;
        if (!first) return [];
        const onSome =
          without.length < possible.length
            ? ` on a vehicle with ${knownLayoutWords(pick(first.known, branches))}`
            : '';
        return [
          {
            at: { file, path: ['causes', id], on: 'key' },
            found: `No way through the tree "${data.tree}" comes to "${id}"${onSome}.`,
            expected: 'Every candidate cause is named at an end or proven at a step.',
            byHand: 'name it at an end of the tree, or take it off this list',
          },
        ];
      });
    }),
};

/** The part of a layout that the tree asks about. */
function pick(known: KnownLayout, features: readonly LayoutFeature[]): KnownLayout {
  return Object.fromEntries(features.map((feature) => [feature, known[feature] ?? '']));
}
