import { FIGURES, type FigurePath } from '../../model/figures.ts';
import type { Quantity } from '../../model/quantity.ts';
import { quantityText } from '../../model/show-quantity.ts';
import type { ShelfRule } from '../rule.ts';

/**
 * Figures of one vehicle that stand in an order by what they mean, the lower first. A resistance falls as it warms, a
 * fan stops below what it starts at, nothing holds less than comes out of it.
 */
const ORDERS: readonly [lower: FigurePath, higher: FigurePath][] = [
  ['thermostat.opens', 'thermostat.fully-open'],
  ['thermostat.opens-energised', 'thermostat.opens'],
  ['running.low-limit', 'running.cruise'],
  ['fan.off', 'fan.on'],
  ['fan.on', 'fan.fast'],
  ['fan.on', 'warning.lamp'],
  ['fan.fast', 'warning.lamp'],
  ['fan.current', 'fan.fuse'],
  ['cap.vacuum-opens', 'cap.opens'],
  ['coolant.drain', 'coolant.capacity'],
  ['coolant.air-space', 'coolant.capacity'],
  ['sensor.at-80', 'sensor.at-20'],
  ['sensor.at-100', 'sensor.at-80'],
];

/** Two figures, each believable, that cannot both be right on one vehicle. Ranges may overlap, their ends keep the order. */
export const figuresContradict: ShelfRule = {
  id: 'figures-contradict',
  level: 'error',
  on: 'shelf',
  check: ({ records }) =>
    [...records.vehicle.values()].flatMap(({ file, data: { figures } }) =>
      ORDERS.flatMap(([lower, higher]) => {
        const low = figures[lower]?.is;
        const high = figures[higher]?.is;
        if (!low || !high || isBelow(low, high)) return [];
        return [
          {
            at: { file, path: ['figures', lower, 'is'] },
            found: `"${FIGURES[lower].label}" is ${quantityText(low)}, "${FIGURES[higher].label}" is ${quantityText(high)}.`,
            expected: `"${lower}" lies below "${higher}" on every vehicle.`,
            byHand: 'look at the source again: one of the two is wrong, or they have changed places',
          },
        ];
      }),
    ),
};

function isBelow(one: Quantity, other: Quantity): boolean {
  return one.low < other.low && one.high <= other.high;
}
