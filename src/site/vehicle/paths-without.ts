/** Figures and torques that a vehicle of a layout cannot have: no general range stands in for them. */
import { figureFits, REFERABLE_PATHS } from '../../model/figures.ts';
import type { KnownLayout } from '../../model/layout.ts';

/** @param figures those the vehicle has all the same, by path */
export function pathsWithout(figures: Readonly<Record<string, unknown>>, layout: KnownLayout): string[] {
  return REFERABLE_PATHS.filter((path) => !figures[path] && !figureFits(path, layout));
}
