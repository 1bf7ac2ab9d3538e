import { FIGURES } from '../../model/figures.ts';
import { readQuantity } from '../../model/quantity.ts';
import { parsed } from '../../model/scalars.ts';
import { quantityText } from '../../model/show-quantity.ts';
import type { ShelfRule } from '../rule.ts';

/** The better figure a note proposes is held to the same limits as the figure it is to replace. */
export const correctedFigure: ShelfRule = {
  id: 'corrected-figure',
  level: 'error',
  on: 'shelf',
  check: ({ records }) =>
    [...records.note.values()].flatMap(({ file, data: { corrects } }) => {
      if (!corrects) return [];
      const { dimension, plausible, label } = FIGURES[corrects.figure];
      const at = { file, path: ['corrects', 'is'] };
      const read = readQuantity(corrects.is, dimension);
      if (!read.ok)
        return [
          {
            at,
            found: read.fault.found,
            expected: `Right is ${read.fault.expected}.`,
            byHand: 'write the figure with its unit',
          },
        ];
      const [lowest, highest] = [parsed(plausible[0], dimension), parsed(plausible[1], dimension)];
      if (read.quantity.low >= lowest.low && read.quantity.high <= highest.high) return [];
      return [
        {
          at,
          found: `${corrects.is} cannot be meant for "${label}".`,
          expected: `It lies between ${quantityText(lowest)} and ${quantityText(highest)}.`,
          byHand: 'look at the source again: number, decimal point and unit',
        },
      ];
    }),
};
