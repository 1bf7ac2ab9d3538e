import type { Box } from '../../../src/site/drawings/svg.ts';

export type NamedBox = Box & { name: string };

/** Boxes that only touch do not overlap. */
const TOUCH = 0.01;

function overlap(a: Box, b: Box): boolean {
  return (
    a.x + a.width > b.x + TOUCH &&
    b.x + b.width > a.x + TOUCH &&
    a.y + a.height > b.y + TOUCH &&
    b.y + b.height > a.y + TOUCH
  );
}

/** Every pair of these boxes that overlap, as "a over b". */
export function overlapsOf(boxes: readonly NamedBox[]): string[] {
  return boxes.flatMap((a, index) => overlapsWith(a, boxes.slice(index + 1)));
}

/** The others that one box overlaps. */
export function overlapsWith(box: NamedBox, others: readonly NamedBox[]): string[] {
  return others.filter((other) => overlap(box, other)).map((other) => `${box.name} over ${other.name}`);
}
