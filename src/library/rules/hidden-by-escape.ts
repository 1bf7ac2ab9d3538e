import type { RecordRule } from '../rule.ts';
import { firstUnseen } from '../unseen.ts';

/** "\u202e" in double quotes is plain letters in the file and turns the text around on the page. */
export const hiddenByEscape: RecordRule = {
  id: 'hidden-by-escape',
  level: 'error',
  on: 'record',
  check: ({ file, texts }) =>
    texts.flatMap(({ text, path }) => {
      const unseen = firstUnseen(text);
      if (!unseen) return [];
      return [
        {
          at: { file, path },
          found: `YAML makes a character of this text that cannot be seen, or that turns it around: ${unseen.name}.`,
          expected: 'A record holds what is seen and nothing else.',
          byHand: 'take the backslash and its number out',
        },
      ];
    }),
};
