import { type LayoutFeature, layoutAllows } from '../../model/layout.ts';
import type { Fault } from '../finding.ts';
import { knownLayoutWords, layoutsToldApart } from '../layouts-told-apart.ts';
import type { ShelfRule } from '../rule.ts';
import { branchFeatures, placesReached, treesOf } from '../tree-ways.ts';

/** A tree that asks for a test on a vehicle which cannot have it done. */
export const testOnWrongLayout: ShelfRule = {
  id: 'test-on-wrong-layout',
  level: 'error',
  on: 'shelf',
  check: ({ records }) =>
    [...records.tree.values()].flatMap((tree) => {
      const tests = treesOf(records, tree.id)
        .flatMap(({ data }) => Object.values(data.steps))
        .flatMap(({ test }) => (test === undefined ? [] : [records.test.get(test)?.data.layout]));
      const faults = new Map<string, Fault>();
      for (const known of layoutsToldApart(branchFeatures(records, tree.id), tests))
        for (const { tree: at, id } of placesReached(records, tree.id, known)) {
          const test = at.data.steps[id]?.test;
          const layout = test === undefined ? undefined : records.test.get(test)?.data.layout;
          // Steps of a tree that this one goes on to are looked at with that tree; here only what leads there wrongly.
          if (at.id !== tree.id || !layout || layoutAllows(layout, known) || faults.has(id)) continue;
          const features = Object.keys(layout) as LayoutFeature[];
          const has = Object.fromEntries(features.map((feature) => [feature, known[feature] ?? '']));
          faults.set(id, {
            at: { file: at.file, path: ['steps', id, 'test'] },
            found: `On a vehicle with ${knownLayoutWords(has)} this step asks for "${test}", which cannot be done there.`,
            expected: `The test is for ${features.map((feature) => `${feature}: ${layout[feature]?.join(' or ')}`).join(', ')}.`,
            byHand: 'branch on the layout before this step, or widen the layout of the test',
          });
        }
      return [...faults.values()];
    }),
};
