import { LAYOUT, type LayoutCondition, layoutAllows } from '../../model/layout.ts';
import { entryOf } from './record-pages.ts';

/** The vehicles a caution is about, when there are vehicles it is not about. */
export function cautionLayout(id: string): LayoutCondition | undefined {
  const condition = entryOf('caution', id).data['on-vehicle'];
  const isEverywhere =
    Object.keys(condition ?? {}).every((feature) => feature === 'power') &&
    LAYOUT.power.every((power) => layoutAllows(condition, { power }));
  return isEverywhere ? undefined : condition;
}
