/**
 * Minutes to book for finding the cause, from the authored tree. Layout branches are weighed by the vehicles on the
 * shelf: each distinct layout of the tree counts once for every vehicle that has it.
 */

import { compile } from '../../diagnosis/compiled.ts';
import { treeCost } from '../../diagnosis/tree-cost.ts';
import { caseOf } from '../../library/case.ts';
import { shelf } from '../shelf.ts';

export interface Booking {
  expected: number;
  nineInTen: number;
  /** The layout, among the shelf's vehicles, on which it takes longest. */
  longest: number;
}

export function bookingOf(symptom: string): Booking {
  const costs = [...shelf.records.vehicle.values()].flatMap(({ data }) => {
    const { model, tree } = caseOf(shelf, symptom, data.layout);
    const cost = treeCost(compile(model), tree);
    return cost.ok ? [cost.report] : [];
  });
  if (costs.length === 0)
    throw new Error(`The tree of ${symptom} cannot be costed on any vehicle of the shelf.`);
  const mean = (values: number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  return {
    expected: mean(costs.map(({ expectedMinutes }) => expectedMinutes)),
    nineInTen: mean(costs.map(({ nineInTen }) => nineInTen)),
    longest: Math.max(...costs.map(({ expectedMinutes }) => expectedMinutes)),
  };
}
