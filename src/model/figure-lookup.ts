/** Figures by path, for limits and texts: the vehicle's own, or else the general range. */
import { FIGURES, figureFits, isFigurePath, JOINTS, jointOf } from './figures.ts';
import type { KnownLayout } from './layout.ts';
import type { Quantity } from './quantity.ts';
import { parsed } from './scalars.ts';
import type { FigureLookup } from './scale.ts';

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
    return { label, quantity: parsed(general, dimension) };
  }
  const joint = jointOf(path);
  if (joint) return { label: JOINTS[joint].label, quantity: parsed(JOINTS[joint].usual, 'torque') };
  return undefined;
}
