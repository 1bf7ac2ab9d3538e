import type { Layout, LayoutCondition } from '../../model/layout.ts';
import type { ShelfRule } from '../rule.ts';
import type { Entry } from '../shelf.ts';
import type { SourceFile } from '../source-file.ts';

/** A candidate cause that no test speaks about can only be guessed at. */
export const causeWithoutEvidence: ShelfRule = {
  id: 'cause-without-evidence',
  level: 'error',
  on: 'shelf',
  check: ({ records, files, faulty }) => {
    // A test with an error may be the one that speaks about it.
    if ([...faulty].some((file) => isTest(files.get(file)))) return [];
    const byCause = new Map<string, Entry<'test'>[]>();
    for (const test of records.test.values())
      for (const id of Object.keys(test.data.evidence)) byCause.set(id, [...(byCause.get(id) ?? []), test]);
    return [...records.symptom.values()].flatMap(({ file, data }) =>
      Object.keys(data.causes).flatMap((id) => {
        const cause = records.cause.get(id);
        if (!cause) return [];
        const speaking = byCause.get(id) ?? [];
        if (speaking.some(({ data: test }) => meet(test.layout, cause.data.layout))) return [];
        const onOthers = speaking.length > 0 ? ' on a vehicle that can have it' : '';
        return [
          {
            at: { file, path: ['causes', id], on: 'key' },
            found: `No test has evidence about "${id}"${onOthers}.`,
            expected: 'At least one test says how often each of its outcomes is seen under this cause.',
            byHand: 'add a row for it to the evidence of a test',
          },
        ];
      }),
    );
  },
};

function isTest(source: SourceFile | undefined): boolean {
  return source?.role.is === 'record' && source.role.kind === 'test';
}

/** Whether a vehicle can fulfil both conditions. */
function meet(one: LayoutCondition | undefined, other: LayoutCondition | undefined): boolean {
  if (!one || !other) return true;
  return (Object.keys(one) as (keyof Layout)[]).every((feature) => {
    const [a, b]: (readonly string[] | undefined)[] = [one[feature], other[feature]];
    return !a || !b || a.some((value) => b.includes(value));
  });
}
