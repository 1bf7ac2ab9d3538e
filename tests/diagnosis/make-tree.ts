import fc from 'fast-check';
import type { Model } from '../../src/diagnosis/model.ts';
import type { Step, Tree } from '../../src/diagnosis/tree.ts';

/**
 * Random trees for a model: steps in a row, each leading only to later ones, so that ways meet and none goes
 * round. Tests and proofs may come twice on a way.
 */
export function randomTree(model: Model): fc.Arbitrary<Tree> {
  const causes = model.causes.map((cause) => cause.id);
  const end: fc.Arbitrary<Step> = fc.shuffledSubarray(causes).map((some) => ({ kind: 'end', causes: some }));
  const inner = fc.record({
    asks: fc.boolean(),
    test: fc.nat(),
    cause: fc.constantFrom(...causes),
    leaps: fc.array(fc.nat(3), { minLength: 3, maxLength: 3 }),
  });
  return fc
    .tuple(fc.array(inner, { maxLength: 6 }), fc.array(end, { minLength: 4, maxLength: 4 }))
    .map(([drawn, ends]) => {
      const steps: Record<string, Step> = {};
      const all = drawn.length + ends.length;
      const later = (at: number, leap: number): string => `s${Math.min(at + 1 + leap, all - 1)}`;
      drawn.forEach(({ asks, test, cause, leaps }, at) => {
        const asked = model.tests[test % Math.max(model.tests.length, 1)];
        steps[`s${at}`] =
          asks && asked
            ? {
                kind: 'test',
                test: asked.id,
                on: Object.fromEntries(
                  asked.outcomes.map((outcome, number) => [outcome, later(at, leaps[number] ?? 0)]),
                ),
              }
            : { kind: 'prove', cause, otherwise: later(at, leaps[0] ?? 0) };
      });
      ends.forEach((step, at) => {
        steps[`s${drawn.length + at}`] = step;
      });
      return { start: 's0', steps };
    });
}
