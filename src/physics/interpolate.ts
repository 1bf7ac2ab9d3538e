/** A table of points, x rising. */
export type Points = readonly (readonly [x: number, y: number])[];

/**
 * Straight line between the two points of a table that x lies between.
 *
 * @returns undefined when x lies outside the table
 */
export function interpolate(points: Points, x: number): number | undefined {
  for (let i = 1; i < points.length; i++) {
    const [from, to] = [points[i - 1], points[i]];
    if (from && to && x >= from[0] && x <= to[0])
      return from[1] + ((to[1] - from[1]) * (x - from[0])) / (to[0] - from[0]);
  }
  return undefined;
}
