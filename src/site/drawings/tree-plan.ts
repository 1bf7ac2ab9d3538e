/** Places for the blocks and answers of a drawn tree, by layered graph layout (dagre). Runs when the site is built. */
import { Graph, layout } from '@dagrejs/dagre';
import type { Box, Point } from './svg.ts';
import { widthOf, wrapText } from './text-width.ts';
import { type Block, blockOf, SMALL } from './tree-blocks.ts';
import { answerLines, marksOf, type TreeNode } from './tree-nodes.ts';

/** Down the sheet or across it. */
export type Direction = 'down' | 'across';

export interface PlacedBlock {
  block: Block;
  box: Box;
}

export interface PlacedWay {
  /** From block to block, in order along the direction of reading. */
  points: Point[];
  answer: { lines: string[]; box: Box };
}

export interface TreePlan {
  direction: Direction;
  blocks: PlacedBlock[];
  ways: PlacedWay[];
  width: number;
  height: number;
}

export const ANSWER_LINE = 14;
/** Length of an arrow head. */
const ARROW = 7;
const MARGIN = 6;
/** From a block to the next along the direction of reading, the answer between them not counted. */
const RANK_GAP: Record<Direction, number> = { down: 30, across: 44 };

/** One arrangement: direction of reading and how wide a question may run. */
export interface Arrangement {
  direction: Direction;
  textWidth: number;
}

/** Blocks and answers with their sizes, not yet placed. */
interface SizedTree {
  blocks: Block[];
  ways: { from: string; to: string; lines: string[]; width: number; height: number }[];
}

function sizedTree(nodes: readonly TreeNode[], { direction, textWidth }: Arrangement): SizedTree {
  const marks = marksOf(nodes);
  return {
    blocks: nodes.map((node) => blockOf(node, marks.get(node.id) ?? '', textWidth)),
    ways: nodes.flatMap((node) =>
      node.ways.map((way) => {
        const lines = answerLines(way).flatMap((line) =>
          wrapText(line, direction === 'down' ? 92 : 110, SMALL),
        );
        return {
          from: node.id,
          to: way.to,
          lines,
          width: Math.ceil(Math.max(...lines.map((each) => widthOf(each, SMALL)))) + 6,
          height: lines.length * ANSWER_LINE + 2,
        };
      }),
    ),
  };
}

/**
 * What the plan measures at the least along the direction of reading: its longest way from the start. Found in a hundredth of
 * the time that planTree takes.
 * @param nodes each before all it leads to, as `treeNodes` gives them
 */
export function leastLength(nodes: readonly TreeNode[], arrangement: Arrangement): number {
  const along = arrangement.direction === 'down' ? 'height' : 'width';
  const { blocks, ways } = sizedTree(nodes, arrangement);
  const lengths = new Map<string, number>();
  for (const block of [...blocks].reverse()) {
    const onward = ways
      .filter(({ from }) => from === block.node.id)
      .map((way) => RANK_GAP[arrangement.direction] + way[along] + (lengths.get(way.to) ?? 0));
    lengths.set(block.node.id, block[along] + Math.max(0, ...onward));
  }
  return Math.max(...lengths.values()) + 2 * MARGIN;
}

/** Places for every step, answer and end of a tree, its texts as wide as the arrangement says, in units of the drawing. */
export function planTree(nodes: readonly TreeNode[], arrangement: Arrangement): TreePlan {
  const { direction } = arrangement;
  const down = direction === 'down';
  const graph = new Graph();
  // Half of ranksep is on either side of the answers, which take a rank of their own.
  graph.setGraph({
    rankdir: down ? 'TB' : 'LR',
    nodesep: down ? 12 : 8,
    edgesep: 10,
    ranksep: RANK_GAP[direction],
    marginx: MARGIN,
    marginy: MARGIN,
  });
  graph.setDefaultEdgeLabel(() => ({}));

  const { blocks, ways } = sizedTree(nodes, arrangement);
  for (const block of blocks) graph.setNode(block.node.id, { width: block.width, height: block.height });
  for (const { from, to, width, height } of ways) graph.setEdge(from, to, { width, height, labelpos: 'c' });
  layout(graph);

  const { width = 0, height = 0 } = graph.graph() as { width?: number; height?: number };
  const laid = ways.map(({ from, to }) => graph.edge(from, to) as PlacedEdge);
  const turn = firstAnswersLast(ways, laid, down) ? mirror(down, width, height) : unchanged;
  const edges = laid.map((edge) => ({ ...edge, ...turn(edge), points: edge.points.map(turn) }));
  const placed = blocks.map((block) => ({
    block,
    box: boxAround(turn(graph.node(block.node.id) as Point), block),
  }));
  const boxOf = new Map(placed.map(({ block, box }) => [block.node.id, box]));
  const layers = layerExtents(
    [...placed.map(({ box }) => box), ...edges.map((edge) => boxAround(edge, edge))],
    direction,
  );
  return {
    direction,
    blocks: placed,
    ways: edges.map((edge, index) => ({
      points: route(
        edge.points,
        boxOf.get(ways[index]?.from ?? ''),
        boxOf.get(ways[index]?.to ?? ''),
        layers,
        direction,
      ),
      answer: { lines: ways[index]?.lines ?? [], box: boxAround(edge, edge) },
    })),
    width,
    height,
  };
}

/**
 * Whether more answers stand in the wrong order than in the right one. Dagre minds crossings, not the order of
 * reading, and its picture is as good the other way round.
 */
function firstAnswersLast(
  ways: readonly { from: string }[],
  edges: readonly PlacedEdge[],
  down: boolean,
): boolean {
  let wrong = 0;
  edges.forEach((edge, index) => {
    const next = edges[index + 1];
    if (!next || ways[index]?.from !== ways[index + 1]?.from) return;
    wrong += Math.sign(down ? edge.x - next.x : edge.y - next.y);
  });
  return wrong > 0;
}

function mirror(down: boolean, width: number, height: number): (point: Point) => Point {
  return ({ x, y }) => (down ? { x: width - x, y } : { x, y: height - y });
}

function unchanged({ x, y }: Point): Point {
  return { x, y };
}

/** What dagre leaves on an edge: the middle of its label, the label’s size, and the way. */
type PlacedEdge = Point & { width: number; height: number; points: Point[] };

function boxAround({ x, y }: Point, { width, height }: { width: number; height: number }): Box {
  return { x: x - width / 2, y: y - height / 2, width, height };
}

/** Where the middle of a box is along the direction of reading; boxes of one layer share it. */
function middleOf(box: Box, direction: Direction): number {
  return Math.round(direction === 'down' ? box.y + box.height / 2 : box.x + box.width / 2);
}

/** How far each layer of blocks or answers reaches to either side of its middle. */
function layerExtents(boxes: readonly Box[], direction: Direction): Map<number, number> {
  const extents = new Map<number, number>();
  for (const box of boxes) {
    const middle = middleOf(box, direction);
    const half = (direction === 'down' ? box.height : box.width) / 2;
    extents.set(middle, Math.max(extents.get(middle) ?? 0, half));
  }
  return extents;
}

/**
 * The way of a line: out of the block it leaves straight below (or beside), straight past every layer of blocks it
 * passes, sideways only between layers, so that it touches no block.
 */
function route(
  inner: readonly Point[],
  from: Box | undefined,
  to: Box | undefined,
  layers: ReadonlyMap<number, number>,
  direction: Direction,
): Point[] {
  if (!from || !to) return [...inner];
  const down = direction === 'down';
  const bends = inner.slice(1, -1);
  const first = bends[0] ?? { x: to.x + to.width / 2, y: to.y };
  const last = bends.at(-1) ?? first;
  const within = (value: number, low: number, size: number, inset: number) =>
    Math.min(low + size - inset, Math.max(low + inset, value));
  const start = down
    ? { x: within(first.x, from.x, from.width, 10), y: from.y + from.height }
    : { x: from.x + from.width, y: within(first.y, from.y, from.height, 6) };
  const end = down
    ? { x: within(last.x, to.x, to.width, 10), y: to.y }
    : { x: to.x, y: within(last.y, to.y, to.height, 6) };
  const straight = (point: Point, before: number, after: number) =>
    down
      ? [
          { x: point.x, y: point.y - before },
          { x: point.x, y: point.y + after },
        ]
      : [
          { x: point.x - before, y: point.y },
          { x: point.x + after, y: point.y },
        ];
  const extentAt = (box: Box) => layers.get(middleOf(box, direction)) ?? 0;
  const half = (box: Box) => (down ? box.height : box.width) / 2;
  const passed = bends.flatMap((bend) => {
    const extent = layers.get(Math.round(down ? bend.y : bend.x)) ?? 0;
    return straight(bend, extent, extent);
  });
  const way = [
    ...straight(start, 0, extentAt(from) - half(from)),
    ...passed,
    // The arrow head stands on a straight piece.
    ...straight(end, extentAt(to) - half(to) + ARROW, 0),
  ];
  return way.filter(({ x, y }, index) => {
    const before = way[index - 1];
    return !before || Math.abs(before.x - x) + Math.abs(before.y - y) > 0.05;
  });
}
