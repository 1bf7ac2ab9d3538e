import { hasWord } from '../../model/learning.ts';
import type { Fault } from '../finding.ts';
import { nearestOf } from '../nearest.ts';
import type { ShelfRule } from '../rule.ts';

/** A word that is explained is said somewhere, and the guide it names is there. */
export const explainedWordUnused: ShelfRule = {
  id: 'explained-word-unused',
  level: 'error',
  on: 'shelf',
  check: ({ learning, learningFile, files, guides }) => {
    const words = Object.entries(learning.words);
    if (words.length === 0) return [];
    const texts = [...files.values()]
      .filter(({ role }) => role.is === 'guide' || (role.is === 'record' && role.kind !== 'case'))
      .map(({ text }) => text.toLowerCase());
    return words.flatMap(([id, word]): Fault[] => {
      const { guide } = word;
      const nearest = guide === undefined ? undefined : nearestOf(guide, [...guides])?.word;
      return [
        ...(texts.some((text) => hasWord(text, word))
          ? []
          : [
              {
                at: { file: learningFile, path: ['words', id, 'word'] },
                found: `"${word.word}" is explained, but no guide and no record says it.`,
                byHand: 'spell it as the shelf does, add that spelling under "also", or take it out',
              },
            ]),
        ...(guide === undefined || guides.includes(guide)
          ? []
          : [
              {
                at: { file: learningFile, path: ['words', id, 'guide'] },
                found: `There is no guide "${guide}".`,
                ...(nearest !== undefined && { expected: `Nearest: "${nearest}".` }),
                byHand: 'name a guide of content/guides, or take the line out',
              },
            ]),
      ];
    });
  },
};
