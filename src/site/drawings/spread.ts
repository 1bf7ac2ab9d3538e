/** Something that wants to start at `wanted` and takes up `size`. */
export interface LabelRequest {
  wanted: number;
  size: number;
}

/**
 * Places for things in a row that may not overlap: each as near to where it wants to be as the others allow (least
 * sum of squared shifts), in the order given, between `low` and `high`. If they need more room than there is, they
 * run on past `high`.
 *
 * With the sizes before it taken off, "no overlap" becomes "never falling", which is isotonic regression; solved by
 * pooling adjacent violators (Barlow, Bartholomew, Bremner and Brunk 1972).
 * @returns where each begins
 */
export function spread(things: readonly LabelRequest[], low: number, high: number): number[] {
  const pools: { mean: number; count: number }[] = [];
  const offsets: number[] = [];
  let total = 0;
  for (const { wanted, size } of things) {
    offsets.push(total);
    let pool = { mean: wanted - total, count: 1 };
    for (let last = pools.at(-1); last && last.mean > pool.mean; last = pools.at(-1)) {
      pools.pop();
      const count = last.count + pool.count;
      pool = { mean: (last.mean * last.count + pool.mean * pool.count) / count, count };
    }
    pools.push(pool);
    total += size;
  }
  const latest = Math.max(low, high - total);
  const levels = pools.flatMap(({ mean, count }) =>
    Array<number>(count).fill(Math.min(latest, Math.max(low, mean))),
  );
  return levels.map((level, index) => level + (offsets[index] ?? 0));
}
