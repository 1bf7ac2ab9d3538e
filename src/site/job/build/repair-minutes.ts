/** Minutes of the repair of each cause on a layout, and of what follows it, as the estimate asks for them. */
import { SOMETHING_ELSE } from '../../../model/kinds.ts';
import { type KnownLayout, layoutAllows } from '../../../model/layout.ts';
import { entryOf } from '../../shelf/record-pages.ts';
import { minutesOf, workFor } from '../planned.ts';
import { planOf } from './make-job-plan.ts';

/** @returns a cause that the layout cannot have, or that has no repair there, is left out */
export function repairMinutesOf(
  causes: readonly string[],
  layout: KnownLayout,
): Record<string, [repair: number, extra: number]> {
  return Object.fromEntries(
    causes.flatMap((cause) => {
      if (cause === SOMETHING_ELSE || !layoutAllows(entryOf('cause', cause).data.layout, layout)) return [];
      const { repair, extra } = minutesOf(workFor(planOf(cause), layout));
      return repair > 0 ? [[cause, [repair, extra] satisfies [number, number]]] : [];
    }),
  );
}
