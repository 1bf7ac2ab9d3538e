/** A curve with a reading on it: freezing against strength, boiling against pressure, resistance against temperature. */
import type { Axis, Curve } from '../../calculators/declaration.ts';
import { coordinate, escapeText, line, picture } from './svg.ts';

export interface CurveInput {
  /** Prefix of the ids; unique on the page. */
  id: string;
  title: string;
  x: Axis;
  y: Axis;
  curves: readonly Curve[];
  points: readonly { x: number; y: number; label: string }[];
}

const SIZE = { width: 350, height: 240 };
const FRAME = { left: 46, right: 338, top: 26, bottom: 196 };

/** The drawing as an SVG element. Points outside the axes stand at the edge, where their label says the number. */
export function drawCurve({ id, title, x, y, curves, points }: CurveInput): string {
  const across = (value: number) => FRAME.left + share(value, x) * (FRAME.right - FRAME.left);
  const up = (value: number) => FRAME.bottom - share(value, y) * (FRAME.bottom - FRAME.top);
  const way = (list: Curve['points']) =>
    list.map(([a, b], at) => `${at === 0 ? 'M' : 'L'}${coordinate(across(a))} ${coordinate(up(b))}`).join('');
  const body = [
    ...y.ticks.map(
      (tick) =>
        `<g class="thin">${line(FRAME.left, up(tick), FRAME.right, up(tick))}</g><text class="tick" x="${FRAME.left - 6}" y="${coordinate(up(tick) + 4)}" text-anchor="end">${number(tick)}</text>`,
    ),
    ...x.ticks.map(
      (tick) =>
        `<text class="tick" x="${coordinate(across(tick))}" y="${FRAME.bottom + 16}" text-anchor="middle">${number(tick)}</text>`,
    ),
    `<text class="axis" x="${FRAME.left - 40}" y="14">${escapeText(y.label)}</text>`,
    `<text class="axis" x="${FRAME.right}" y="${FRAME.bottom + 34}" text-anchor="end">${escapeText(x.label)}</text>`,
    ...curves.map(({ points: list, upper }) =>
      upper ? `<path class="band" d="${way([...list, ...[...upper].reverse()])}Z"/>` : '',
    ),
    ...curves.map(
      ({ points: list, upper }) =>
        `<path class="heavy" d="${way(list)}"/>${upper ? `<path class="heavy" d="${way(upper)}"/>` : ''}`,
    ),
    ...points.map(({ x: a, y: b, label }) => {
      const [px, py] = [across(a), up(b)];
      const right = px < (FRAME.left + FRAME.right) / 2;
      return `<circle class="spot" cx="${coordinate(px)}" cy="${coordinate(py)}" r="5"/><text class="label" x="${coordinate(px + (right ? 10 : -10))}" y="${coordinate(Math.max(FRAME.top - 4, py - 8))}" text-anchor="${right ? 'start' : 'end'}">${escapeText(label)}</text>`;
    }),
  ].join('');
  const description = `${y.label} against ${x.label}. ${points.map(({ label }) => label).join('; ')}`;
  return picture({ id, kind: 'curve', title, description, ...SIZE }, body);
}

function share(value: number, { low, high }: Axis): number {
  return Math.min(1, Math.max(0, (value - low) / (high - low)));
}

function number(value: number): string {
  return String(value).replace('-', '\u2212');
}
