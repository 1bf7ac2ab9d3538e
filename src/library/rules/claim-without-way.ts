import { claimsOf } from '../../model/tree.ts';
import type { Fault, Path } from '../finding.ts';
import { listed } from '../nearest.ts';
import type { ShelfRule } from '../rule.ts';
import { answersOnTheWayTo } from '../tree-ways.ts';

/** A sentence of an end that rests on an answer which no way to the end gives: it is never shown. */
export const claimWithoutWay: ShelfRule = {
  id: 'claim-without-way',
  level: 'error',
  on: 'shelf',
  check: ({ records, faulty }) =>
    [...records.tree.values()].flatMap(({ id, file, data }): Fault[] => {
      if (faulty.has(file)) return [];
      return Object.entries(data.ends).flatMap(([end, { says }]) => {
        const claims = claimsOf({ says });
        if (claims.every(({ after }) => Object.keys(after).length === 0)) return [];
        const answers = answersOnTheWayTo(records, id, end);
        return claims.flatMap(({ after }, at) =>
          Object.entries(after).flatMap(([test, outcomes]): Fault[] => {
            const path: Path = ['ends', end, 'says', at, 'after', test];
            const known = answers.get(test);
            if (known === undefined)
              return [
                {
                  at: { file, path, on: 'key' },
                  found: `This sentence rests on "${test}", which no way to the end "${end}" asks.`,
                  byHand: 'rest it on a test of a way that leads here, or leave it out',
                },
              ];
            const never = outcomes.filter((outcome) => !known.has(outcome));
            if (never.length === 0) return [];
            return [
              {
                at: { file, path },
                found: `No way to the end "${end}" has the answer ${listed(never)} to "${test}".`,
                expected: `Ways that lead here have ${listed([...known])}.`,
                byHand: 'name an answer of a way that leads here, or leave the sentence out',
              },
            ];
          }),
        );
      });
    }),
};
