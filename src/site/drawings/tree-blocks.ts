/** The blocks of a drawn tree: how each kind of node is set in type, and how much room it takes. */
import { coordinate, escapeText } from './svg.ts';
import { widthOf, wrapText } from './text-width.ts';
import type { TreeNode } from './tree-nodes.ts';

/** Size of questions and causes, and of answers and small words. */
export const TEXT = 13;
export const SMALL = 12;
const LINE = 15.5;
/** Room on the left for the step’s number or the end’s letter. */
const MARK_ROOM = 21;
const PAD = 4;

interface BlockLine {
  text: string;
  style: '' | 'small' | 'strong';
}

/** A node wrapped into a given width. */
export interface Block {
  node: TreeNode;
  mark: string;
  lines: BlockLine[];
  width: number;
  height: number;
}

/** Wraps a node; the block is as narrow as its longest line allows. */
export function blockOf(node: TreeNode, mark: string, textWidth: number): Block {
  const lines = linesOf(node, textWidth);
  const widest = Math.max(...lines.map((line) => lineWidth(line)));
  return {
    node,
    mark,
    lines,
    width: MARK_ROOM + Math.ceil(widest) + PAD,
    height: lines.length * LINE + 2 * PAD,
  };
}

function linesOf(node: TreeNode, width: number): BlockLine[] {
  const set = (text: string, style: BlockLine['style']): BlockLine[] =>
    wrapText(text, width, style === 'small' ? SMALL : TEXT, style === 'strong').map((line) => ({
      text: line,
      style,
    }));
  switch (node.kind) {
    case 'test':
      return set(node.text, '');
    case 'layout':
      return set(`By layout: ${node.text}`, 'small');
    case 'prove':
      return [...set(`Prove: ${node.text}`, 'strong'), ...set(`Proven: ${node.proven}`, 'small')];
    case 'tree':
      return [...set('Go on in:', 'small'), ...set(node.text, 'strong')];
    case 'end':
      return node.causes.flatMap((cause, index) =>
        index === 0 ? set(cause, 'strong') : set(`or: ${cause}`, 'small'),
      );
  }
}

function lineWidth({ text, style }: BlockLine): number {
  return widthOf(text, style === 'small' ? SMALL : TEXT, style === 'strong');
}

/** A block with its top left corner at a point. */
export function drawBlock(block: Block, left: number, top: number): string {
  const { node, mark, lines, width, height } = block;
  const x = coordinate(left + MARK_ROOM);
  const baseline = (index: number) => coordinate(top + PAD + index * LINE + 11.5);
  const words = lines.map(
    ({ text, style }, index) =>
      `<tspan${style === '' ? '' : ` class="${style}"`} x="${x}" y="${baseline(index)}">${escapeText(text)}</tspan>`,
  );
  const bottom = coordinate(top + height);
  const across = `M${coordinate(left)} ${bottom}h${coordinate(width)}`;
  const frames = {
    test: `<path class="thin" d="${across}"/>`,
    layout: `<path class="medium" d="M${coordinate(left)} ${coordinate(top + height + 3)}v-3h${coordinate(width)}v3"/>`,
    prove: `<path class="thin" d="${across}m0 -2.5h${coordinate(-width)}"/>`,
    tree: `<path class="thin" d="${across}"/>`,
    end: `<rect class="part" x="${coordinate(left)}" y="${coordinate(top)}" width="${coordinate(width)}" height="${coordinate(height)}" rx="3"/>`,
  };
  const sign = `<tspan class="strong" x="${coordinate(left + (node.kind === 'end' ? 6 : 1))}" y="${baseline(0)}">${mark}</tspan>`;
  return `${frames[node.kind]}<text>${sign}${words.join('')}</text>`;
}
