import type { $ZodType } from 'zod/v4/core';
import { listed, nearestOf } from '../nearest.ts';
import type { RecordRule } from '../rule.ts';
import { bare, metaOf, schemaAt, valueAt } from '../schema-tree.ts';

/** A word that is not in the list of words a field takes. */
export const wrongWord: RecordRule = {
  id: 'wrong-word',
  level: 'error',
  on: 'record',
  check: ({ file, raw, faults, schema }) =>
    faults.flatMap((fault) => {
      if (fault.is !== 'word') return [];
      const word = String(valueAt(raw, fault.path));
      const says = detailWanted(schemaAt(schema, fault.path, raw), word);
      if (says !== undefined)
        return [
          {
            at: { file, path: fault.path },
            found: `"${word}" alone does not say enough.`,
            expected: `It says: ${says}`,
            byHand: `write it behind the word: { ${word}: … }`,
          },
        ];
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

/** What a word has to have behind it where it is the name of a field: "manual" its title and page. */
function detailWanted(schema: $ZodType | undefined, word: string): string | undefined {
  if (!schema) return undefined;
  const { def } = bare(schema)._zod;
  if (def.type === 'object') {
    const field = Object.hasOwn(def.shape, word) ? def.shape[word] : undefined;
    return field && metaOf(field).description;
  }
  return def.type === 'union'
    ? def.options.map((option) => detailWanted(option, word)).find((says) => says !== undefined)
    : undefined;
}
