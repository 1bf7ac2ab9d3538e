/** The authored tree as the walk follows it: plain data, written as JSON into the symptom's page. */
import type { WalkStep, WalkTree } from '../../diagnosis/walk.ts';
import type { Tree, TreeStep } from '../../model/tree.ts';

/** The tree of a record, steps and ends in one table. */
export function walkTreeOf(tree: Tree): WalkTree {
  const steps: Record<string, WalkStep> = {};
  for (const [id, step] of Object.entries(tree.steps)) {
    const made = walkStepOf(step);
    if (made) steps[id] = made;
  }
  for (const [id, end] of Object.entries(tree.ends)) steps[id] = { kind: 'end', causes: end.causes };
  return { start: tree.start, steps };
}

function walkStepOf({ test, layout, prove, tree, on = {}, otherwise = '' }: TreeStep): WalkStep | undefined {
  if (test !== undefined) return { kind: 'test', test, on };
  if (layout !== undefined) return { kind: 'layout', feature: layout, on };
  if (prove !== undefined) return { kind: 'prove', cause: prove, otherwise };
  return tree === undefined ? undefined : { kind: 'tree', tree };
}
