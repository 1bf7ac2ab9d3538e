/** A quantity in one attribute or string: low, high in SI, unit, decimals, dimension. */
import type { Quantity } from '../model/quantity.ts';
import type { Dimension } from '../model/units.ts';

export function packQuantity({ low, high, unit, decimals, dimension }: Quantity): string {
  return [low, high, unit, decimals, dimension].join('|');
}

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
