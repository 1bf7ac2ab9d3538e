/** The temperature ladder: every temperature that matters on one vehicle, in order, on one scale. */
import {
  inUnit,
  JOINT,
  type LadderScale,
  ladderScale,
  SQUEEZE,
  TEMPERATURE_STEPS,
  type TemperatureUnit,
  temperatureStep,
  ticks,
} from './ladder-scale.ts';
import { spread } from './spread.ts';
import { at, type Box, coordinate, escapeText, line, picture } from './svg.ts';
import { widthOf, wrapText } from './text-width.ts';

/** One temperature, or a range, and where it comes from. */
export interface Rung {
  id: string;
  /** What happens there, in words. */
  label: string;
  /** °C; the same twice for a single figure. */
  low: number;
  high: number;
  /** A figure of this vehicle, the general range shown in its place, or computed from other figures. */
  kind: 'vehicle' | 'general' | 'computed';
  /** A few words more: what it was computed from, or when it holds. */
  note?: string;
}

/** A reading drawn onto the ladder. */
export interface Marker {
  /** The reading, °C. */
  celsius: number;
  /** What it is: "You are here". */
  label: string;
  /** Draw the distance to this rung. */
  to?: {
    rung: string;
    /** Words beside the distance while the reading is under the rung, and once it is over. */
    below: string;
    above: string;
  };
}

export interface LadderInput {
  /** Prefix of the ids; unique on the page. */
  id: string;
  /** Name of the picture, with the vehicle. */
  title: string;
  rungs: readonly Rung[];
  unit?: TemperatureUnit;
  /** For a phone: 350 units wide instead of 480. */
  narrow?: boolean;
  marker?: Marker;
}

/** A label as it is placed: for drawing, and for the test that no two overlap. */
export interface LadderLabel {
  id: string;
  celsius: number;
  number: string;
  widest: string;
  unit: string;
  /** Lines of words, then lines in smaller type. */
  words: string[];
  small: string[];
  box: Box;
}

interface Sizes {
  width: number;
  /** Columns: where the ladder begins and where the words end. */
  ladder: number;
  number: number;
  words: number;
  small: number;
}

const NARROW: Sizes = { width: 350, ladder: 36, number: 20, words: 13, small: 11.5 };
const WIDE: Sizes = { width: 480, ladder: 40, number: 25, words: 16, small: 13 };

const MARGIN = 14;
const FOOT = 34;
/** A lane inside the ladder for one band. */
const LANE = 10;
const LADDER_LEAST = 46;
const LEADER = 26;

/**
 * The ladder as an SVG element. Text and lines take their colours from drawings.css and ladder.css.
 * @throws RangeError if a figure is not a number, a range is upside down, or the marker names no rung
 */
export function drawLadder(input: LadderInput): string {
  check(input);
  const unit = input.unit ?? '°C';
  const plan = planLadder(input);
  const { scale, labels, bands, sizes, right, left } = plan;
  const y = (celsius: number) => MARGIN + scale.down(celsius);

  const parts = [
    rails(scale, left, right, y),
    scaleTicks(scale, unit, left, y),
    bands.map((band) => drawBand(band, y)).join(''),
    input.rungs
      .filter((rung) => rung.low === rung.high)
      .map((rung) => drawRung(rung, left, right, y(rung.low)))
      .join(''),
    input.marker ? drawMarker(input, left, right, y) : '',
    labels.map((label) => drawLabel(label, plan, y)).join(''),
    joint(left, right, y(JOINT)),
    footnote(sizes, plan.height, unit),
  ];
  return picture(
    {
      id: input.id,
      kind: input.narrow ? 'ladder' : 'ladder wide',
      title: input.title,
      description: describe(input, unit),
      width: sizes.width,
      height: plan.height,
    },
    parts.join(''),
  );
}

interface Band {
  rung: Rung;
  x: number;
}

interface LadderPlan {
  scale: LadderScale;
  sizes: Sizes;
  /** The two rails. */
  left: number;
  right: number;
  bands: Band[];
  labels: LadderLabel[];
  height: number;
}

/** Where everything on the ladder goes. */
export function planLadder(input: LadderInput): LadderPlan {
  const sizes = input.narrow ? NARROW : WIDE;
  const unit = input.unit ?? '°C';
  const { rungs, marker } = input;
  const scale = ladderScale([
    ...rungs.flatMap((rung) => [rung.low, rung.high]),
    ...(marker ? [marker.celsius] : []),
  ]);

  const left = sizes.ladder;
  const first = left + (marker?.to ? 22 : 9);
  const lanes = lanesOf(rungs.filter((rung) => rung.low !== rung.high));
  const bands = lanes.map(({ rung, lane }) => ({ rung, x: first + lane * LANE }));
  const right = Math.max(left + LADDER_LEAST, ...bands.map((band) => band.x + LANE));

  const wanted = [...rungs.map((rung) => rungLabel(rung, unit)), ...markerLabels(input, unit)].sort(
    (a, b) => b.celsius - a.celsius,
  );
  const x = right + LEADER;
  const wordsAt = wordsColumn(wanted, sizes, right);
  const labels = wanted.map((label) => {
    const words = wrapText(label.label, sizes.width - wordsAt - 2, sizes.words);
    const small = label.note ? wrapText(label.note, sizes.width - wordsAt - 2, sizes.small) : [];
    const height = Math.max(
      sizes.number * 1.12,
      words.length * sizes.words * 1.2 + small.length * sizes.small * 1.2 + 3,
    );
    return { ...label, words, small, height: height + 4 };
  });
  const places = spread(
    labels.map((label) => ({
      wanted: MARGIN + scale.down(label.celsius) - middle(sizes),
      size: label.height,
    })),
    2,
    MARGIN + scale.height + MARGIN,
  );
  const placed = labels.map((label, index) => ({
    id: label.id,
    celsius: label.celsius,
    number: label.number,
    widest: label.widest,
    unit: label.unit,
    words: label.words,
    small: label.small,
    box: { x, y: places[index] ?? 0, width: sizes.width - x, height: label.height - 4 },
  }));
  const lowest = Math.max(MARGIN + scale.height, ...placed.map((label) => label.box.y + label.box.height));
  return { scale, sizes, left, right, bands, labels: placed, height: lowest + FOOT };
}

/** From the top of a label to the middle of its number, where the leader points. */
function middle(sizes: Sizes): number {
  return sizes.number * 0.62;
}

/** Bands side by side where they overlap: each in the first lane that is free. */
function lanesOf(rungs: readonly Rung[]): { rung: Rung; lane: number }[] {
  const taken: number[] = [];
  return [...rungs]
    .sort((a, b) => a.low - b.low || a.high - b.high)
    .map((rung) => {
      const free = taken.findIndex((high) => high + 0.8 < rung.low);
      const lane = free === -1 ? taken.length : free;
      taken[lane] = rung.high;
      return { rung, lane };
    });
}

function originWords({ kind, low, high }: Rung): string {
  if (kind === 'general') return low === high ? 'general' : 'general range';
  return kind === 'computed' ? 'computed' : '';
}

interface LabelText {
  id: string;
  celsius: number;
  number: string;
  /** The number in degrees Fahrenheit, which are the longer ones. */
  widest: string;
  unit: string;
  label: string;
  note: string;
}

function rungLabel(rung: Rung, unit: TemperatureUnit): LabelText {
  return {
    id: rung.id,
    celsius: (rung.low + rung.high) / 2,
    number: rangeText(rung.low, rung.high, unit),
    widest: rangeText(rung.low, rung.high, '°F'),
    unit,
    label: rung.label,
    note: [originWords(rung), rung.note ?? ''].filter((each) => each !== '').join(', '),
  };
}

function markerLabels({ marker, rungs }: LadderInput, unit: TemperatureUnit): LabelText[] {
  if (!marker) return [];
  const reading = {
    id: 'marker',
    celsius: marker.celsius,
    number: numberText(inUnit(marker.celsius, unit)),
    widest: numberText(inUnit(marker.celsius, '°F')),
    unit,
    label: marker.label,
    note: '',
  };
  const target = rungs.find((rung) => rung.id === marker.to?.rung);
  if (!marker.to || !target) return [reading];
  const distance = marginTo(marker, target);
  const margin = {
    id: 'margin',
    celsius: (marker.celsius + nearEdge(marker, target)) / 2,
    number: numberText(Math.abs(distance) * (unit === '°F' ? 1.8 : 1)),
    widest: numberText(Math.abs(distance) * 1.8),
    unit,
    label: distance >= 0 ? marker.to.below : marker.to.above,
    note: '',
  };
  return [reading, margin];
}

/** The edge of the rung a reading meets first. */
function nearEdge(marker: Marker, target: Rung): number {
  return marker.celsius > target.high ? target.high : target.low;
}

/** Kelvin from the reading up to the rung; negative once it is past. */
function marginTo(marker: Marker, target: Rung): number {
  return nearEdge(marker, target) - marker.celsius;
}

function numberText(value: number): string {
  const rounded = Math.round(value);
  return String(rounded === 0 ? 0 : rounded).replace('-', '\u2212');
}

function rangeText(low: number, high: number, unit: TemperatureUnit): string {
  const from = numberText(inUnit(low, unit));
  const to = numberText(inUnit(high, unit));
  if (from === to) return from;
  // "−37 to −30": an en dash between minus signs cannot be read.
  return low < 0 ? `${from} to ${to}` : `${from}–${to}`;
}

/** Room of number and unit, in degrees Fahrenheit too: a page that is read in them has the same drawing. Digits are no wider in bold. */
function numberExtent(label: { number: string; widest: string; unit: string }, sizes: Sizes): number {
  return widthOf(label.widest, sizes.number) + 2 + widthOf(label.unit, sizes.small);
}

function colour(celsius: number): string {
  return `t-${temperatureStep(celsius)}`;
}

/** The left rail carries the colour scale; the right one is a plain line. */
function rails(scale: LadderScale, left: number, right: number, y: (celsius: number) => number): string {
  const colours = TEMPERATURE_STEPS.map(([name, from], index) => {
    const low = Math.max(from, scale.bottom);
    const high = Math.min(TEMPERATURE_STEPS[index + 1]?.[1] ?? scale.top, scale.top);
    return `<path class="t-${name}" d="${line(left, y(low), left, y(high))}"/>`;
  });
  return (
    `<g class="ladder-rail">${colours.join('')}</g>` +
    `<path class="heavy" d="${line(right, y(scale.bottom), right, y(scale.top))}"/>`
  );
}

function scaleTicks(
  scale: LadderScale,
  unit: TemperatureUnit,
  left: number,
  y: (celsius: number) => number,
): string {
  const edge = left - 5;
  const marks = ticks(scale, unit);
  const lines = marks.map(({ celsius, text }) => line(edge, y(celsius), edge - (text ? 5 : 3), y(celsius)));
  const numbers = marks
    .filter(({ text }) => text !== '')
    .map(
      ({ celsius, text }) =>
        `<text x="${edge - 7}" y="${coordinate(y(celsius) + 3.5)}" data-in="${unit}">${text}</text>`,
    );
  return `<path class="thin" d="${lines.join('')}"/><g class="ladder-scale">${numbers.join('')}</g>`;
}

function drawBand({ rung, x }: Band, y: (celsius: number) => number): string {
  const top = y(rung.high);
  return (
    `<rect class="ladder-band ${rung.kind} ${colour((rung.low + rung.high) / 2)}" x="${coordinate(x)}" ` +
    `y="${coordinate(top)}" width="${LANE - 3}" height="${coordinate(y(rung.low) - top)}"/>`
  );
}

function drawRung(rung: Rung, left: number, right: number, y: number): string {
  return `<path class="ladder-rung ${rung.kind} ${colour(rung.low)}" d="${line(left, y, right, y)}"/>`;
}

/** A pointer on the rail, and a measuring line from it to the rung it is held against. */
function drawMarker(
  { marker, rungs }: LadderInput,
  left: number,
  right: number,
  y: (celsius: number) => number,
): string {
  if (!marker) return '';
  const here = y(marker.celsius);
  const pointer = `M${at(left - 4, here)}l-13 -7v14z`;
  let drawn = `<path class="solid" d="${pointer}"/><path class="ladder-here" d="${line(left - 4, here, right, here)}"/>`;
  const target = rungs.find((rung) => rung.id === marker.to?.rung);
  if (target) {
    const there = y(nearEdge(marker, target));
    const x = left + 12;
    const up = there < here ? 1 : -1;
    // No room for heads when reading and rung nearly meet.
    const heads =
      Math.abs(here - there) > 16
        ? `M${at(x - 3.5, there + up * 7)}L${at(x, there + up)}l3.5 ${up * 6}` +
          `M${at(x - 3.5, here - up * 7)}L${at(x, here - up)}l3.5 ${-up * 6}`
        : '';
    drawn += `<path class="medium" d="${line(x, here, x, there)}${heads}"/>`;
  }
  return drawn;
}

function drawLabel(label: LadderLabel, plan: LadderPlan, y: (celsius: number) => number): string {
  const { sizes, right, bands } = plan;
  const { x, y: top } = label.box;
  const anchor = y(label.celsius);
  const lead = top + middle(sizes);
  const band = bands.find((each) => each.rung.id === label.id);
  const start = band ? band.x + LANE - 3 : label.id === 'margin' ? plan.left + 12 : right;
  const bend = right + 5;
  const leader =
    `M${at(start, anchor)}H${coordinate(bend)}` +
    (Math.abs(lead - anchor) < 0.5 ? '' : `L${at(x - 8, lead)}`) +
    `H${coordinate(x - 4)}`;
  const baseline = top + sizes.number * 0.97;
  const marked = label.id === 'margin' ? '' : ` data-in="${label.unit}"`;
  const wordsAt = coordinate(wordsColumn(plan.labels, sizes, right));
  const words = label.words.map(
    (words, index) =>
      `<tspan x="${wordsAt}" y="${coordinate(baseline + index * sizes.words * 1.2)}">${escapeText(words)}</tspan>`,
  );
  const below = baseline + (label.words.length - 1) * sizes.words * 1.2;
  const small = label.small.map(
    (words, index) =>
      `<tspan class="small" x="${wordsAt}" y="${coordinate(below + (index + 1) * sizes.small * 1.2)}">${escapeText(words)}</tspan>`,
  );
  return (
    `<path class="thin" d="${leader}"/>` +
    `<text${label.id === 'marker' ? ' class="here"' : ''} x="${coordinate(x)}" y="${coordinate(baseline)}"><tspan class="number"${marked}>${label.number}</tspan>` +
    `<tspan class="small" dx="2"${marked}>${label.unit}</tspan>${words.join('')}${small.join('')}</text>`
  );
}

/** Where the words begin: beside the widest number. */
function wordsColumn(
  labels: readonly { number: string; widest: string; unit: string }[],
  sizes: Sizes,
  right: number,
): number {
  return right + LEADER + Math.max(0, ...labels.map((label) => numberExtent(label, sizes))) + 8;
}

/** Two strokes across both rails where the scale changes. */
function joint(left: number, right: number, y: number): string {
  const gap = (x: number) => `<path class="ladder-gap" d="${line(x - 6, y + 1, x + 6, y - 5)}"/>`;
  const strokes = (x: number) => line(x - 6, y + 4, x + 6, y - 2) + line(x - 6, y - 2, x + 6, y - 8);
  return `${gap(left)}${gap(right)}<path class="medium" d="${strokes(left)}${strokes(right)}"/>`;
}

function footnote(sizes: Sizes, height: number, unit: TemperatureUnit): string {
  const y = height - 8;
  const words = `Below ${numberText(inUnit(JOINT, unit))} ${unit} the scale is squeezed ${coordinate(SQUEEZE)} times.`;
  return (
    `<path class="medium" d="${line(12, y - 1, 24, y - 7)}${line(12, y + 4, 24, y - 2)}"/>` +
    `<text class="small" x="${sizes.ladder - 6}" y="${coordinate(y)}">${words}</text>`
  );
}

/** The ladder in a sentence per rung, hottest first. */
function describe({ rungs, marker }: LadderInput, unit: TemperatureUnit): string {
  const figures = [...rungs]
    .sort((a, b) => b.low + b.high - a.low - a.high)
    .map((rung) => {
      const label = rungLabel(rung, unit);
      return `${label.label} ${label.number} ${unit}${label.note === '' ? '' : ` (${label.note})`}`;
    });
  const here = marker
    ? markerLabels({ id: '', title: '', rungs, marker }, unit).map(
        (label) => `${label.label} ${label.number} ${unit}`,
      )
    : [];
  return `From hot to cold: ${[...figures, ...here].join('; ')}.`;
}

function check({ rungs, marker }: LadderInput): void {
  for (const { id, low, high } of rungs) {
    if (!Number.isFinite(low) || !Number.isFinite(high)) {
      throw new RangeError(`Rung "${id}" has no temperature: leave it out, or give both low and high in °C.`);
    }
    if (low > high) {
      throw new RangeError(`Rung "${id}" is upside down: low ${low} °C is above high ${high} °C.`);
    }
  }
  if (marker && !Number.isFinite(marker.celsius)) {
    throw new RangeError('The marker has no temperature: leave the marker out until there is a reading.');
  }
  const target = marker?.to?.rung;
  if (target !== undefined && !rungs.some((rung) => rung.id === target)) {
    throw new RangeError(
      `The marker is held against "${target}", which is not on the ladder: ${rungs.map((rung) => rung.id).join(', ')}.`,
    );
  }
}
