import type { RecordRule } from '../rule.ts';

/** `- Low coolant: no flow to feel` is read as a field "Low coolant"; the author wrote a sentence. */
export const textCutByColon: RecordRule = {
  id: 'text-cut-by-colon',
  level: 'error',
  on: 'record',
  check: ({ file, faults }) =>
    faults.flatMap((fault) =>
      fault.is === 'colon'
        ? [
            {
              at: { file, path: fault.path },
              found: 'A ": " in this text makes it a field with a value.',
              expected: `Right is ${JSON.stringify(fault.text)}.`,
              byHand: 'put the whole text in quotes',
              replaceBy: JSON.stringify(fault.text),
            },
          ]
        : [],
    ),
};
