/** A complaint on the layouts of the shelf's vehicles: each layout that changes its causes or its tree once. */

import type { CompiledModel } from '../../../diagnosis/compiled.ts';
import { compile } from '../../../diagnosis/compiled.ts';
import type { Tree } from '../../../diagnosis/tree.ts';
import { caseOf } from '../../../library/case.ts';
import { drivenLayouts } from '../../../library/driven-layouts.ts';
import { commonestLayout, type Layout, layoutAllows } from '../../../model/layout.ts';
import { shelf } from '../../shelf/shelf.ts';

export interface LayoutCase {
  compiled: CompiledModel;
  tree: Tree;
  /** The first of its layouts. */
  layout: Layout;
  /** Ids of the vehicles that have it. */
  vehicles: string[];
}

const made = new Map<string, LayoutCase[]>();

/**
 * Vehicles without an engine are left out: the complaints are about coolant that an engine heats. Where no vehicle of the
 * shelf can have the complaint, the commonest layout stands in, with no vehicle.
 */
export function layoutCasesOf(symptom: string): LayoutCase[] {
  const before = made.get(symptom);
  if (before) return before;
  const cases = new Map<string, LayoutCase>();
  const condition = shelf.records.symptom.get(symptom)?.data.layout;
  const driven = drivenLayouts(shelf.records).filter(({ layout }) => layoutAllows(condition, layout));
  const usual = { layout: commonestLayout(shelf.shop.layouts ?? {}, condition), vehicles: [] };
  for (const { layout, vehicles } of driven.length > 0 ? driven : [usual]) {
    const { model, tree } = caseOf(shelf, symptom, layout);
    const sign = JSON.stringify([
      model.causes.map((cause) => cause.id),
      model.tests.map((test) => test.id),
      tree,
    ]);
    const known = cases.get(sign);
    if (known) known.vehicles.push(...vehicles);
    else cases.set(sign, { compiled: compile(model), tree, layout, vehicles: [...vehicles] });
  }
  const list = [...cases.values()];
  made.set(symptom, list);
  return list;
}
