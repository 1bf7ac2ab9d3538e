/** A figure of the vehicle inside a text: the general range until a vehicle is chosen, with all the page script needs. */
import { FIGURES, isFigurePath, JOINTS, jointOf } from '../../model/figures.ts';
import type { Quantity } from '../../model/quantity.ts';
import { parsed } from '../../model/scalars.ts';
import { showQuantity } from '../../model/show-quantity.ts';
import { packQuantity } from './packed-quantity.ts';

/** The general range behind a reference, or undefined for an unknown path. */
export function generalRange(path: string): { label: string; quantity: Quantity } | undefined {
  if (isFigurePath(path)) {
    const { label, general, dimension } = FIGURES[path];
    return { label, quantity: parsed(general, dimension) };
  }
  const joint = jointOf(path);
  if (joint) return { label: JOINTS[joint].label, quantity: parsed(JOINTS[joint].usual, 'torque') };
  return undefined;
}

/** Figures that stand in a text whoever reads it: those of the vehicle the page is about. */
export type FixedFigures = Readonly<Record<string, { quantity: Quantity }>>;

/**
 * The markup of one figure in a text.
 * @param fixed the figures of the page's own vehicle; without them the reader's choice decides
 * @throws Error when no figure has this path; the shelf check reports that first
 */
export function figureHtml(path: string, fixed?: FixedFigures): string {
  const general = generalRange(path);
  if (!general) throw new Error(`No figure is called ${path}`);
  const own = fixed?.[path];
  if (own)
    return `<span class="reading" data-show="${packQuantity(own.quantity)}">${shownHtml(own.quantity)}</span>`;
  const chosen = fixed ? '' : ` data-fig="${path}" data-q="${packQuantity(general.quantity)}"`;
  return `<span class="fig"${chosen}>${shownHtml(general.quantity)} <small>general</small></span>`;
}

/** Number large, unit small. */
export function shownHtml(quantity: Quantity): string {
  const { number, unit } = showQuantity(quantity);
  return `<b>${number}</b>\u00a0<i>${unit}</i>`;
}
