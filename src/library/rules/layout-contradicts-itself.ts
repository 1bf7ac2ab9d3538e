import { contradictionIn } from '../../model/layout.ts';
import type { ShelfRule } from '../rule.ts';

/** Two features of one vehicle that no vehicle has together: an electric fan that nothing switches. */
export const layoutContradictsItself: ShelfRule = {
  id: 'layout-contradicts-itself',
  level: 'error',
  on: 'shelf',
  check: ({ records }) =>
    [...records.vehicle.values()].flatMap(({ file, data: { layout } }) => {
      const apart = contradictionIn(layout);
      if (!apart) return [];
      const [one, other] = apart;
      return [
        {
          at: { file, path: ['layout', other] },
          found: `No vehicle has "${one}: ${layout[one]}" and "${other}: ${layout[other]}" together.`,
          expected: 'One of the two is another on this car.',
          byHand: `look at the car again and correct "${one}" or "${other}"`,
        },
      ];
    }),
};
