import type { Box } from '../../../src/site/drawings/svg.ts';

/** Every pair of named boxes that share more than a touch, as "a over b". */
export function overlapsOf(boxes: readonly (Box & { name: string })[]): string[] {
  const touch = 0.01;
  return boxes.flatMap((a, index) =>
    boxes
      .slice(index + 1)
      .filter(
        (b) =>
          a.x + a.width > b.x + touch &&
          b.x + b.width > a.x + touch &&
          a.y + a.height > b.y + touch &&
          b.y + b.height > a.y + touch,
      )
      .map((b) => `${a.name} over ${b.name}`),
  );
}
