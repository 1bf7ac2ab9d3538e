/** What a complaint's walk comes to on a layout, worked out once for the whole build. */
import { resolve } from '../../../diagnosis/state.ts';
import { type WalkFigures, walkFigures } from '../../../diagnosis/walk-figures.ts';
import type { LayoutCase } from './layout-cases.ts';

/**
 * Ways less likely than this are left out: some four seconds for all layouts of the shelf. On the longest walks followed fifteen times
 * further, expected minutes come out up to a tenth longer, and proven or first up to three in a hundred lower.
 */
const LEAST_CHANCE = 3e-4;

const known = new WeakMap<LayoutCase, WalkFigures>();

/** @throws RangeError when the tree names a step that is not there; the shelf check reports that first */
export function walkFiguresOf(layoutCase: LayoutCase): WalkFigures {
  const before = known.get(layoutCase);
  if (before) return before;
  const { compiled, tree } = layoutCase;
  const figures = walkFigures(compiled, tree, resolve(compiled, { evidence: [] }), LEAST_CHANCE);
  known.set(layoutCase, figures);
  return figures;
}
