import type { Fault } from '../finding.ts';
import type { ShelfRule } from '../rule.ts';

/** A symptom names its tree and the tree names its symptom. */
export const treeAndSymptomApart: ShelfRule = {
  id: 'tree-and-symptom-apart',
  level: 'error',
  on: 'shelf',
  check: ({ records }) => {
    const faults: Fault[] = [];
    for (const { id, file, data } of records.tree.values()) {
      const symptom = records.symptom.get(data.symptom);
      if (!symptom || symptom.data.tree === id) continue;
      faults.push({
        at: { file, path: ['symptom'] },
        found: `The symptom "${data.symptom}" goes with the tree "${symptom.data.tree}", not with this one.`,
        expected: 'The two name each other.',
        byHand: `change the symptom here, or the tree in ${symptom.file}`,
      });
    }
    for (const { id, file, data } of records.symptom.values()) {
      const tree = records.tree.get(data.tree);
      // When the tree's own symptom does not name it, the first loop has said so.
      if (
        !tree ||
        tree.data.symptom === id ||
        records.symptom.get(tree.data.symptom)?.data.tree !== data.tree
      )
        continue;
      faults.push({
        at: { file, path: ['tree'] },
        found: `The tree "${data.tree}" is for "${tree.data.symptom}".`,
        expected: 'Every symptom has a tree of its own; a step of it may go on in another tree.',
        byHand: 'name the tree of this symptom',
      });
    }
    return faults;
  },
};
