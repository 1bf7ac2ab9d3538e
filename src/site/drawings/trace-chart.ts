/**
 * The road test as a drawing: trace, expected band, the vehicle's figures as rungs on the axis, numbered events, road
 * speed and fan below. An own SVG in the style of the other drawings, not a canvas: it prints as lines, takes light,
 * dark and print colours from the style sheet, and its words are words. However long the log, there are two points a
 * column of the drawing.
 */
import { type Habit, METRIC } from '../../model/habit.ts';
import type { TraceEvent } from '../../trace/events.ts';
import type { TraceJudgement } from '../../trace/judge-trace.ts';
import { degrees } from '../../trace/say.ts';
import type { TraceVehicle } from '../../trace/vehicle.ts';
import { TEMPERATURE_STEPS, temperatureStep } from './ladder-scale.ts';
import { spread } from './spread.ts';
import { at, coordinate, escapeText, line, picture } from './svg.ts';

export interface TraceChart {
  id: string;
  title: string;
  description: string;
  judged: TraceJudgement;
  vehicle: TraceVehicle;
  events: readonly TraceEvent[];
  /** Seconds shown. */
  from: number;
  to: number;
  habit?: Habit;
  narrow?: boolean;
}

interface Frame {
  width: number;
  left: number;
  right: number;
  top: number;
  /** Foot of the temperatures, and of the road speed under them. */
  bottom: number;
  speedTop: number;
  speedBottom: number;
  height: number;
}

const WIDE: Frame = {
  width: 900,
  left: 46,
  right: 740,
  top: 20,
  bottom: 360,
  speedTop: 384,
  speedBottom: 444,
  height: 486,
};
const NARROW: Frame = {
  width: 350,
  left: 34,
  right: 262,
  top: 18,
  bottom: 280,
  speedTop: 300,
  speedBottom: 344,
  height: 382,
};

const ZERO = 273.15;

/** A judged log as SVG: curve, expected band, the vehicle’s marks on the axis. */
export function drawTrace(chart: TraceChart): string {
  const { id, title, description, judged, narrow = false, habit = METRIC } = chart;
  const frame = narrow ? NARROW : WIDE;
  const scale = scalesOf(chart, frame);
  const { grid, band } = judged;
  const parts = [
    grounds(frame),
    band ? bandPath(band.low, band.high, chart, scale, frame) : '',
    temperatureTicks(scale, frame, habit),
    timeTicks(chart, scale, frame),
    rungs(chart, scale, frame),
    `<path class="trace" d="${linePath(grid.smooth, chart, scale.across, scale.up, frame)}"/>`,
    speedPath(chart, scale, frame),
    fanStrip(chart, scale, frame),
    marks(chart, scale, frame),
  ];
  return picture(
    {
      id,
      kind: narrow ? 'trace narrow' : 'trace',
      title,
      description,
      width: frame.width,
      height: frame.height,
    },
    parts.join(''),
  );
}

/** How many seconds a drawing's column stands for, and back: for zooming by pointer. */
export function secondsAt(
  share: number,
  { from, to }: Pick<TraceChart, 'from' | 'to'>,
  narrow: boolean,
): number {
  const { left, right, width } = narrow ? NARROW : WIDE;
  return from + ((share * width - left) / (right - left)) * (to - from);
}

interface Scales {
  across(seconds: number): number;
  up(kelvin: number): number;
  low: number;
  high: number;
}

function scalesOf({ judged, vehicle, from, to }: TraceChart, frame: Frame): Scales {
  const { grid } = judged;
  const seen = grid.smooth
    .subarray(Math.floor(from / grid.step), Math.ceil(to / grid.step) + 1)
    .filter(Number.isFinite);
  const least = seen.reduce((low, each) => Math.min(low, each), vehicle.opens.low - 12);
  const most = seen.reduce((high, each) => Math.max(high, each), vehicle.fanOn.high + 4);
  const low = Math.floor((least - ZERO) / 10) * 10 + ZERO;
  const high = Math.ceil((most - ZERO) / 10) * 10 + ZERO;
  return {
    low,
    high,
    across: (seconds) =>
      frame.left + ((seconds - from) / Math.max(1, to - from)) * (frame.right - frame.left),
    up: (kelvin) => frame.bottom - ((kelvin - low) / (high - low)) * (frame.bottom - frame.top),
  };
}

function grounds({ left, right, bottom, speedBottom }: Frame): string {
  return `<path class="thin" d="${line(left, bottom, right, bottom)}${line(left, speedBottom, right, speedBottom)}"/>`;
}

/** Least and greatest of each column, so that nothing short is lost. */
function linePath(
  values: Float64Array,
  { judged: { grid }, from, to }: TraceChart,
  across: (seconds: number) => number,
  up: (value: number) => number,
  { left, right }: Frame,
): string {
  const columns = right - left;
  const perColumn = (to - from) / grid.step / columns;
  const first = Math.max(0, Math.floor(from / grid.step));
  const last = Math.min(values.length - 1, Math.ceil(to / grid.step));
  let data = '';
  let pen = false;
  const draw = (index: number) => {
    const value = values[index] ?? Number.NaN;
    if (!Number.isFinite(value)) {
      pen = false;
      return;
    }
    data += `${pen ? 'L' : 'M'}${at(across(index * grid.step), up(value))}`;
    pen = true;
  };
  if (perColumn <= 2) {
    for (let index = first; index <= last; index++) draw(index);
    return data;
  }
  for (let start = first; start <= last; start += perColumn) {
    const begin = Math.round(start);
    const end = Math.min(last, Math.round(start + perColumn) - 1);
    let [low, high] = [begin, begin];
    for (let index = begin; index <= end; index++) {
      const value = values[index] ?? Number.NaN;
      if (!(value >= (values[low] ?? Number.NaN))) low = index;
      if (!(value <= (values[high] ?? Number.NaN))) high = index;
    }
    draw(Math.min(low, high));
    if (low !== high) draw(Math.max(low, high));
  }
  return data;
}

function bandPath(
  low: Float64Array,
  high: Float64Array,
  chart: TraceChart,
  scale: Scales,
  frame: Frame,
): string {
  const { grid } = chart.judged;
  const every = Math.max(1, Math.round((chart.to - chart.from) / grid.step / 200));
  const first = Math.max(0, Math.floor(chart.from / grid.step));
  const last = Math.min(low.length - 1, Math.ceil(chart.to / grid.step));
  const within = (kelvin: number) => Math.min(frame.bottom, Math.max(frame.top, scale.up(kelvin)));
  const points: string[] = [];
  const back: string[] = [];
  for (let index = first; index <= last; index += every) {
    const x = scale.across(index * grid.step);
    points.push(at(x, within(high[index] ?? scale.high)));
    back.push(at(x, within(low[index] ?? scale.low)));
  }
  return points.length > 1
    ? `<path class="band" d="M${points.join('L')}L${back.reverse().join('L')}Z"/>`
    : '';
}

/** The left rail carries the temperature colours, as the ladder's does. */
function temperatureTicks({ low, high, up }: Scales, { left, right }: Frame, habit: Habit): string {
  const fahrenheit = habit.temperature === '°F';
  const shown = (kelvin: number) => (fahrenheit ? (kelvin - ZERO) * 1.8 + 32 : kelvin - ZERO);
  const inKelvin = (value: number) => (fahrenheit ? (value - 32) / 1.8 : value) + ZERO;
  const step = fahrenheit ? 20 : high - low > 100 ? 20 : 10;
  const marks: string[] = [];
  for (let value = Math.ceil(shown(low) / step) * step; value <= shown(high) + 0.01; value += step) {
    const y = up(inKelvin(value));
    marks.push(
      `<path class="faint" d="${line(left, y, right, y)}"/><text class="tick" x="${left - 8}" y="${coordinate(y + 4)}" text-anchor="end">${String(value).replace('-', '\u2212')}</text>`,
    );
  }
  const rail = TEMPERATURE_STEPS.map(([name, from], index) => {
    const bottom = Math.max(from + ZERO, low);
    const top = Math.min((TEMPERATURE_STEPS[index + 1]?.[1] ?? 999) + ZERO, high);
    return top > bottom ? `<path class="t-${name}" d="${line(left, up(bottom), left, up(top))}"/>` : '';
  });
  return `${marks.join('')}<g class="ladder-rail">${rail.join('')}</g><text class="tick" x="2" y="11">${fahrenheit ? '°F' : '°C'}</text>`;
}

function timeTicks(
  { from, to }: TraceChart,
  { across }: Scales,
  { bottom, left, right, speedBottom, top }: Frame,
): string {
  const wanted = (right - left) / 70;
  const minutes = (to - from) / 60;
  const step = [0.25, 0.5, 1, 2, 5, 10, 20, 30, 60, 120, 240].find((each) => minutes / each <= wanted) ?? 480;
  const marks: string[] = [];
  for (let minute = Math.ceil(from / 60 / step) * step; minute <= to / 60; minute += step) {
    const x = coordinate(across(minute * 60));
    marks.push(
      `<path class="faint" d="M${x} ${top}V${bottom}"/><text class="tick" x="${x}" y="${speedBottom + 17}" text-anchor="middle">${minute}</text>`,
    );
  }
  return `${marks.join('')}<text class="tick" x="${right}" y="${speedBottom + 33}" text-anchor="end">minutes</text>`;
}

/** The vehicle's figures on the axis. General ranges are dashed, as on the ladder. */
function rungs(
  { vehicle, habit = METRIC, narrow }: TraceChart,
  { up, low, high }: Scales,
  frame: Frame,
): string {
  const { lowLimit, opens, fanOn, stopAt } = vehicle;
  const wanted = [
    { figure: stopAt, words: narrow ? 'stop' : 'stop here', kelvin: stopAt.high },
    { figure: fanOn, words: narrow ? 'fan' : 'fan starts', kelvin: (fanOn.low + fanOn.high) / 2 },
    { figure: opens, words: narrow ? 'opens' : 'starts to open', kelvin: (opens.low + opens.high) / 2 },
    { figure: lowLimit, words: narrow ? 'too low' : 'too low at speed', kelvin: lowLimit.low },
  ].filter(({ kelvin }) => kelvin > low && kelvin < high);
  const size = narrow ? 15 : 20;
  const places = spread(
    wanted.map(({ kelvin }) => ({ wanted: up(kelvin) - size / 2, size })),
    frame.top - 10,
    frame.bottom + 10,
  );
  return wanted
    .map(({ figure, words, kelvin }, index) => {
      const y = up(kelvin);
      const label = (places[index] ?? y) + size / 2;
      const colour = `t-${temperatureStep(kelvin - ZERO)}`;
      const value = degrees(kelvin, habit);
      return (
        `<path class="ladder-rung ${figure.from === 'general' ? 'general' : figure.from} ${colour}" d="${line(frame.left, y, frame.right, y)}"/>` +
        `<path class="thin" d="M${at(frame.right, y)}L${at(frame.right + 8, label)}"/>` +
        `<text class="rung" x="${frame.right + 11}" y="${coordinate(label + 4)}"><tspan class="strong">${value}</tspan> ${escapeText(words)}</text>`
      );
    })
    .join('');
}

function speedPath(chart: TraceChart, { across }: Scales, frame: Frame): string {
  const { speed } = chart.judged.grid.signals;
  const words = (text: string) =>
    `<text class="tick" x="${frame.right + 11}" y="${frame.speedBottom - 4}">${text}</text>`;
  if (!speed) return words('no road speed');
  const mph = chart.habit?.speed === 'mph';
  const most = Math.max(
    speed.reduce((top, each) => Math.max(top, Number.isFinite(each) ? each : 0), 0),
    14,
  );
  const up = (value: number) => frame.speedBottom - (value / most) * (frame.speedBottom - frame.speedTop);
  return (
    `<path class="medium" d="${linePath(speed, chart, across, up, frame)}"/>` +
    words(`${mph ? 'mph' : 'km/h'}, to ${Math.round(most * (mph ? 2.23694 : 3.6))}`)
  );
}

/** A bar under the temperatures while the fan ran. */
function fanStrip({ judged, from, to }: TraceChart, { across }: Scales, { bottom, right }: Frame): string {
  const bars = judged.fan.runs
    .map((run) => ({ start: Math.max(from, run.from), end: Math.min(to, run.to ?? to) }))
    .filter(({ start, end }) => end > start)
    .map(
      ({ start, end }) =>
        `<path class="fan" d="${line(across(start), bottom + 8, Math.max(across(start) + 2, across(end)), bottom + 8)}"/>`,
    )
    .join('');
  return bars === '' ? '' : `${bars}<text class="tick" x="${right + 11}" y="${bottom + 12}">fan runs</text>`;
}

/** Numbers of the table's rows on the line; where they would touch, one stands above the other. */
function marks(
  { events, from, to, judged: { grid } }: TraceChart,
  { across, up }: Scales,
  frame: Frame,
): string {
  const placed: { x: number; y: number }[] = [];
  return events
    .map((event, index) => ({ event, number: index + 1 }))
    .filter(({ event }) => event.at >= from && event.at <= to && Number.isFinite(event.kelvin))
    .map(({ event, number }) => {
      const on = across(event.at);
      // Clear of the figures on the axis, where the log begins.
      const x = Math.max(frame.left + 10, on);
      // Where the log has a gap there is no line to stand on.
      const reading = grid.smooth[Math.round(event.at / grid.step)] ?? Number.NaN;
      const line = up(Number.isFinite(reading) ? reading : event.kelvin);
      let y = line - 16;
      for (
        let tries = 0;
        tries < 12 && placed.some((each) => Math.hypot(each.x - x, each.y - y) < 18);
        tries++
      )
        y -= 9;
      if (y < 10) {
        y = line + 18;
        for (
          let tries = 0;
          tries < 12 && placed.some((each) => Math.hypot(each.x - x, each.y - y) < 18);
          tries++
        )
          y += 9;
      }
      y = Math.min(frame.bottom - 8, y);
      placed.push({ x, y });
      return (
        `<path class="thin" d="M${at(on, line)}L${at(x, y)}"/><circle class="event" cx="${coordinate(x)}" cy="${coordinate(y)}" r="8.5"/>` +
        `<text class="event" x="${coordinate(x)}" y="${coordinate(y + 4)}" text-anchor="middle">${number}</text>`
      );
    })
    .join('');
}
