/** Minutes to book for finding the cause, from the authored tree, wrong turns included. */
import { treeCost } from '../../diagnosis/tree-cost.ts';
import { layoutCasesOf } from './layout-cases.ts';

export interface Booking {
  /** Mean over the shelf's vehicles. */
  expected: number;
  /** Nine in ten are found within this. */
  nineInTen: number;
}

export function bookingOf(symptom: string): Booking {
  let vehicles = 0;
  let expected = 0;
  let nineInTen = 0;
  for (const { compiled, tree, vehicles: having } of layoutCasesOf(symptom)) {
    const cost = treeCost(compiled, tree);
    if (!cost.ok)
      throw new Error(`The tree of ${symptom} cannot be walked with the layout of ${having.join(', ')}.`);
    vehicles += having.length;
    expected += cost.report.expectedMinutes * having.length;
    nineInTen += cost.report.nineInTen * having.length;
  }
  if (vehicles === 0) throw new Error(`No vehicle of the shelf can have the complaint ${symptom}.`);
  return { expected: expected / vehicles, nineInTen: nineInTen / vehicles };
}
