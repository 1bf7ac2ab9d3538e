import { foreignEntries } from '../../recogniser/foreign-entries.ts';
import { learntFrom } from '../recognition.ts';
import type { ShelfRule } from '../rule.ts';

/** A word of two meanings in a group leads everything said with its other meaning astray. */
export const wordInWrongGroup: ShelfRule = {
  id: 'word-in-wrong-group',
  level: 'warning',
  on: 'shelf',
  check: ({ records, words, wordsFile }) =>
    foreignEntries(learntFrom({ records, words }), words.groups).map(({ group, entry, at, used, home }) => ({
      at: { file: wordsFile, path: ['groups', group, at] },
      found: `"${entry}" stands in ${used} texts of complaints, most of them complaints that have no other word of this group; the others are met mostly with "${home}".`,
      expected: 'A word of a group means what the others mean.',
      byHand: 'take the word out of the group, or write the phrase that has this meaning only',
    })),
};
