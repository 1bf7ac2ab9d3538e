/**
 * Minutes to book for finding the cause: what the authored tree costs on a layout, wrong turns included. One arithmetic
 * for the complaint's page, the sheet for the counter and the page about the shelf.
 */
import { treeCost } from '../../../diagnosis/tree-cost.ts';
import { titleOf } from '../../shelf/record-pages.ts';
import { type LayoutCase, layoutCasesOf } from './layout-cases.ts';

export interface Booking {
  /** Mean of all cars, in minutes. */
  expected: number;
  /** Nine in ten are found within this, in minutes. */
  nineInTen: number;
}

const known = new WeakMap<LayoutCase, Booking>();

/** @throws Error when the tree cannot be walked with that layout; the shelf check reports that first */
export function bookingFor(symptom: string, layoutCase: LayoutCase): Booking {
  const before = known.get(layoutCase);
  if (before) return before;
  const cost = treeCost(layoutCase.compiled, layoutCase.tree);
  if (!cost.ok)
    throw new Error(
      `The tree of ${symptom} cannot be walked with the layout of ${layoutCase.vehicles.join(', ')}.`,
    );
  const booking = { expected: cost.report.expectedMinutes, nineInTen: cost.report.nineInTen };
  known.set(layoutCase, booking);
  return booking;
}

/**
 * The layout that most of the shelf's vehicles have, as far as the complaint knows layouts apart.
 * @throws Error when no vehicle of the shelf can have the complaint
 */
export function commonestCase(symptom: string): LayoutCase {
  const [commonest] = [...layoutCasesOf(symptom)].sort((a, b) => b.vehicles.length - a.vehicles.length);
  if (!commonest) throw new Error(`No vehicle of the shelf can have the complaint ${symptom}.`);
  return commonest;
}

/** Whose minutes they are: "Aldermoor Tarn 1.6 and 4 more of this shelf’s vehicles". */
export function countedFor({ vehicles: [first = '', ...others] }: LayoutCase): string {
  const name = titleOf('vehicle', first);
  return others.length === 0 ? name : `${name} and ${others.length} more of this shelf’s vehicles`;
}

/** Of one vehicle: whole minutes by complaint, mean and nine in ten; a complaint that it cannot have is not there. */
export function bookingsOf(vehicle: string, symptoms: readonly string[]): Record<string, [number, number]> {
  return Object.fromEntries(
    symptoms.flatMap((symptom) => {
      const found = layoutCasesOf(symptom).find(({ vehicles }) => vehicles.includes(vehicle));
      if (!found) return [];
      const { expected, nineInTen } = bookingFor(symptom, found);
      return [[symptom, [Math.round(expected), Math.round(nineInTen)] satisfies [number, number]]];
    }),
  );
}
