/** Which unit a reader sees for a quantity that is declared or written in a metric unit, and how finely. */
import { type Habit, habitualUnit } from './habit.ts';
import { findUnit, type Unit } from './units.ts';

/** Units that go another way than their dimension does: a habit of inches is no habit for altitudes, nor one of quarts for a drop. */
const OWN_WAY: Readonly<Record<string, { habit: string; shown: string }>> = {
  m: { habit: 'in', shown: 'ft' },
  km: { habit: 'in', shown: 'mi' },
  ml: { habit: 'US qt', shown: 'fl oz' },
  'ml/min': { habit: 'US gal/min', shown: 'fl oz/min' },
  // A cable is bought by its gauge, which no other area has.
  'mm²': { habit: 'in²', shown: 'mm²' },
};

/** A difference has the size of the degree and not its zero. */
const FAHRENHEIT_APART: Unit = { symbol: '°F', dimension: 'temperature difference', factor: 5 / 9 };

/**
 * The unit in which this reader wants a quantity declared in a metric unit.
 * @param largest its larger end, SI; left out where it is not known yet
 * @throws Error when no unit has that name
 */
export function readersUnit(metric: string, habit: Habit, largest = Number.POSITIVE_INFINITY): Unit {
  const declared = findUnit(metric);
  if (!declared) throw new Error(`No unit is called ${metric}`);
  const { dimension } = declared;
  if (dimension === 'temperature difference') return habit.temperature === '°F' ? FAHRENHEIT_APART : declared;
  const own = OWN_WAY[declared.symbol];
  const wanted =
    own !== undefined && own.habit === habit[dimension]
      ? own.shown
      : (habitualUnit(habit, dimension, largest) ?? metric);
  return findUnit(wanted) ?? declared;
}

/** A figure in another unit is not further than this from the one written; of a difference, read in whole degrees, a little more. */
const ROUNDED_BY = 0.06;
const DIFFERENCE_ROUNDED_BY = 0.08;

/**
 * Decimals in another unit: a step no finer than that of the unit written, unless the figure would be rounded away.
 * @param decimals as written; less than none where the figure ends in noughts
 * @param values SI, for which the rounding must stay small; a temperature has no size of its own and is left out
 */
export function decimalsIn(
  unit: Unit,
  written: Unit,
  decimals: number,
  values: readonly number[] = [],
): number {
  if (unit === written) return Math.max(0, decimals);
  const { dimension, factor } = unit;
  const byStep = Math.round(decimals - Math.log10(written.factor / factor));
  let places = decimals < 0 ? byStep : Math.max(0, byStep);
  if (dimension === 'temperature') return places;
  const allowed = dimension === 'temperature difference' ? DIFFERENCE_ROUNDED_BY : ROUNDED_BY;
  for (const si of values) {
    const value = Math.abs(si / factor);
    while (places < 6 && Math.abs(Math.round(value * 10 ** places) / 10 ** places - value) > allowed * value)
      places += 1;
  }
  return places;
}
