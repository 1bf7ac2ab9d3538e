/** Signals brought to one even clock, so that they can be held against each other. */
import type { Channel, Trace } from './read/read-log.ts';
import { SIGNALS, type Signal } from './read/roles.ts';

export interface Grid {
  /** Seconds between two points. */
  step: number;
  length: number;
  /** SI by point; NaN where the log says nothing. */
  signals: { coolant: Float64Array } & Partial<Record<Signal, Float64Array>>;
  /** Coolant without jitter: a running mean over a quarter of a minute. */
  smooth: Float64Array;
}

/** Points at most: one a second up to four hours, wider apart for longer logs. */
const MOST_POINTS = 14_400;
/** Longest time without a reading that is drawn through, s: coolant by hand each minute, a slow fan column. */
const LONGEST_GAP = 150;
const SMOOTHING = 15;

/** The log on even steps of a second or more, so that it has no more points than can be judged in time. */
export function toGrid(trace: Trace): Grid {
  const end = trace.coolant.time.at(-1) ?? 0;
  const step = Math.max(1, Math.ceil(end / MOST_POINTS));
  // A point stands for what is nearest to it, so the last reading may want one after it.
  const length = Math.round(end / step) + 1;
  const coolant = resample(trace.coolant, step, length, true);
  const signals: Grid['signals'] = { coolant };
  for (const signal of SIGNALS) {
    const channel = trace[signal];
    if (channel && signal !== 'coolant') signals[signal] = resample(channel, step, length, signal !== 'fan');
  }
  return { step, length, signals, smooth: runningMean(coolant, Math.max(1, Math.round(SMOOTHING / step))) };
}

/** Mean of the readings around each point; between readings a straight line, or the last one for a switch. */
function resample({ time, value }: Channel, step: number, length: number, between: boolean): Float64Array {
  const out = new Float64Array(length).fill(Number.NaN);
  let next = 0;
  for (let at = 0; at < length; at++) {
    const moment = at * step;
    let sum = 0;
    let count = 0;
    while (next < time.length && (time[next] ?? 0) < moment + step / 2) {
      sum += value[next] ?? 0;
      count++;
      next++;
    }
    if (count > 0) {
      out[at] = sum / count;
      continue;
    }
    const [before, after] = [next - 1, next];
    const gap = (time[after] ?? Number.POSITIVE_INFINITY) - (time[before] ?? Number.NEGATIVE_INFINITY);
    if (before < 0 || gap > LONGEST_GAP) continue;
    const share = (moment - (time[before] ?? 0)) / gap;
    const from = value[before] ?? Number.NaN;
    out[at] = between ? from + share * ((value[after] ?? from) - from) : from;
  }
  return out;
}

/** @param half points on each side */
export function runningMean(values: Float64Array, half: number): Float64Array {
  const out = new Float64Array(values.length);
  let sum = 0;
  let count = 0;
  const add = (at: number, sign: 1 | -1) => {
    const value = values[at];
    if (value === undefined || Number.isNaN(value)) return;
    sum += sign * value;
    count += sign;
  };
  for (let at = 0; at < half; at++) add(at, 1);
  for (let at = 0; at < values.length; at++) {
    add(at + half, 1);
    add(at - half - 1, -1);
    out[at] = count > 0 && !Number.isNaN(values[at] ?? Number.NaN) ? sum / count : Number.NaN;
  }
  return out;
}

/** Middle value of a stretch, ends included. @returns NaN when nothing is there */
export function middleOf(values: Float64Array, from: number, to: number): number {
  const sorted = values
    .slice(Math.max(0, from), to + 1)
    .filter(Number.isFinite)
    .sort();
  return sorted[sorted.length >> 1] ?? Number.NaN;
}

/** Least and greatest of a stretch. */
export function extentOf(values: Float64Array, from: number, to: number): { low: number; high: number } {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let at = Math.max(0, from); at <= to && at < values.length; at++) {
    const value = values[at] ?? Number.NaN;
    if (value < low) low = value;
    if (value > high) high = value;
  }
  return { low, high };
}

/** Mean rise between two points, K/s. @returns NaN when an end is missing */
export function riseOver({ smooth, step }: Grid, from: number, to: number): number {
  if (to <= from) return Number.NaN;
  return ((smooth[to] ?? Number.NaN) - (smooth[from] ?? Number.NaN)) / ((to - from) * step);
}
