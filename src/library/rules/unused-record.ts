import { KINDS, type Kind } from '../../model/kinds.ts';
import type { DraftShelf } from '../draft.ts';
import type { Fault } from '../finding.ts';
import type { ShelfRule } from '../rule.ts';

/** A record that nothing leads to: nobody will come to read it. */
export const unusedRecord: ShelfRule = {
  id: 'unused-record',
  level: 'warning',
  on: 'shelf',
  check: (shelf) => {
    const used = usedRecords(shelf);
    const { records } = shelf;
    const unused = <K extends Kind>(kind: K, by: string, byHand: string): Fault[] =>
      [...records[kind].values()].flatMap(({ id, file }) =>
        used.has(`${kind}/${id}`)
          ? []
          : [
              {
                at: { file, path: ['title'], on: 'key' },
                found: `Nothing leads to the ${KINDS[kind].one} "${id}".`,
                expected: `It is used by ${by}.`,
                byHand,
              },
            ],
      );
    return [
      ...unused('test', 'a tree, a proof, or evidence about a candidate cause', 'use it, or delete the file'),
      ...unused('cause', 'the list of a symptom', 'add it to the symptoms it is behind, or delete the file'),
      ...unused('tool', 'a test or a procedure', 'name it where it is needed, or delete the file'),
      ...unused(
        'caution',
        'a test, a procedure or a tool',
        'name it where it can happen, or delete the file',
      ),
      ...unused('code', 'the list of a symptom', 'add it to the symptoms it goes with, or delete the file'),
    ];
  },
};

/** What each kind counts as used by; a reference from elsewhere does not bring a reader to it. */
function usedRecords({ drafts, records }: DraftShelf): Set<string> {
  const used = new Set<string>();
  const candidates = new Set([...records.symptom.values()].flatMap(({ data }) => Object.keys(data.causes)));
  const users: Partial<Record<Kind, (from: string) => boolean>> = {
    test: (from) => from === 'tree' || from === 'cause',
    cause: (from) => from === 'symptom',
    tool: (from) => from === 'test' || from === 'procedure',
    caution: (from) => from === 'test' || from === 'procedure' || from === 'tool',
    code: (from) => from === 'symptom',
  };
  for (const { kind, references } of drafts)
    for (const { to, id } of references) if (users[to]?.(kind)) used.add(`${to}/${id}`);
  // The walk offers every test that tells candidate causes apart, whether an author put it into the tree or not.
  for (const { id, data } of records.test.values())
    if (Object.keys(data.evidence).some((cause) => candidates.has(cause))) used.add(`test/${id}`);
  return used;
}
