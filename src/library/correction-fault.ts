import { FIGURES } from '../model/figures.ts';
import type { Note } from '../model/note.ts';
import { readQuantity } from '../model/quantity.ts';
import { parsed } from '../model/scalars.ts';
import { quantityText } from '../model/show-quantity.ts';

export interface CorrectionFault {
  found: string;
  expected: string;
  byHand: string;
}

/** The better figure a note proposes is held to the same limits as the figure it is to replace. */
export function correctionFault({
  figure,
  is,
}: Pick<NonNullable<Note['corrects']>, 'figure' | 'is'>): CorrectionFault | undefined {
  const { dimension, plausible, label } = FIGURES[figure];
  const read = readQuantity(is, dimension);
  if (!read.ok)
    return {
      found: read.fault.found,
      expected: `Right is ${read.fault.expected}.`,
      byHand: 'write the figure with its unit',
    };
  const [lowest, highest] = [parsed(plausible[0], dimension), parsed(plausible[1], dimension)];
  if (read.quantity.low >= lowest.low && read.quantity.high <= highest.high) return undefined;
  return {
    found: `${is} cannot be meant for "${label}".`,
    expected: `It lies between ${quantityText(lowest)} and ${quantityText(highest)}.`,
    byHand: 'look at the source again: number, decimal point and unit',
  };
}
