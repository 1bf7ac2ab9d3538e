/** A figure of the vehicle inside a text: the general range until a vehicle is chosen, with all the page script needs. */
import { generalRange } from '../../model/figure-lookup.ts';
import type { Quantity } from '../../model/quantity.ts';
import { showQuantity } from '../../model/show-quantity.ts';
import { packQuantity } from './packed-quantity.ts';

export { generalRange };

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
