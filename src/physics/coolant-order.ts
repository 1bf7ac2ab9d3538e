import { within } from './out-of-range.ts';
import { type CubicMetre, cubicMetre, type VolumeFraction } from './units.ts';

/** A can on the shelf, and what it costs. */
export interface CanSize {
  /** 0.0001 to 0.25 m3. */
  readonly holds: CubicMetre;
  /** In the currency of the shop; left out when nobody wrote it. */
  readonly price?: number;
}

export interface Order {
  /** How many of each, in the order given. */
  readonly cans: readonly number[];
  /** Of what is bought, m3. */
  readonly bought: CubicMetre;
  /** Left in the last can, m3. */
  readonly over: CubicMetre;
  /** All cans; left out unless each size bought has a price. */
  readonly price?: number;
}

/** What a mixed filling is made of, m3. */
export interface Parts {
  /** From the can. */
  readonly coolant: CubicMetre;
  readonly water: CubicMetre;
}

/** More cans of one size than this and somebody buys a drum. */
const MOST_CANS = 200;
/** A drop is no can, m3. */
const DROP = 1e-7;

/**
 * Coolant from the can and water for a filling.
 *
 * By volumes before mixing at 20 °C, as a workshop measures them out; a mixture takes up to 1 % less room than its parts.
 * @param filling 0.0001 to 0.25 m3
 * @param wanted strength by volume, no more than that of the can
 * @param can strength of what is bought: 1 for concentrate
 * @throws OutOfRange on any figure
 */
export function partsOf(filling: CubicMetre, wanted: VolumeFraction, can: VolumeFraction): Parts {
  const litres = within('filling', filling, 1e-4, 0.25, 'm3');
  const strong = within('glycol in the can', can, 0.01, 1, '1');
  const share = within('glycol wanted', wanted, 0, strong, '1') / strong;
  return { coolant: cubicMetre(litres * share), water: cubicMetre(litres * (1 - share)) };
}

/**
 * Cans to buy: the cheapest that suffices; without prices the least left over, then the fewest cans.
 *
 * @param needed 0 to 0.25 m3
 * @param sizes one or two
 * @throws OutOfRange on any figure, and when it takes more than 200 of a size
 */
export function cansFor(needed: CubicMetre, sizes: readonly CanSize[]): Order {
  const litres = within('coolant needed', needed, 0, 0.25, 'm3');
  within('number of can sizes', sizes.length, 1, 2, '1');
  for (const { holds, price = 0 } of sizes) {
    within('size of a can', holds, 1e-4, 0.25, 'm3');
    within('price of a can', price, 0, 1e8, '1');
  }
  const [first, second] = sizes;
  if (!first) throw new Error('One size is given at least');
  const most = Math.ceil((litres - DROP) / first.holds);
  within('number of cans', most, 0, MOST_CANS, '1');
  const orders = Array.from({ length: Math.max(0, most) + 1 }, (_, count) => {
    const rest = litres - count * first.holds;
    const others = second === undefined ? 0 : Math.max(0, Math.ceil((rest - DROP) / second.holds));
    return second === undefined ? [Math.max(0, most)] : [count, others];
  }).map((cans) => orderOf(cans, sizes, litres));
  return orders.reduce((best, each) => (isBetter(each, best) ? each : best));
}

function orderOf(cans: readonly number[], sizes: readonly CanSize[], litres: number): Order {
  const bought = cans.reduce((sum, count, at) => sum + count * (sizes[at]?.holds ?? 0), 0);
  const priced = sizes.every(({ price }) => price !== undefined);
  return {
    cans,
    bought: cubicMetre(bought),
    over: cubicMetre(Math.max(0, bought - litres)),
    ...(priced && { price: cans.reduce((sum, count, at) => sum + count * (sizes[at]?.price ?? 0), 0) }),
  };
}

function isBetter(one: Order, other: Order): boolean {
  const by = (order: Order) => [
    order.price ?? 0,
    order.over,
    order.cans.reduce((sum, each) => sum + each, 0),
  ];
  const [a, b] = [by(one), by(other)];
  const at = a.findIndex((each, i) => Math.abs(each - (b[i] ?? 0)) > 1e-9);
  return at >= 0 && (a[at] ?? 0) < (b[at] ?? 0);
}
