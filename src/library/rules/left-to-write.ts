import type { RecordRule } from '../rule.ts';
import { TO_WRITE } from '../skeleton-mark.ts';

/** `npm run new` fills a record so that it is whole; what it filled in says nothing yet. */
export const leftToWrite: RecordRule = {
  id: 'left-to-write',
  level: 'warning',
  on: 'record',
  check: ({ file, texts }) =>
    texts.flatMap(({ text, path }) =>
      text.startsWith(TO_WRITE)
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
