/** Notes that say a figure of a vehicle should be otherwise, as long as it is not. */
import type { Entry } from '../../../library/shelf.ts';
import { FIGURES, type FigurePath } from '../../../model/figures.ts';
import { readQuantity } from '../../../model/quantity.ts';
import { pointingAt } from '../../shelf/cross-links.ts';
import { entryOf } from '../../shelf/record-pages.ts';

/** By figure. A note stands beside its figure until somebody edits the vehicle, or withdraws the note. */
export function openCorrections({ id, data }: Entry<'vehicle'>): Map<FigurePath, Entry<'note'>[]> {
  const open = new Map<FigurePath, Entry<'note'>[]>();
  for (const noteId of pointingAt('vehicle', id, 'note')) {
    const note = entryOf('note', noteId);
    const { corrects, status } = note.data;
    if (!corrects || status === 'withdrawn') continue;
    const { figure, is } = corrects;
    const wanted = readQuantity(is, FIGURES[figure].dimension);
    const stands = data.figures[figure]?.is;
    const done =
      wanted.ok && stands && stands.low === wanted.quantity.low && stands.high === wanted.quantity.high;
    if (!done) open.set(figure, [...(open.get(figure) ?? []), note]);
  }
  return open;
}
