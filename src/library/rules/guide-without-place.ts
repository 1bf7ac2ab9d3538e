import type { DraftShelf } from '../draft.ts';
import type { Fault } from '../finding.ts';
import { nearestOf } from '../nearest.ts';
import type { ShelfRule } from '../rule.ts';

/** The order in which guides are read has each guide once, and nothing that is none. */
export const guideWithoutPlace: ShelfRule = {
  id: 'guide-without-place',
  level: 'error',
  on: 'shelf',
  check: ({ guides, learning, learningFile, files }: DraftShelf) => {
    if (learning.order.length === 0) return [];
    const listed = learning.order.flatMap(({ guides: some }, part) =>
      some.map((id, at) => ({ id, path: ['order', part, 'guides', at] })),
    );
    const listedFaults = listed.flatMap(({ id, path }, index): Fault[] => {
      if (!guides.includes(id)) {
        const nearest = nearestOf(id, [...guides])?.word;
        return [
          {
            at: { file: learningFile, path },
            found: `There is no guide "${id}".`,
            ...(nearest !== undefined && { expected: `Nearest: "${nearest}".` }),
            byHand: 'name a guide of content/guides, or take the line out',
          },
        ];
      }
      if (listed.findIndex((other) => other.id === id) === index) return [];
      return [
        {
          at: { file: learningFile, path },
          found: `The guide "${id}" stands in the order twice.`,
          byHand: 'take one of the two out',
        },
      ];
    });
    const missing = [...files.values()].flatMap(({ role, file }): Fault[] =>
      role.is !== 'guide' || listed.some(({ id }) => id === role.id)
        ? []
        : [
            {
              at: { file, start: 0, end: 0 },
              found: 'This guide has no place in the order in which guides are read.',
              byHand: `name it in ${learningFile}, where somebody new is ready for it`,
            },
          ],
    );
    return [...listedFaults, ...missing];
  },
};
