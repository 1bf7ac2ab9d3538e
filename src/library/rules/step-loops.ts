import type { Tree } from '../../model/tree.ts';
import type { DraftShelf } from '../draft.ts';
import type { Fault } from '../finding.ts';
import type { ShelfRule } from '../rule.ts';
import { waysOf } from '../tree-ways.ts';

export const stepLoops: ShelfRule = {
  id: 'step-loops',
  level: 'error',
  on: 'shelf',
  check: (shelf) => [
    ...[...shelf.records.tree.values()].flatMap(({ file, data }) => loopsIn(file, data)),
    ...loopsOfTrees(shelf),
  ],
};

/** Answers that lead back to a step already passed on the way. */
function loopsIn(file: string, tree: Tree): Fault[] {
  const faults: Fault[] = [];
  const done = new Set<string>();
  const way: string[] = [];
  const visit = (id: string): void => {
    way.push(id);
    const step = tree.steps[id];
    for (const { to, path } of step ? waysOf(id, step) : []) {
      const from = way.indexOf(to);
      if (from >= 0)
        faults.push({
          at: { file, path },
          found: `This leads back to "${to}": ${[...way.slice(from), to].join(' → ')}.`,
          expected: 'A walk never asks the same question twice.',
          byHand: 'lead to a later step or to an end',
        });
      else if (!done.has(to)) visit(to);
    }
    way.pop();
    done.add(id);
  };
  visit(tree.start);
  return faults;
}

/** Trees that send a walk round between them. */
function loopsOfTrees({ records }: DraftShelf): Fault[] {
  const nextOf = (id: string): { to: string; step: string }[] =>
    Object.entries(records.tree.get(id)?.data.steps ?? {}).flatMap(([step, { tree }]) =>
      tree === undefined ? [] : [{ to: tree, step }],
    );
  const comesTo = (from: string, goal: string, seen: Set<string>): boolean =>
    from === goal || (!seen.has(from) && nextOf(from).some(({ to }) => comesTo(to, goal, seen.add(from))));
  const reported: string[] = [];
  const faults: Fault[] = [];
  for (const { id, file } of records.tree.values())
    for (const { to, step } of nextOf(id)) {
      if (!comesTo(to, id, new Set())) continue;
      // A round through several trees is reported in the first of them.
      if (reported.some((other) => comesTo(id, other, new Set()))) continue;
      reported.push(id);
      faults.push({
        at: { file, path: ['steps', step, 'tree'] },
        found:
          to === id
            ? 'This tree goes on in itself.'
            : `The tree "${to}" comes back to this one: a walk would go round.`,
        expected: 'A walk never asks the same question twice.',
        byHand: 'end one of the trees instead',
      });
    }
  return faults;
}
