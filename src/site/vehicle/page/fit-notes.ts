/** Notes of the shop as the chosen vehicle wants them: its own first, then those of no vehicle; the rest folded away. */
import { element } from '../../browser/element.ts';

/** @param vehicle id of the chosen one; without it every list is whole again */
export function fitNotes(part: ParentNode, vehicle: string | undefined): void {
  for (const list of part.querySelectorAll('[data-notes]')) {
    const fold = list.nextElementSibling?.matches('.other-notes') ? list.nextElementSibling : undefined;
    const rank = ({ dataset }: HTMLElement) =>
      dataset.vehicle === undefined || vehicle === undefined ? 1 : dataset.vehicle === vehicle ? 0 : 2;
    const notes = [list, fold]
      .flatMap((place) => [...(place?.querySelectorAll('li') ?? [])])
      .sort((a, b) => rank(a) - rank(b));
    const others = notes.filter((note) => rank(note) === 2);
    fold?.remove();
    list.replaceChildren(...notes);
    if (others.length === 0) continue;
    const folded = element('ul', { class: list.className }, ...others);
    list.after(
      element(
        'details',
        { class: 'other-notes' },
        element('summary', {}, `On other vehicles (${others.length})`),
        folded,
      ),
    );
  }
}
