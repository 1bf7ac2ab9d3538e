/** What the chosen vehicle's record says of getting at things and of its air, at the work where that is; nothing without a vehicle of the shelf. */
import type { Habit } from '../../../model/habit.ts';
import { element } from '../../browser/element.ts';
import type { VehicleSheet } from '../vehicle-sheet.ts';
import { withFigures } from './figures.ts';

/** @param within where to look */
export function showOwnWords(within: ParentNode, vehicle: VehicleSheet | undefined, habit: Habit): void {
  for (const place of within.querySelectorAll<HTMLElement>('[data-own]')) {
    if (!vehicle || vehicle.own) {
      place.replaceChildren();
      continue;
    }
    const isAir = place.dataset.own === 'bleeding';
    const texts = isAir ? [vehicle.bleeding] : vehicle.access.map(({ is }) => is);
    const wasOpen = place.querySelector('details')?.open;
    place.replaceChildren(
      element(
        'details',
        { open: wasOpen },
        element('summary', {}, `${isAir ? 'Where its air hides' : 'Access'}: ${vehicle.short}`),
        // No list: inside the work each line of one would be a step to be ticked.
        ...texts.map((text) => element('p', {}, withFigures(text, {}, vehicle, habit))),
      ),
    );
  }
}
