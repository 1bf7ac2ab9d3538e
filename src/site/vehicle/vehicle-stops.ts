/** Which cautions stand over every walk on a vehicle: what an ordinary engine does not have and can hurt. */
import { type KnownLayout, type LayoutCondition, layoutAllows } from '../../model/layout.ts';
import type { Stop } from './vehicle-sheet.ts';

export interface VehicleCaution {
  id: string;
  title: string;
  short: string;
  /** The vehicles it is for. */
  on: LayoutCondition;
  /** What it asks first. */
  avoid: string;
}

/** @param layout with its drive known: what is not known rules no caution out */
export function stopsFor(cautions: readonly VehicleCaution[], layout: KnownLayout): Stop[] {
  const before =
    layout.power === 'hybrid'
      ? 'Stop before anything of its battery and inverter loops is opened.'
      : 'Stop before anything is opened.';
  return cautions
    .filter(({ on }) => layoutAllows(on, layout) && !layoutAllows(on, { ...layout, power: 'combustion' }))
    .map(({ id, title, short, avoid }) => ({ id, title, short, before: `${before} ${avoid}` }));
}
