/** Holds a hundred drawn cars against every outside figure. */
import { drawCar, type KnownFigures } from '../../../src/car/car.ts';
import { quantile } from './drives.ts';
import { HEAT } from './heat.ts';
import { HOLD } from './hold.ts';
import { PARTS } from './parts.ts';
import type { Row } from './row.ts';
import { WARM_UP } from './warm-up.ts';

export const ROWS: readonly Row[] = [...HEAT, ...WARM_UP, ...HOLD, ...PARTS];
export const CARS = 100;
const FIRST_SEED = 1000;

export interface Compared {
  readonly row: Row;
  readonly middle: number;
  /** From 5 to 95 %. */
  readonly low: number;
  readonly high: number;
  /** Share of the cars inside the source's range, and inside the spread. */
  readonly inRange: number;
  readonly inSpread: number;
}

/** @param cars how many to draw for each kind of car */
export function compareAll(cars = CARS): readonly Compared[] {
  const values = new Map<Row, number[]>(ROWS.map((row) => [row, []]));
  // One car at a time through all its rows: its runs can be forgotten after it.
  for (const known of new Set<KnownFigures>(ROWS.map((row) => row.known))) {
    const rows = ROWS.filter((row) => row.known === known);
    for (let at = 0; at < cars; at++) {
      const car = drawCar(FIRST_SEED + at, known);
      for (const row of rows) if (at < (row.cars ?? cars)) values.get(row)?.push(row.ours(car));
    }
  }
  return ROWS.map((row) => summarise(row, values.get(row) ?? []));
}

function summarise(row: Row, values: readonly number[]): Compared {
  const share = ([low, high]: readonly [number, number]) =>
    values.filter((value) => value >= low && value <= high).length / values.length;
  // A car that never gets there is the slowest of all.
  const all = values.map((value) => (Number.isFinite(value) ? value : Number.POSITIVE_INFINITY));
  return {
    row,
    middle: quantile(all, 0.5),
    low: quantile(all, 0.05),
    high: quantile(all, 0.95),
    inRange: share(row.range),
    inSpread: share(row.spread),
  };
}
