/** A quantity in one attribute or string: low, high in SI, unit, decimals, dimension. */
import type { Quantity } from '../../model/quantity.ts';
import type { Dimension } from '../../model/units.ts';

/** A quantity as one short text for an attribute; SI inside. */
export function packQuantity({ low, high, unit, decimals, dimension }: Quantity): string {
  return [low, high, unit, decimals, dimension].join('|');
}

/** The way back of `packQuantity`; takes no other text. */
export function unpackQuantity(text: string): Quantity {
  const [low, high, unit = '', decimals, dimension] = text.split('|');
  return {
    low: Number(low),
    high: Number(high),
    unit,
    decimals: Number(decimals),
    dimension: dimension as Dimension,
  };
}
