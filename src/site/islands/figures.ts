/** Write the figures in the texts anew for a vehicle and for the reader's units. */
import type { Quantity } from '../../model/quantity.ts';
import { type Habit, showQuantity } from '../../model/show-quantity.ts';
import type { Dimension } from '../../model/units.ts';
import type { VehicleSheet } from '../vehicle-sheet.ts';

/** The general range as it was packed into the page at build. */
function unpack(text: string): Quantity {
  const [low, high, unit = '', decimals, dimension] = text.split('|');
  return {
    low: Number(low),
    high: Number(high),
    unit,
    decimals: Number(decimals),
    dimension: dimension as Dimension,
  };
}

/**
 * Every figure in a text shows the vehicle's value, or the general range, marked so.
 * @param within where to look
 */
export function showFigures(within: ParentNode, vehicle: VehicleSheet | undefined, habit: Habit): void {
  for (const part of within.querySelectorAll<HTMLElement>('[data-fig]')) {
    const own = vehicle?.figures[part.dataset.fig ?? ''];
    const { number, unit } = showQuantity(own?.quantity ?? unpack(part.dataset.q ?? ''), habit);
    const value = document.createElement('b');
    value.textContent = number;
    const unitPart = document.createElement('i');
    unitPart.textContent = unit;
    part.replaceChildren(value, '\u00a0', unitPart);
    if (own) {
      part.title = own.origin;
    } else {
      const mark = document.createElement('small');
      mark.textContent = vehicle ? 'general, none for this vehicle' : 'general';
      part.append(' ', mark);
      part.removeAttribute('title');
    }
  }
}

/** Figures printed as they are, such as in a table: only the units follow the reader. */
export function showReadings(within: ParentNode, habit: Habit): void {
  for (const part of within.querySelectorAll<HTMLElement>('[data-show]')) {
    const { number, unit } = showQuantity(unpack(part.dataset.show ?? ''), habit);
    const value = document.createElement('b');
    value.textContent = number;
    const unitPart = document.createElement('i');
    unitPart.textContent = unit;
    part.replaceChildren(value, '\u00a0', unitPart);
  }
}
