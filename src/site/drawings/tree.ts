/** A diagnosis tree for the wall: drawn so that it fills one sheet of A4. Uses dagre, so at build only. */
import { at, coordinate, escapeText, type Point, picture } from './svg.ts';
import { drawBlock, SMALL } from './tree-blocks.ts';
import { describeTree, type TreeNode } from './tree-nodes.ts';
import {
  ANSWER_LINE,
  type Arrangement,
  leastLength,
  type PlacedWay,
  planTree,
  type TreePlan,
} from './tree-plan.ts';
import { drawSheet, planSheet } from './tree-sheet.ts';

export interface TreeInput {
  /** Prefix of the ids; unique on the page. */
  id: string;
  title: string;
  /** Nodes as `treeNodes` gives them; the first is the start. */
  nodes: readonly TreeNode[];
}

export interface DrawnTree {
  svg: string;
  /** Of the view box, in drawing units. */
  width: number;
  height: number;
  /** How the sheet of A4 is held. */
  page: 'portrait' | 'landscape';
  /** Size of the smallest text on that sheet, CSS px; below 11 the tree is too big for one page. */
  smallestText: number;
}

/** What A4 and Letter both have room for within 10 mm, less a heading and the cautions, CSS px. */
const PAGES = {
  portrait: { width: 718, height: 850 },
  landscape: { width: 975, height: 590 },
} as const;

/** The least a text on the wall may be set in, CSS px. */
const LEAST_TEXT = 11;
/** Trees with more nodes came out well under that, however arranged; they are not tried. */
const MOST_NODES = 20;
/** A tree drawn larger than this only looks lost. */
const LARGEST = 1.6;

const ARRANGEMENTS: Arrangement[] = (['down', 'across'] as const).flatMap((direction) =>
  [110, 145, 180].map((textWidth) => ({ direction, textWidth })),
);

/**
 * The tree on one page. Of several arrangements, the one whose text comes out largest on A4; if even that is too
 * small to read on a wall, a sheet to read from top to bottom.
 * @throws RangeError if there is nothing to draw
 */
export function drawTree({ id, title, nodes }: TreeInput): DrawnTree {
  if (nodes.length === 0) throw new RangeError('A tree without a step cannot be drawn.');
  if (nodes.length > MOST_NODES) return drawInColumns({ id, title, nodes });
  const best = bestPlan(nodes);
  if (!best) return drawInColumns({ id, title, nodes });
  const { plan, page, scale } = best;
  const body =
    `<path class="way" d="${plan.ways.map((way) => drawWay(way, plan)).join('')}"/>` +
    `<path class="solid" d="${plan.ways.map((way) => arrowHead(way, plan)).join('')}"/>` +
    plan.ways.map(drawAnswer).join('') +
    plan.blocks.map(({ block, box }) => drawBlock(block, box.x, box.y)).join('');
  return {
    svg: picture(
      { id, kind: 'tree', title, description: describeTree(nodes), width: plan.width, height: plan.height },
      body,
    ),
    width: plan.width,
    height: plan.height,
    page,
    smallestText: SMALL * scale,
  };
}

/** Columns on a page: how many, and how wide in drawing units. Narrow ones come out larger but longer. */
const COLUMNS = (['portrait', 'landscape'] as const).flatMap((page) =>
  [1, 2, 3].flatMap((columns) =>
    [240, 265, 290, 315, 340, 376, 420].map((columnWidth) => ({ page, columns, columnWidth })),
  ),
);

/** The tree in columns, on the page where its text comes out larger. */
function drawInColumns(input: TreeInput): DrawnTree {
  const sheets = COLUMNS.map(({ page, columns, columnWidth }) => {
    const sheet = planSheet(input.nodes, columns, columnWidth);
    return {
      sheet,
      page,
      scale: Math.min(LARGEST, PAGES[page].width / sheet.width, PAGES[page].height / sheet.height),
    };
  });
  const { sheet, page, scale } = sheets.reduce((best, each) => (each.scale > best.scale ? each : best));
  return {
    svg: drawSheet(input, sheet),
    width: sheet.width,
    height: sheet.height,
    page,
    smallestText: SMALL * scale,
  };
}

interface FittedPlan {
  plan: TreePlan;
  page: DrawnTree['page'];
  scale: number;
}

/** The arrangement whose text comes out largest; undefined where in none of them it can be read on a wall. */
function bestPlan(nodes: readonly TreeNode[]): FittedPlan | undefined {
  let best: FittedPlan | undefined;
  for (const arrangement of ARRANGEMENTS) {
    // Laying out is what takes the time: left out where the longest way alone says that it cannot come out larger.
    const toBeat = best?.scale ?? LEAST_TEXT / SMALL;
    if (largestScale(nodes, arrangement) <= toBeat) continue;
    const plan = planTree(nodes, arrangement);
    for (const page of ['portrait', 'landscape'] as const) {
      const scale = Math.min(LARGEST, PAGES[page].width / plan.width, PAGES[page].height / plan.height);
      // Among equals the first: portrait before landscape, reading down before reading across.
      if (scale > (best?.scale ?? 0) + 1e-6) best = { plan, page, scale };
    }
  }
  return best && SMALL * best.scale >= LEAST_TEXT ? best : undefined;
}

/** What the scale cannot come above on either page, whatever the layout. */
function largestScale(nodes: readonly TreeNode[], arrangement: Arrangement): number {
  const along = arrangement.direction === 'down' ? 'height' : 'width';
  const length = leastLength(nodes, arrangement);
  return Math.min(LARGEST, Math.max(PAGES.portrait[along], PAGES.landscape[along]) / length);
}

/** S-curves that leave and arrive along the direction of reading. */
function drawWay({ points }: PlacedWay, { direction }: TreePlan): string {
  return points
    .map((to, index) => {
      const from = points[index - 1];
      if (!from) return `M${at(to.x, to.y)}`;
      if (direction === 'down' ? from.x === to.x : from.y === to.y) return `L${at(to.x, to.y)}`;
      return direction === 'down'
        ? curve(from, to, 0, (to.y - from.y) / 2)
        : curve(from, to, (to.x - from.x) / 2, 0);
    })
    .join('');
}

function curve(from: Point, to: Point, dx: number, dy: number): string {
  return `C${at(from.x + dx, from.y + dy)} ${at(to.x - dx, to.y - dy)} ${at(to.x, to.y)}`;
}

function arrowHead({ points }: PlacedWay, { direction }: TreePlan): string {
  const end = points.at(-1);
  if (!end) return '';
  return `M${at(end.x, end.y)}${direction === 'down' ? 'l-3.5 -7h7z' : 'l-7 -3.5v7z'}`;
}

/** The answer lies on its line. */
function drawAnswer({ answer }: PlacedWay): string {
  const { lines, box } = answer;
  const x = coordinate(box.x + box.width / 2);
  const words = lines.map(
    (line, index) =>
      `<tspan x="${x}" y="${coordinate(box.y + 11.5 + index * ANSWER_LINE)}">${escapeText(line)}</tspan>`,
  );
  const [left, top, width, height] = [box.x, box.y, box.width, box.height].map(coordinate);
  return `<path class="ground" d="M${left} ${top}h${width}v${height}h-${width}z"/><text class="answer">${words.join('')}</text>`;
}
