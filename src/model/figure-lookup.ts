/** Figures by path, for limits and texts: the vehicle's own, or else the general range. */
import { FIGURES, figureFits, isFigurePath, JOINTS, jointOf } from './figures.ts';
import type { KnownLayout } from './layout.ts';
import { type Quantity, readQuantity } from './quantity.ts';
import type { FigureLookup } from './scale.ts';
import type { Dimension } from './units.ts';

/**
 * @param own the vehicle's own figures by path; {} with no vehicle chosen
 * @param known what is known of its layout: a figure that it cannot have is not taken from the general range
 */
export function figureLookup(
  own: Readonly<Record<string, { is: Quantity } | undefined>>,
  known: KnownLayout,
): FigureLookup {
  return (path) => {
    const quantity = own[path]?.is;
    if (quantity) return { quantity, isGeneral: false };
    const general = figureFits(path, known) ? generalRange(path)?.quantity : undefined;
    return general && { quantity: general, isGeneral: true };
  };
}

/** The general range behind a reference, or undefined for an unknown path. */
export function generalRange(path: string): { label: string; quantity: Quantity } | undefined {
  if (isFigurePath(path)) {
    const { label, general, dimension } = FIGURES[path];
    return { label, quantity: written(general, dimension) };
  }
  const joint = jointOf(path);
  if (joint) return { label: JOINTS[joint].label, quantity: written(JOINTS[joint].usual, 'torque') };
  return undefined;
}

/** A quantity that stands in our own tables. Without the schemas, so that a page that reads a figure carries no validator. */
function written(text: string, dimension: Dimension): Quantity {
  const read = readQuantity(text, dimension);
  if (!read.ok) throw new Error(`The table of figures has "${text}": ${read.fault.found}`);
  return read.quantity;
}
