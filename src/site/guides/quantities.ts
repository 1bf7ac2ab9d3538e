/** Computed figures as quantities, so that the page shows them in the reader's units. */
import type { Quantity } from '../../model/quantity.ts';
import { findUnit } from '../../model/units.ts';

/** @param si value in SI @param unit symbol to show it in @param decimals in that unit */
export function single(si: number, unit: string, decimals: number): Quantity {
  return range(si, si, unit, decimals);
}

/**
 * A range as a quantity.
 * @param low, high SI
 * @param decimals of the unit it is shown in
 * @throws Error on an unknown unit
 */
export function range(low: number, high: number, unit: string, decimals: number): Quantity {
  const found = findUnit(unit);
  if (!found) throw new Error(`No unit is called ${unit}`);
  return { dimension: found.dimension, low, high, unit, decimals };
}
