/** Halvings that bring any bracket used here down to the last digit of a double. */
const HALVINGS = 60;

/**
 * Where a rising or falling function takes a wanted value, by halving the bracket.
 *
 * Slower than Newton's method and still microseconds here; it cannot leave the bracket or fail to end.
 * @param f rises or falls all the way from `low` to `high`, and takes the wanted value between them
 */
export function findWhere(f: (x: number) => number, wanted: number, low: number, high: number): number {
  const rising = f(high) > f(low);
  let [from, to] = [low, high];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (from + to) / 2;
    if (f(middle) < wanted === rising) from = middle;
    else to = middle;
  }
  return (from + to) / 2;
}
