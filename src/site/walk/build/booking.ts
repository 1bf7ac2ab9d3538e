/**
 * Minutes to book for finding the cause: what the walk asks on a layout until it ends, wrong turns included. One arithmetic
 * for the complaint's page and the sheet for the counter.
 */
import type { Layout } from '../../../model/layout.ts';
import { entryOf, titleOf } from '../../shelf/record-pages.ts';
import { type LayoutCase, layoutCasesOf } from './layout-cases.ts';
import { walkFiguresOf } from './walk-figures-of.ts';

export interface Booking {
  /** Mean of all cars, in minutes. */
  expected: number;
  /** Nine in ten walks end within this, in minutes. */
  nineInTen: number;
}

/** @throws RangeError when the tree cannot be walked with that layout; the shelf check reports that first */
export function bookingFor(layoutCase: LayoutCase): Booking {
  const { expectedMinutes, nineInTen } = walkFiguresOf(layoutCase);
  return { expected: expectedMinutes, nineInTen };
}

/**
 * The layout that most of the shelf's vehicles have, as far as the complaint knows layouts apart.
 * @throws Error when no layout can have the complaint
 */
export function commonestCase(symptom: string): LayoutCase {
  const [commonest] = [...layoutCasesOf(symptom)].sort((a, b) => b.vehicles.length - a.vehicles.length);
  if (!commonest) throw new Error(`No layout can have the complaint ${symptom}.`);
  return commonest;
}

/** Of one of the vehicles that the minutes are counted for; the commonest one where no vehicle of the shelf can have the complaint. */
export function commonestLayout(symptom: string): Layout {
  const {
    vehicles: [vehicle],
    layout,
  } = commonestCase(symptom);
  return vehicle === undefined ? layout : entryOf('vehicle', vehicle).data.layout;
}

/** Whose minutes they are: "Aldermoor Tarn 1.6 and 4 more of this shelf’s vehicles". */
export function countedFor({ vehicles: [first, ...others] }: LayoutCase): string {
  if (first === undefined) return 'the commonest layout';
  const name = titleOf('vehicle', first);
  return others.length === 0 ? name : `${name} and ${others.length} more of this shelf’s vehicles`;
}

/** Of one vehicle: whole minutes by complaint, mean and nine in ten; a complaint that it cannot have is not there. */
export function bookingsOf(vehicle: string, symptoms: readonly string[]): Record<string, [number, number]> {
  return Object.fromEntries(
    symptoms.flatMap((symptom) => {
      const found = layoutCasesOf(symptom).find(({ vehicles }) => vehicles.includes(vehicle));
      if (!found) return [];
      const { expected, nineInTen } = bookingFor(found);
      return [[symptom, [Math.round(expected), Math.round(nineInTen)] satisfies [number, number]]];
    }),
  );
}
