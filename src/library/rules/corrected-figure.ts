import { correctionFault } from '../correction-fault.ts';
import type { ShelfRule } from '../rule.ts';

export const correctedFigure: ShelfRule = {
  id: 'corrected-figure',
  level: 'error',
  on: 'shelf',
  check: ({ records }) =>
    [...records.note.values()].flatMap(({ file, data: { corrects } }) => {
      const fault = corrects && correctionFault(corrects);
      return fault ? [{ at: { file, path: ['corrects', 'is'] }, ...fault }] : [];
    }),
};
