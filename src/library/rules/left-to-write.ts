import type { Path } from '../finding.ts';
import type { RecordRule } from '../rule.ts';
import { isLeftToWrite } from '../skeleton-mark.ts';

/** `npm run new` fills a record so that it is whole; what it filled in says nothing yet. */
export const leftToWrite: RecordRule = {
  id: 'left-to-write',
  level: 'warning',
  on: 'record',
  check: ({ file, texts, faults }) =>
    texts.flatMap(({ text, path }) =>
      isLeftToWrite(text) && !faults.some((fault) => fault.is === 'open' && isSame(fault.path, path))
        ? [
            {
              at: { file, path },
              found: 'This is still what "npm run new" filled in.',
              expected: 'On the site it would be read as it stands.',
              byHand: 'write it, or take the line out if the field may be left out',
            },
          ]
        : [],
    ),
};

function isSame(one: Path, other: Path): boolean {
  return one.join('\n') === other.join('\n');
}
