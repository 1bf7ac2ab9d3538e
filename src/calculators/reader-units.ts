/** Quantities that a calculator declares in metric, in the units a reader sees and picks. */
import type { Habit } from '../model/habit.ts';
import { decimalsIn, readersUnit } from '../model/readers-unit.ts';
import { showNumber } from '../model/show-quantity.ts';
import { type Dimension, findUnit, fromSI } from '../model/units.ts';
import type { QuantityFormatter, QuantityInput } from './declaration.ts';

/** Units offered beside a field, by dimension; a length by whether it is a distance or a size. */
const OFFERED: Partial<Record<Dimension | 'm' | 'km' | 'ml', readonly string[]>> = {
  temperature: ['°C', '°F'],
  pressure: ['bar', 'kPa', 'psi'],
  torque: ['N·m', 'lbf·ft', 'lbf·in'],
  volume: ['l', 'US qt'],
  m: ['m', 'ft'],
  km: ['km', 'mi'],
  ml: ['ml', 'fl oz'],
  length: ['mm', 'cm', 'in'],
  area: ['cm²', 'in²'],
  flow: ['l/min', 'US gal/min'],
  resistance: ['Ω', 'kΩ'],
  time: ['min', 'h'],
};

/** Units a reader may pick for a field; one when there is nothing to pick. Others are understood when typed. */
export function unitsOffered({ dimension, unit }: QuantityInput): readonly string[] {
  const offered = OFFERED[unit === 'm' || unit === 'km' || unit === 'ml' ? unit : dimension] ?? [unit];
  return offered.includes(unit) ? offered : [unit];
}

/** Quantities in the units this reader wants to see. */
export function showerFor(habit: Habit): QuantityFormatter {
  const range = (low: number, high: number, metric: string, decimals: number) => {
    const unit = readersUnit(metric, habit, Math.max(Math.abs(low), Math.abs(high)));
    const places = decimalsIn(unit, findUnit(metric) ?? unit, decimals, [low, high]);
    const [a, b] = [low, high].map((si) => showNumber(fromSI(si, unit), places));
    return withUnit(a === b ? `${a}` : `${a} to ${b}`, unit.symbol);
  };
  return {
    range,
    quantity: (si, metric, decimals) => range(si, si, metric, decimals),
    difference(kelvin, decimals = 0) {
      // Told apart from a temperature: "31 K to boiling" cannot be taken for 31 °C.
      return range(kelvin, kelvin, 'K', decimals);
    },
  };
}

function withUnit(number: string, symbol: string): string {
  return symbol === '' ? number : `${number}\u00a0${symbol}`;
}
