/** Layouts of the shelf's vehicles: many vehicles share one, and what is worked out for it holds for all of them. */
import { asMostAre, LAYOUT_FEATURES, type Layout } from '../model/layout.ts';
import type { Records } from './shelf.ts';

export interface DrivenLayout {
  layout: Layout;
  /** Ids of the vehicles that have it, in the order of the shelf. */
  vehicles: string[];
}

const known = new WeakMap<Records, DrivenLayout[]>();

/** Each layout once, what a vehicle leaves out as most cars have it, in the order of the shelf; vehicles without an engine that warms the coolant are left out. */
export function drivenLayouts(records: Records): readonly DrivenLayout[] {
  const before = known.get(records);
  if (before) return before;
  const layouts = new Map<string, DrivenLayout>();
  for (const { id, data } of records.vehicle.values()) {
    const layout = asMostAre(data.layout);
    if (layout.power === 'battery electric') continue;
    const key = LAYOUT_FEATURES.map((feature) => layout[feature]).join();
    const same = layouts.get(key);
    if (same) same.vehicles.push(id);
    else layouts.set(key, { layout, vehicles: [id] });
  }
  const found = [...layouts.values()];
  known.set(records, found);
  return found;
}
