/** The authored tree as the walk follows it: plain data, written as JSON into the symptom's page. */
import type { LayoutFeature } from '../../model/layout.ts';
import type { Tree } from '../../model/tree.ts';

export type WalkStep =
  | { kind: 'test'; test: string; on: Record<string, string> }
  | { kind: 'layout'; feature: LayoutFeature; on: Record<string, string> }
  /** `by` is the confirming test and the outcome that proves it: answered elsewhere, it need not be asked again. */
  | { kind: 'prove'; cause: string; otherwise: string; by?: { test: string; outcome: string } }
  | { kind: 'tree'; tree: string }
  | { kind: 'end'; causes: string[] };

export interface WalkTree {
  start: string;
  /** Steps and ends by id; the two never share an id. */
  steps: Record<string, WalkStep>;
}

/**
 * The tree of a record, steps and ends in one table.
 * @param provedBy the confirming test of a cause, where it has one
 */
export function walkTreeOf(
  tree: Tree,
  provedBy: (cause: string) => { test: string; outcome: string } | undefined,
): WalkTree {
  const steps: Record<string, WalkStep> = {};
  for (const [id, step] of Object.entries(tree.steps)) {
    if (step.test !== undefined) steps[id] = { kind: 'test', test: step.test, on: step.on ?? {} };
    else if (step.layout !== undefined)
      steps[id] = { kind: 'layout', feature: step.layout, on: step.on ?? {} };
    else if (step.prove !== undefined) {
      const by = provedBy(step.prove);
      steps[id] = { kind: 'prove', cause: step.prove, otherwise: step.otherwise ?? '', ...(by && { by }) };
    } else if (step.tree !== undefined) steps[id] = { kind: 'tree', tree: step.tree };
  }
  for (const [id, end] of Object.entries(tree.ends)) steps[id] = { kind: 'end', causes: end.causes };
  return { start: tree.start, steps };
}
