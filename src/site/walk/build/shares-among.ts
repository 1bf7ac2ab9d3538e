import { LAYOUT_FEATURES, type LayoutCondition, type LayoutShares } from '../../../model/layout.ts';

/**
 * How common each layout is among the cars that can have a complaint: what the complaint's condition leaves out is
 * gone, and the rest sums to 1 again. Without it a cause that every such car can have would count as a rare one.
 * @param shares by feature, among all cars that come in, 0 to 1
 * @param condition of the complaint; a feature it does not name keeps its shares
 */
export function sharesAmong(shares: LayoutShares, condition: LayoutCondition | undefined): LayoutShares {
  return Object.fromEntries(
    LAYOUT_FEATURES.flatMap((feature) => {
      const common = shares[feature];
      const wanted: readonly string[] | undefined = condition?.[feature];
      if (common === undefined) return [];
      if (wanted === undefined) return [[feature, common]];
      const left = Object.entries(common).filter(([value]) => wanted.includes(value));
      const sum = left.reduce((total, [, share]) => total + share, 0);
      if (sum === 0) return [];
      return [[feature, Object.fromEntries(left.map(([value, share]) => [value, share / sum]))]];
    }),
  );
}
