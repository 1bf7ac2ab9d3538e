import type { SoundnessFinding } from '../diagnosis/soundness.ts';
import { describeFinding } from '../diagnosis/soundness-words.ts';
import type { Fault, Path } from './finding.ts';
import type { JudgedTree } from './judge.ts';
import { knownLayoutWords } from './layouts-told-apart.ts';

type SoundnessRule = SoundnessFinding['rule'];
type FindingOf<R extends SoundnessRule> = Extract<SoundnessFinding, { rule: R }>;

/**
 * Findings of one rule of the engine as faults: one for each place, with the layout on which it shows first.
 * @param placeOf way to the part of the tree's record that is meant; undefined for a step of another tree, which is
 *   judged with its own complaint
 * @param everywhere only what shows on every layout that comes to the place
 */
export function soundnessFaults<R extends SoundnessRule>(
  trees: readonly JudgedTree[],
  rule: R,
  placeOf: (finding: FindingOf<R>) => Path | undefined,
  byHand: string,
  everywhere?: (finding: FindingOf<R>) => string,
): Fault[] {
  return trees.flatMap(({ tree, layouts }) => {
    const byPlace = new Map<string, { path: Path; finding: FindingOf<R>; on: number[] }>();
    for (const [at, { findings }] of layouts.entries())
      for (const finding of findings) {
        if (!isOf(finding, rule)) continue;
        const path = placeOf(finding);
        if (!path || !isIn(tree.data, path)) continue;
        const key = path.join('\n');
        const found = byPlace.get(key) ?? { path, finding, on: [] };
        found.on.push(at);
        byPlace.set(key, found);
      }
    return [...byPlace.values()].flatMap(({ path, finding, on }): Fault[] => {
      const step = everywhere?.(finding);
      const comesThere = layouts.filter(({ reached }) => step === undefined || reached.has(step)).length;
      if (everywhere && on.length < comesThere) return [];
      const first = layouts[on[0] ?? 0];
      const where =
        first && on.length < layouts.length
          ? ` So it is on a vehicle with ${knownLayoutWords(first.known)}.`
          : '';
      return [{ at: { file: tree.file, path, on: 'key' }, found: describeFinding(finding) + where, byHand }];
    });
  });
}

function isOf<R extends SoundnessRule>(finding: SoundnessFinding, rule: R): finding is FindingOf<R> {
  return finding.rule === rule;
}

/** Whether the record has this part: a joined step's name has the other tree in it. */
function isIn(data: unknown, path: Path): boolean {
  let value = data;
  for (const part of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, part)) return false;
    value = (value as Record<string | number, unknown>)[part];
  }
  return true;
}
