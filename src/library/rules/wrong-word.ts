import { listed, nearestOf } from '../nearest.ts';
import type { RecordRule } from '../rule.ts';
import { valueAt } from '../schema-tree.ts';

/** A word that is not in the list of words a field takes. */
export const wrongWord: RecordRule = {
  id: 'wrong-word',
  level: 'error',
  on: 'record',
  check: ({ file, raw, faults }) =>
    faults.flatMap((fault) => {
      if (fault.is !== 'word') return [];
      const word = String(valueAt(raw, fault.path));
      const nearest = nearestOf(word, fault.words);
      const all = `It is one of ${listed(fault.words, 20)}.`;
      return [
        {
          at: { file, path: fault.path },
          found: `"${word}" is not a word this field knows.`,
          expected: nearest ? `Nearest: "${nearest.word}". ${all}` : all,
          byHand: 'use one of the words listed',
          ...(nearest?.sure && { replaceBy: nearest.word }),
        },
      ];
    }),
};
