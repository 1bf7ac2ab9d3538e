import { type LayoutFeature, layoutAllows } from '../../model/layout.ts';
import type { Fault } from '../finding.ts';
import { knownLayoutWords, layoutsToldApart } from '../layouts-told-apart.ts';
import type { ShelfRule } from '../rule.ts';

/** A cause that some vehicle can have, where none of its proofs can be done on that vehicle. A recheck comes after a proof, so it does not let the cause off. */
export const proofNotOnLayout: ShelfRule = {
  id: 'proof-not-on-layout',
  level: 'error',
  on: 'shelf',
  check: ({ records }) =>
    [...records.cause.values()].flatMap(({ file, data }): Fault[] => {
      const { confirm, layout } = data;
      if (confirm?.test === undefined) return [];
      const proofs = [confirm.test, ...(confirm.or ?? []).map(({ test }) => test)].map(
        (test) => records.test.get(test)?.data.layout,
      );
      // A proof that any vehicle can have done, or that is not there, leaves nothing to ask.
      if (proofs.some((each) => each === undefined)) return [];
      const without = layoutsToldApart([], [layout, ...proofs]).find(
        (known) => layoutAllows(layout, known) && !proofs.some((each) => layoutAllows(each, known)),
      );
      if (!without) return [];
      const asked = new Set(proofs.flatMap((each) => Object.keys(each ?? {}) as LayoutFeature[]));
      const has = Object.fromEntries([...asked].map((feature) => [feature, without[feature] ?? '']));
      return [
        {
          at: { file, path: ['confirm', 'test'] },
          found: `On a vehicle with ${knownLayoutWords(has)} nothing can prove this cause: "${confirm.test}" cannot be done there.`,
          byHand: 'narrow the layout of the cause, or add a proof under "or" that can be done there',
        },
      ];
    }),
};
