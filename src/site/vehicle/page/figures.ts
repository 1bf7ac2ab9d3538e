/** Write the figures in the texts anew for a vehicle and for the reader's units. */
import { FIGURE_REFERENCE } from '../../../model/figure-reference.ts';
import type { Habit } from '../../../model/habit.ts';
import { quantityText, showQuantity } from '../../../model/show-quantity.ts';
import { besidesTorque } from '../../../model/torque-stages.ts';
import { unpackQuantity } from '../../text/packed-quantity.ts';
import type { VehicleSheet } from '../vehicle-sheet.ts';

/** In the place of a figure that the chosen vehicle cannot have. */
const NOT_HERE = '(no such figure on this vehicle)';

/**
 * Every figure in a text shows the vehicle's value, or the general range, marked so.
 * @param within where to look
 */
export function showFigures(within: ParentNode, vehicle: VehicleSheet | undefined, habit: Habit): void {
  for (const part of within.querySelectorAll<HTMLElement>('[data-fig]')) {
    const path = part.dataset.fig ?? '';
    const own = vehicle?.figures[path];
    if (vehicle?.without.includes(path)) {
      part.replaceChildren(NOT_HERE);
      part.removeAttribute('title');
      continue;
    }
    const { number, unit } = showQuantity(own?.quantity ?? unpackQuantity(part.dataset.q ?? ''), habit);
    const value = document.createElement('b');
    value.textContent = number;
    const unitPart = document.createElement('i');
    unitPart.textContent = unit;
    part.replaceChildren(value, '\u00a0', unitPart);
    const besides = besidesTorque(vehicle?.bolts[path.replace(/^torque\./, '')] ?? {}, habit);
    if (own && besides !== '') part.append(`, ${besides}`);
    const marked = own ? own.mark : vehicle ? 'general, none for this vehicle' : 'general';
    if (marked) {
      const mark = document.createElement('small');
      mark.textContent = marked;
      part.append(' ', mark);
    }
    if (own) part.title = own.origin;
    else part.removeAttribute('title');
  }
}

/** Where a fill stands, the coolant of this vehicle; without one, what the page says for any. */
export function showCoolants(within: ParentNode, vehicle: VehicleSheet | undefined): void {
  for (const part of within.querySelectorAll<HTMLElement>('[data-fills]')) {
    const { fills = '', any = part.textContent ?? '' } = part.dataset;
    part.dataset.any = any;
    const coolant = vehicle?.coolants[fills];
    part.textContent = coolant ?? (vehicle ? `${any}; this record does not name it` : any);
  }
}

/** Figures printed as they are, such as in a table: only the units follow the reader. */
export function showReadings(within: ParentNode, habit: Habit): void {
  for (const part of within.querySelectorAll<HTMLElement>('[data-show]')) {
    const { number, unit } = showQuantity(unpackQuantity(part.dataset.show ?? ''), habit);
    const value = document.createElement('b');
    value.textContent = number;
    const unitPart = document.createElement('i');
    unitPart.textContent = unit;
    part.replaceChildren(value, '\u00a0', unitPart);
  }
}

/**
 * A text without markup with its figures written in: the vehicle's, or the general range.
 * @param general packed general ranges by path
 */
export function withFigures(
  text: string,
  general: Readonly<Record<string, string>>,
  vehicle: VehicleSheet | undefined,
  habit: Habit,
): string {
  return text.replace(FIGURE_REFERENCE, (whole, path: string) => {
    if (vehicle?.without.includes(path)) return NOT_HERE;
    const packed = general[path];
    const quantity =
      vehicle?.figures[path]?.quantity ?? (packed === undefined ? undefined : unpackQuantity(packed));
    return quantity ? quantityText(quantity, habit) : whole;
  });
}
