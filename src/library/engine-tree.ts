/** An authored tree for the engine: one layout, one table of steps. */
import type { Step, Tree } from '../diagnosis/tree.ts';
import { SOMETHING_ELSE } from '../model/kinds.ts';
import type { KnownLayout } from '../model/layout.ts';
import type { Records } from './shelf.ts';
import { treesOf } from './tree-ways.ts';

/** Stands between a tree's id and a step's in the ids of joined steps; no id has it. */
const JOINT = '/';

/**
 * Resolves every layout branch, joins the trees it goes on to (their steps are called `<tree>/<step>`), and leaves
 * out what the layout cannot have: proofs of such causes are passed over, ends no longer name them.
 * @param causes ids of the model's causes
 * @throws when a branch asks for a feature that is not known
 */
export function engineTree(
  records: Records,
  treeId: string,
  known: KnownLayout,
  causes: ReadonlySet<string>,
): Tree {
  const steps: Record<string, Step> = {};
  const named = (tree: string, id: string): string => (tree === treeId ? id : `${tree}${JOINT}${id}`);

  /** Name of the first step at or behind this one that the engine has something to do at. */
  const resolve = (tree: string, id: string): string => {
    const data = records.tree.get(tree)?.data;
    const step = data?.steps[id];
    if (!data || !step) return named(tree, id);
    if (step.tree !== undefined) return resolve(step.tree, records.tree.get(step.tree)?.data.start ?? '');
    if (step.layout !== undefined) {
      const value = known[step.layout];
      if (value === undefined)
        throw new Error(`The tree "${tree}" asks for "${step.layout}" at step "${id}".`);
      return resolve(tree, step.on?.[value] ?? '');
    }
    if (step.prove !== undefined && !causes.has(step.prove)) return resolve(tree, step.otherwise ?? '');
    return named(tree, id);
  };

  for (const [tree, id] of placesFrom(records, treeId)) {
    const data = records.tree.get(tree)?.data;
    const end = data?.ends[id];
    const step = data?.steps[id];
    if (end)
      steps[named(tree, id)] = {
        kind: 'end',
        causes: provenAt(end.causes).filter((cause) => causes.has(cause)),
      };
    else if (step?.test !== undefined) {
      const on = Object.entries(step.on ?? {}).map(([outcome, to]) => [outcome, resolve(tree, to)] as const);
      steps[named(tree, id)] = { kind: 'test', test: step.test, on: Object.fromEntries(on) };
    } else if (step?.prove !== undefined && causes.has(step.prove))
      steps[named(tree, id)] = {
        kind: 'prove',
        cause: step.prove,
        otherwise: resolve(tree, step.otherwise ?? ''),
      };
  }
  const start = records.tree.get(treeId)?.data.start ?? '';
  return { start: resolve(treeId, start), steps };
}

/** The causes an end has proven: where it says something else, the car is passed on. */
function provenAt(causes: readonly string[]): readonly string[] {
  const passOn = causes.indexOf(SOMETHING_ELSE);
  return passOn < 0 ? causes : causes.slice(0, passOn);
}

/** Every step and end of a tree and those it goes on to. */
function placesFrom(records: Records, treeId: string): [tree: string, id: string][] {
  return treesOf(records, treeId).flatMap(({ id, data }) =>
    [...Object.keys(data.steps), ...Object.keys(data.ends)].map((place): [string, string] => [id, place]),
  );
}
