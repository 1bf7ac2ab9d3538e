/** A curve with a reading on it: freezing against strength, boiling against pressure, resistance against temperature. */
import type { Axis, Curve } from '../../calculators/declaration.ts';
import { type Habit, METRIC, US } from '../../model/habit.ts';
import { readersUnit } from '../../model/readers-unit.ts';
import { findUnit, fromSI, toSI } from '../../model/units.ts';
import { at, coordinate, escapeText, line, picture } from './svg.ts';
import { widthOf } from './text-width.ts';

export interface CurveInput {
  /** Prefix of the ids; unique on the page. */
  id: string;
  title: string;
  x: Axis;
  y: Axis;
  /** A dashed one is told from another without its label. */
  curves: readonly (Curve & { dashed?: boolean })[];
  /** A reading each; its words stand above it, or below where a rising curve would run through them. */
  points: readonly { x: number; y: number; label: string; below?: boolean }[];
  /** Units the reader wants on the axes. */
  habit?: Habit;
}

const SIZE = { width: 350, height: 250 };
const FRAME = { left: 48, right: 340, top: 28, bottom: 204 };
const LABEL_SIZE = 14;

/** The drawing as an SVG element. A point outside the axes is not drawn; the description still says it. */
export function drawCurve({ id, title, x, y, curves, points, habit = METRIC }: CurveInput): string {
  const across = scaleOf(x, habit, FRAME.left, FRAME.right);
  const up = scaleOf(y, habit, FRAME.bottom, FRAME.top);
  const way = (list: Curve['points']) =>
    list.map(([a, b], index) => `${index === 0 ? 'M' : 'L'}${at(across.place(a), up.place(b))}`).join('');
  const body = [
    ...curves.map(({ points: list, upper }) =>
      upper ? `<path class="band" d="${way([...list, ...[...upper].reverse()])}Z"/>` : '',
    ),
    ...up.ticks.map(
      ({ where, text }) =>
        `<path class="thin" d="${line(FRAME.left, where, FRAME.right, where)}"/><text class="tick" x="${FRAME.left - 6}" y="${coordinate(where + 4)}" text-anchor="end"${up.mark}>${text}</text>`,
    ),
    ...across.ticks.map(
      ({ where, text }) =>
        `<path class="thin" d="${line(where, FRAME.bottom, where, FRAME.bottom + 4)}"/><text class="tick" x="${coordinate(where)}" y="${FRAME.bottom + 18}" text-anchor="middle"${across.mark}>${text}</text>`,
    ),
    `<text class="axis" x="2" y="14"${up.mark}>${escapeText(`${y.label}, ${up.unit}`)}</text>`,
    `<text class="axis" x="${FRAME.right}" y="${FRAME.bottom + 36}" text-anchor="end"${across.mark}>${escapeText(`${x.label}, ${across.unit}`)}</text>`,
    ...curves.flatMap(({ points: list, upper, dashed }) =>
      [list, ...(upper ? [upper] : [])].map(
        (each) => `<path class="heavy${dashed ? ' dashed' : ''}" d="${way(each)}"/>`,
      ),
    ),
    ...points
      .filter((point) => isOn(x, point.x) && isOn(y, point.y))
      .map(({ x: a, y: b, label, below }) => spot(across.place(a), up.place(b), label, below)),
  ].join('');
  const description = `${y.label} against ${x.label}. ${points.map(({ label }) => label).join('; ')}`;
  return picture({ id, kind: 'curve', title, description, ...SIZE }, body);
}

/** The reading: a dot and its words on the side where there is room. */
function spot(x: number, y: number, label: string, below = false): string {
  const width = widthOf(label, LABEL_SIZE, true);
  const right = x + 10 + width <= FRAME.right;
  const left = x - 10 - width >= 2;
  const [anchor, from] = right ? ['start', x + 10] : left ? ['end', x - 10] : ['end', FRAME.right];
  const above = !below && y - 10 >= FRAME.top + 4;
  return `<circle class="spot" cx="${coordinate(x)}" cy="${coordinate(y)}" r="6"/><text class="label" x="${coordinate(from)}" y="${coordinate(above ? y - 10 : y + 20)}" text-anchor="${anchor}">${escapeText(label)}</text>`;
}

interface Scale {
  /** Where a value in the axis's own unit stands. */
  place(value: number): number;
  ticks: { where: number; text: string }[];
  /** Symbol of the unit the numbers are in. */
  unit: string;
  /** The same as an attribute, by which a page writes the numbers in the reader's units; none where no reader has another. */
  mark: string;
}

function scaleOf(axis: Axis, habit: Habit, from: number, to: number): Scale {
  const own = findUnit(axis.unit);
  const shown = readersUnit(axis.unit, habit);
  if (!own) throw new Error(`No unit is called ${axis.unit}`);
  const bend = (value: number) => (axis.ratio ? Math.log(value) : value);
  const [low, high] = [bend(axis.low), bend(axis.high)];
  const place = (value: number) => from + ((bend(value) - low) / (high - low)) * (to - from);
  const inShown = (value: number) => fromSI(toSI(value, own), shown);
  const inOwn = (value: number) => fromSI(toSI(value, shown), own);
  const numbers = axis.ratio ? ratioTicks : evenTicks;
  const ticks = numbers(inShown(axis.low), inShown(axis.high)).map((value) => ({
    where: place(inOwn(value)),
    text: String(Number(value.toPrecision(6))).replace('-', '\u2212'),
  }));
  const mark = readersUnit(axis.unit, US) === own ? '' : ` data-in="${shown.symbol}"`;
  return { place, ticks, unit: shown.symbol, mark };
}

/** Round numbers from low to high, five to eight of them. */
function evenTicks(low: number, high: number): number[] {
  const rough = (high - low) / 6;
  const ten = 10 ** Math.floor(Math.log10(rough));
  const step = ten * ([1, 2, 2.5, 5, 10].find((each) => each * ten >= rough) ?? 10);
  const first = Math.ceil(low / step - 1e-9);
  const count = Math.floor(high / step + 1e-9) - first + 1;
  return Array.from({ length: count }, (_, index) => (first + index) * step);
}

/** Ones, and twos and fives while there is room, of each power of ten between. */
function ratioTicks(low: number, high: number): number[] {
  const steps = high / low > 2000 ? [1] : [1, 2, 5];
  const ticks: number[] = [];
  for (let ten = 10 ** Math.floor(Math.log10(low)); ten <= high; ten *= 10)
    for (const step of steps) if (step * ten >= low && step * ten <= high) ticks.push(step * ten);
  return ticks;
}

function isOn({ low, high }: Axis, value: number): boolean {
  return value >= low && value <= high;
}
