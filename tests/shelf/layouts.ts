/** A complaint on the layouts of the shelf's vehicles, each that changes its model or its tree once. */
import { type Case, caseOf } from '../../src/library/case.ts';
import { drivenLayouts } from '../../src/library/driven-layouts.ts';
import { layoutAllows } from '../../src/model/layout.ts';
import { shelf } from './shelf.ts';

/** With the vehicles that have it, the commonest first. */
export function layoutsOf(symptom: string): { made: Case; vehicles: string[] }[] {
  const bySign = new Map<string, { made: Case; vehicles: string[] }>();
  for (const { layout, vehicles } of drivenLayouts(shelf.records)) {
    if (!layoutAllows(shelf.records.symptom.get(symptom)?.data.layout, layout)) continue;
    const made = caseOf(shelf, symptom, layout);
    const sign = JSON.stringify([made.model, made.tree]);
    const known = bySign.get(sign);
    if (known) known.vehicles.push(...vehicles);
    else bySign.set(sign, { made, vehicles: [...vehicles] });
  }
  return [...bySign.values()].sort((a, b) => b.vehicles.length - a.vehicles.length);
}
