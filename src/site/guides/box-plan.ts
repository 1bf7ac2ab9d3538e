/** A plan of boxes and the lines between them: what is joined to what, with no claim of scale. */
import { type Box, coordinate, escapeText, type Point, picture, roundedLine } from '../drawings/svg.ts';

export interface PlanPart extends Box {
  /** One to three short lines, set in the middle of the box. */
  lines: readonly string[];
  /** Not ours to open: drawn with a broken edge. */
  closed?: boolean;
}

export interface PlanLine {
  points: readonly Point[];
  /** A hose or duct, a cable that carries the load, or a thin wire that carries the order. */
  kind: 'way' | 'load' | 'order';
}

export interface PlanNote extends Point {
  text: string;
}

export interface BoxPlan {
  title: string;
  /** The whole plan in words. */
  description: string;
  width: number;
  height: number;
  parts: readonly PlanPart[];
  lines: readonly PlanLine[];
  notes: readonly PlanNote[];
}

const LINE_HEIGHT = 14;
const CORNER = 8;
const PENS: Record<PlanLine['kind'], string> = { way: 'plan-way', load: 'heavy', order: 'thin' };

/** The plan as SVG. @param id prefix of the ids, unique on the page */
export function drawBoxPlan(id: string, plan: BoxPlan): string {
  const { title, description, width, height } = plan;
  return picture(
    { id, kind: 'guide', title, description, width, height },
    plan.lines
      .map(({ points, kind }) => `<path class="${PENS[kind]}" d="${roundedLine(points, CORNER)}"/>`)
      .join('') +
      plan.parts.map(drawPart).join('') +
      plan.notes
        .map(({ x, y, text }) => `<text class="small" x="${x}" y="${y}">${escapeText(text)}</text>`)
        .join(''),
  );
}

function drawPart({ x, y, width, height, lines, closed }: PlanPart): string {
  const middle = coordinate(x + width / 2);
  const first = y + height / 2 - ((lines.length - 1) * LINE_HEIGHT) / 2 + 4;
  const edge = closed ? 'part closed' : 'part';
  return (
    `<rect class="${edge}" x="${x}" y="${y}" width="${width}" height="${height}" rx="3"/>` +
    lines
      .map(
        (text, index) =>
          `<text x="${middle}" y="${coordinate(first + index * LINE_HEIGHT)}" text-anchor="middle">${escapeText(text)}</text>`,
      )
      .join('')
  );
}
