/**
 * A tree as a sheet to read from top to bottom: each step with its answers forking off, each answer with where it
 * leads. One column for phones; several for the wall, when a tree is too big to be drawn whole on one page.
 */
import { type Box, coordinate, escapeText, picture } from './svg.ts';
import { widthOf, wrapText } from './text-width.ts';
import { SMALL, TEXT } from './tree-blocks.ts';
import { answerLines, describeTree, isStep, marksOf, type NodeWay, type TreeNode } from './tree-nodes.ts';

/** Width of the column on a phone. */
const PHONE = 350;
const COLUMN_GAP = 26;
const MARGIN = 4;

/** Across a column: step number, question, answers, where they lead. */
const QUESTION = 26;
const FORK = 32;
const ANSWER = 46;
/** Share of the column where the targets begin. */
const TARGET_SHARE = 0.54;
/** An end of more causes has a box as wide as the column, under its answer, with the causes run together. */
const FEW = 3;
/** Room for a step's number at the right edge, and for the arrow to it. */
const NUMBER = 22;
const ARROW = 22;
/** Room for the letter in an end. */
const LETTER = 22;

const LINE = 15;
const STEP_GAP = 8;

type Style = '' | 'small' | 'strong';

interface SheetText {
  x: number;
  /** First baseline. */
  y: number;
  lines: string[];
  style: Style;
  /** What it is, for the test that nothing overlaps. */
  name: string;
}

/** One step with its answers; coordinates from its own top left corner. */
interface Entry {
  height: number;
  texts: SheetText[];
  /** Path data: thin rules, forks, arrow heads. */
  rules: string[];
  forks: string[];
  heads: string[];
  ends: Box[];
}

export interface TreeSheet {
  width: number;
  height: number;
  columnWidth: number;
  entries: { entry: Entry; x: number; y: number }[];
}

/** The tree set in columns of a width, filled one after the other to about the same height. */
export function planSheet(nodes: readonly TreeNode[], columns: number, columnWidth = PHONE): TreeSheet {
  const marks = marksOf(nodes);
  const byId = new Map(nodes.map((node) => [node.id, node]));
  // A tree that is nothing but an end still has something to say.
  const steps = nodes.some(isStep) ? nodes.filter(isStep) : nodes;
  const setter = new StepSetter(columnWidth, marks, byId);
  const entries = steps.map((step) => setter.set(step));

  const limit = columnHeight(entries, columns);
  let column = 0;
  let y = 0;
  let height = 0;
  const placed = entries.map((entry) => {
    if (y > 0 && y + entry.height > limit + 0.01) {
      column += 1;
      y = 0;
    }
    const place = { entry, x: column * (columnWidth + COLUMN_GAP), y: y + MARGIN };
    y += entry.height;
    height = Math.max(height, y);
    return place;
  });
  return {
    width: columns * columnWidth + (columns - 1) * COLUMN_GAP,
    height: height + 2 * MARGIN,
    columnWidth,
    entries: placed,
  };
}

/** The least height at which the entries, kept in order and whole, fit into so many columns. */
function columnHeight(entries: readonly Entry[], columns: number): number {
  const needed = (limit: number) => {
    let count = 1;
    let y = 0;
    for (const { height } of entries) {
      if (y > 0 && y + height > limit) {
        count += 1;
        y = 0;
      }
      y += height;
    }
    return count;
  };
  let low = Math.max(0, ...entries.map(({ height }) => height));
  let high = entries.reduce((sum, { height }) => sum + height, 0);
  while (high - low > 0.5) {
    const middle = (low + high) / 2;
    if (needed(middle) <= columns) high = middle;
    else low = middle;
  }
  return high;
}

/** Sets the steps of a tree one after the other; it knows which ends have been said in full. */
class StepSetter {
  private readonly width: number;
  private readonly marks: ReadonlyMap<string, string>;
  private readonly byId: ReadonlyMap<string, TreeNode>;
  private readonly target: number;
  private readonly shown = new Set<string>();
  private entry: Entry = emptyEntry();
  /** Of the step that is being set. */
  private mark = '';

  constructor(width: number, marks: ReadonlyMap<string, string>, byId: ReadonlyMap<string, TreeNode>) {
    this.width = width;
    this.marks = marks;
    this.byId = byId;
    this.target = Math.round(width * TARGET_SHARE);
  }

  set(step: TreeNode): Entry {
    this.entry = emptyEntry();
    this.mark = this.marks.get(step.id) ?? '';
    this.put(this.mark, 'strong', 2, 0, QUESTION, `number ${this.mark}`);
    let y = 0;
    for (const [text, style] of questionOf(step))
      y = this.put(text, style, QUESTION, y, this.width - 4 - QUESTION, `question ${this.mark}`);
    y += 3;
    const branches: number[] = [];
    if (step.kind === 'prove') {
      branches.push(y + 8);
      y = this.toRepair(step.proven, y);
    }
    for (const way of step.ways) {
      if (!this.leadsToStep(way)) y += 3;
      branches.push(y + 8);
      y = this.leadOn(way, y);
    }
    this.fork(branches);
    this.entry.height = y + STEP_GAP;
    return this.entry;
  }

  private fork(branches: readonly number[]): void {
    const last = branches.at(-1);
    if (last === undefined) return;
    this.entry.forks.push(`M${FORK} ${coordinate((branches[0] ?? 0) - 10)}V${coordinate(last)}`);
    for (const branch of branches) this.entry.forks.push(`M${FORK} ${coordinate(branch)}H${ANSWER - 6}`);
  }

  private put(text: string, style: Style, x: number, y: number, room: number, name: string): number {
    const lines = wrapText(text, room, style === 'small' ? SMALL : TEXT, style === 'strong');
    this.entry.texts.push({ x, y: y + 12, lines, style, name });
    return y + lines.length * LINE;
  }

  private leadsToStep({ to }: NodeWay): boolean {
    const node = this.byId.get(to);
    return node !== undefined && isStep(node);
  }

  /** The answers of a way, a line, and where it leads; returns where the next may begin. */
  private leadOn(way: NodeWay, top: number): number {
    const name = `${this.mark} to ${this.marks.get(way.to)}`;
    const node = this.byId.get(way.to);
    if (node?.kind === 'end' && node.causes.length > FEW && !this.shown.has(node.id)) {
      const below = this.phrase(answerLines(way), top, this.width - 5, name).bottom;
      const x = ANSWER + 10;
      this.entry.rules.push(`M${x} ${coordinate(below + 1)}v6`);
      this.entry.heads.push(`M${x} ${coordinate(below + 9)}l-3.5 -7h7z`);
      return this.targetOf(way.to, ANSWER, below + 11, name);
    }
    // A number takes little room, so the answers before it may run on.
    const atMost = this.leadsToStep(way) ? this.width - NUMBER : this.target;
    const { below, at } = this.answer(answerLines(way), top, atMost, name);
    return Math.max(below, this.targetOf(way.to, at, top, name));
  }

  /** A cause that is proven leads out of the tree, to its repair. */
  private toRepair(repair: string, top: number): number {
    const { below, at } = this.answer(['Proven'], top, this.target, `${this.mark} proven`);
    const bottom = this.put(repair, 'small', at, top, this.width - at - 5, `repair ${this.mark}`);
    return Math.max(below, bottom + 2);
  }

  /** @returns where the answers end, and how far to the right what they lead to stands */
  private answer(phrases: string[], top: number, atMost: number, name: string) {
    const { lines, bottom } = this.phrase(phrases, top, atMost - ARROW, name);
    const longest = Math.max(...lines.map((line) => widthOf(line, SMALL)));
    const at = Math.max(this.target, Math.ceil(ANSWER + longest + ARROW));
    const from = ANSWER + widthOf(lines[0] ?? '', SMALL) + 4;
    this.entry.rules.push(`M${coordinate(from)} ${coordinate(top + 8)}H${at - 12}`);
    this.entry.heads.push(`M${at - 6} ${coordinate(top + 8)}l-7 -3.5v7z`);
    return { below: bottom + 2, at };
  }

  private phrase(phrases: string[], top: number, right: number, name: string) {
    const lines = phrases.flatMap((each) => wrapText(each, right - ANSWER, SMALL));
    this.entry.texts.push({ x: ANSWER, y: top + 12, lines, style: 'small', name: `answer ${name}` });
    return { lines, bottom: top + lines.length * LINE };
  }

  /** A step by its number; an end in full where it is first led to, by its leading cause after that. */
  private targetOf(id: string, at: number, top: number, name: string): number {
    const node = this.byId.get(id);
    const letter = this.marks.get(id) ?? '';
    if (!node || isStep(node)) return this.put(letter, 'strong', at, top, 40, `target ${name}`) + 2;
    this.put(letter, 'strong', at + 5, top, LETTER, `letter ${name}`);
    const x = at + LETTER;
    const room = this.width - x - 5;
    const [leading = '', ...others] = leadsTo(node);
    const again = this.shown.has(id);
    this.shown.add(id);
    let y = this.put(leading, again ? 'small' : 'strong', x, top, room, `target ${name}`);
    if (again) return y + 2;
    const rest = others.length < FEW ? others : [others.join('; ')];
    for (const cause of rest) y = this.put(`or: ${cause}`, 'small', x, y, room, `target ${name}`);
    this.entry.ends.push({ x: at, y: top - 2, width: this.width - at - 1, height: y - top + 5 });
    return y + 7;
  }
}

function emptyEntry(): Entry {
  return { height: 0, texts: [], rules: [], forks: [], heads: [], ends: [] };
}

function leadsTo(node: TreeNode): string[] {
  return node.kind === 'end' ? node.causes : node.kind === 'tree' ? [`Go on in: ${node.text}`] : [];
}

function questionOf(step: TreeNode): [string, Style][] {
  switch (step.kind) {
    case 'test':
      return [[step.text, '']];
    case 'layout':
      return [[`By layout: ${step.text}`, '']];
    case 'prove':
      return [[`Prove: ${step.text}`, 'strong']];
    default:
      return leadsTo(step).map((cause, index) =>
        index === 0 ? [cause, 'strong'] : [`or: ${cause}`, 'small'],
      );
  }
}

/** The sheet as an SVG element. */
export function drawSheet(
  { id, title, nodes }: { id: string; title: string; nodes: readonly TreeNode[] },
  sheet: TreeSheet,
): string {
  const rules = sheet.entries
    .filter(({ y }) => y > MARGIN)
    .map(({ x, y }) => `M${coordinate(x)} ${coordinate(y - 4)}h${sheet.columnWidth}`);
  const body =
    path('thin', rules) +
    sheet.entries
      .map(
        ({ entry, x, y }) =>
          `<g transform="translate(${coordinate(x)} ${coordinate(y)})">${drawEntry(entry)}</g>`,
      )
      .join('');
  return picture(
    { id, kind: 'tree', title, description: describeTree(nodes), width: sheet.width, height: sheet.height },
    body,
  );
}

function drawEntry({ texts, rules, forks, heads, ends }: Entry): string {
  const boxes = ends.map(({ x, y, width, height }) => {
    const [left, top, across, down] = [x, y, width, height].map(coordinate);
    return `M${left} ${top}h${across}v${down}h-${across}z`;
  });
  return (
    path('thin', rules) +
    path('medium', forks) +
    path('solid', heads) +
    path('part', boxes) +
    texts.map(drawText).join('')
  );
}

function path(classes: string, data: readonly string[]): string {
  return data.length === 0 ? '' : `<path class="${classes}" d="${data.join('')}"/>`;
}

function drawText({ x, y, lines, style }: SheetText): string {
  const [first = '', ...rest] = lines;
  const more = rest.map((line) => `<tspan x="${coordinate(x)}" dy="${LINE}">${escapeText(line)}</tspan>`);
  const classes = style === '' ? '' : ` class="${style}"`;
  return `<text${classes} x="${coordinate(x)}" y="${coordinate(y)}">${escapeText(first)}${more.join('')}</text>`;
}

/** The space every text on the sheet takes. */
export function sheetTextBoxes(sheet: TreeSheet): (Box & { name: string })[] {
  return sheet.entries.flatMap(({ entry, x, y }) =>
    entry.texts.map((text) => {
      const size = text.style === 'small' ? SMALL : TEXT;
      return {
        name: text.name,
        x: x + text.x,
        y: y + text.y - 10,
        width: Math.max(...text.lines.map((line) => widthOf(line, size, text.style === 'strong'))),
        height: 13 + (text.lines.length - 1) * LINE,
      };
    }),
  );
}

/**
 * A tree as a vertical outline for phones, 350 units wide. Needs no layout package.
 * @throws RangeError if there is nothing to draw
 */
export function drawTreeOutline(input: { id: string; title: string; nodes: readonly TreeNode[] }): string {
  if (input.nodes.length === 0) throw new RangeError('A tree without a step cannot be drawn.');
  return drawSheet(input, planSheet(input.nodes, 1));
}
