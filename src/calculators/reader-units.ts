/** Which unit a reader sees and types for a quantity a calculator declares in metric. */
import { type Habit, habitualUnit } from '../model/habit.ts';
import { showNumber } from '../model/show-quantity.ts';
import { type Dimension, findUnit, fromSI, type Unit } from '../model/units.ts';
import type { QuantityInput, Shower } from './declaration.ts';

/**
 * Units that stay, or go another way than their dimension does: a habit of inches is no habit for altitudes, nor one
 * of quarts for a drop lost a minute.
 */
const OWN_WAY: Readonly<Record<string, { habit: string; shown: string }>> = {
  m: { habit: 'in', shown: 'ft' },
  km: { habit: 'in', shown: 'mi' },
  ml: { habit: 'US qt', shown: 'ml' },
};

/**
 * The unit in which this reader wants a quantity declared in a metric unit.
 * @param largest its larger end, SI; left out where it is not known yet
 * @throws Error when no unit has that name
 */
export function readersUnit(metric: string, habit: Habit, largest = Number.POSITIVE_INFINITY): Unit {
  const declared = findUnit(metric);
  if (!declared) throw new Error(`No unit is called ${metric}`);
  const wanted = habitualUnit(habit, declared.dimension, largest) ?? metric;
  const own = OWN_WAY[declared.symbol];
  const unit = findUnit(own !== undefined && own.habit === habit[declared.dimension] ? own.shown : wanted);
  return unit?.dimension === declared.dimension ? unit : declared;
}

/** Units offered beside a field, by dimension; a length by whether it is a distance or a size. */
const OFFERED: Partial<Record<Dimension | 'm' | 'km', readonly string[]>> = {
  temperature: ['°C', '°F'],
  pressure: ['bar', 'kPa', 'psi'],
  torque: ['N·m', 'lbf·ft', 'lbf·in'],
  volume: ['l', 'US qt'],
  m: ['m', 'ft'],
  km: ['km', 'mi'],
  length: ['mm', 'cm', 'in'],
  resistance: ['Ω', 'kΩ'],
  time: ['min', 'h'],
};

/** Units a reader may pick for a field; one when there is nothing to pick. Others are understood when typed. */
export function unitsOffered({ dimension, unit }: QuantityInput): readonly string[] {
  const offered = OFFERED[unit === 'm' || unit === 'km' ? unit : dimension] ?? [unit];
  return offered.includes(unit) ? offered : [unit];
}

/** Decimals in another unit that make a step no finer than in the unit written. */
export function decimalsIn(unit: Unit, written: Unit, decimals: number): number {
  if (unit === written) return decimals;
  const step = (10 ** -decimals * written.factor) / unit.factor;
  return Math.max(0, Math.round(-Math.log10(step)));
}

/** Quantities in the units this reader wants to see. */
export function showerFor(habit: Habit): Shower {
  const range = (low: number, high: number, metric: string, decimals: number) => {
    const unit = readersUnit(metric, habit, Math.max(Math.abs(low), Math.abs(high)));
    const places = decimalsIn(unit, findUnit(metric) ?? unit, decimals);
    const [a, b] = [low, high].map((si) => showNumber(fromSI(si, unit), places));
    return withUnit(a === b ? `${a}` : `${a} to ${b}`, unit.symbol);
  };
  return {
    range,
    quantity: (si, metric, decimals) => range(si, si, metric, decimals),
    difference(kelvin, decimals = 0) {
      const { symbol, factor } = readersUnit('°C', habit);
      // Told apart from a temperature: "31 K to boiling" cannot be taken for 31 °C.
      return withUnit(showNumber(kelvin / factor, decimals), symbol === '°C' ? 'K' : symbol);
    },
  };
}

function withUnit(number: string, symbol: string): string {
  return symbol === '' ? number : `${number}\u00a0${symbol}`;
}
