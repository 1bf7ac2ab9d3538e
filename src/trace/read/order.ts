/** Times put in order: past midnight, a log that starts over, rows that go back, many rows under one stamp. */
import { median } from './clock.ts';

export interface OrderedRows {
  /** Rows kept, in order. */
  rows: Int32Array;
  /** Seconds from the first kept row. */
  time: Float64Array;
  counts: {
    /** Rows dropped because their time goes back or leaps away and returns. */
    backward: number;
    /** Rows dropped because their time is there already. */
    duplicate: number;
    /** Rows under one stamp that were spread over the time to the next. */
    spread: number;
    /** Rows of other recordings in the same file. */
    otherRecording: number;
  };
}

const DAY = 86400;
/** Nothing logged for so long, s: what follows is another drive. */
const LONGEST_PAUSE = 1800;
/** A recording in a file of several has at least so many rows. */
const SHORTEST_RECORDING = 10;

/** @param raw seconds by row, NaN where unreadable @param wraps whether the clock starts over at midnight */
export function putInOrder(raw: Float64Array, wraps: boolean): OrderedRows {
  const counts = { backward: 0, duplicate: 0, spread: 0, otherRecording: 0 };
  const { rows, seconds } = readable(raw, wraps);
  const keep = withoutLeaps(rows, seconds, counts);
  const longest = longestRecording(keep.rows, keep.seconds, counts);
  const rising = risingOnly(longest.rows, longest.seconds, counts);
  const from = rising.seconds[0] ?? 0;
  return {
    rows: Int32Array.from(rising.rows),
    time: Float64Array.from(rising.seconds, (each) => each - from),
    counts,
  };
}

interface TimedRows {
  rows: number[];
  seconds: number[];
}

function readable(raw: Float64Array, wraps: boolean): TimedRows {
  const rows: number[] = [];
  const seconds: number[] = [];
  let days = 0;
  let last = Number.NaN;
  for (let row = 0; row < raw.length; row++) {
    const value = raw[row] ?? Number.NaN;
    if (!Number.isFinite(value)) continue;
    if (wraps && value - last < -0.5 * DAY) days++;
    last = value;
    rows.push(row);
    seconds.push(value + days * DAY);
  }
  return { rows, seconds };
}

/** Without a single stamp that leaps away while its neighbours agree. */
function withoutLeaps(rows: number[], seconds: number[], counts: OrderedRows['counts']): TimedRows {
  const kept: TimedRows = { rows: [], seconds: [] };
  for (let at = 0; at < seconds.length; at++) {
    const value = seconds[at] ?? 0;
    const before = seconds[at - 1] ?? Number.NEGATIVE_INFINITY;
    const after = seconds[at + 1] ?? Number.POSITIVE_INFINITY;
    if (at > 0 && before <= after && (value > after || value < before)) counts.backward++;
    else {
      kept.rows.push(rows[at] ?? 0);
      kept.seconds.push(value);
    }
  }
  return kept;
}

/** A clock that starts over or stood for long begins another recording; the longest one is read, a day of it at most. */
function longestRecording(rows: number[], seconds: number[], counts: OrderedRows['counts']): TimedRows {
  const starts = [0];
  let highest = seconds[0] ?? 0;
  for (let at = 1; at < seconds.length; at++) {
    const value = seconds[at] ?? 0;
    const stood = value - (seconds[at - 1] ?? value) > LONGEST_PAUSE;
    if (stood || (value < highest && goesOn(seconds, at, highest))) {
      starts.push(at);
      highest = value;
    }
    highest = Math.max(highest, value);
  }
  let best = { from: 0, to: seconds.length };
  if (starts.length > 1) {
    const parts = starts.map((from, part) => ({ from, to: starts[part + 1] ?? seconds.length }));
    best = parts.reduce((a, b) => (b.to - b.from > a.to - a.from ? b : a));
  }
  const first = seconds[best.from] ?? 0;
  const day = seconds.findIndex((value, at) => at >= best.from && at < best.to && value - first > DAY);
  const to = day === -1 ? best.to : day;
  counts.otherRecording = seconds.length - (to - best.from);
  return { rows: rows.slice(best.from, to), seconds: seconds.slice(best.from, to) };
}

function goesOn(seconds: readonly number[], from: number, highest: number): boolean {
  const next = seconds.slice(from, from + SHORTEST_RECORDING);
  return (
    next.length === SHORTEST_RECORDING &&
    next.every((value, at) => value < highest && value >= (next[at - 1] ?? value))
  );
}

/** Rising times. Many rows under one stamp come from a clock coarser than the log: they are spread evenly. */
function risingOnly(rows: number[], seconds: number[], counts: OrderedRows['counts']): TimedRows {
  const kept: TimedRows = { rows: [], seconds: [] };
  let same = 0;
  let last = Number.NEGATIVE_INFINITY;
  for (let at = 0; at < seconds.length; at++) {
    const value = seconds[at] ?? 0;
    if (value < last) {
      counts.backward++;
      continue;
    }
    if (value === last) same++;
    last = value;
    kept.rows.push(rows[at] ?? 0);
    kept.seconds.push(value);
  }
  if (same === 0) return kept;
  return same > 0.3 * kept.seconds.length ? spreadStamps(kept, counts) : withoutRepeats(kept, counts);
}

function withoutRepeats({ rows, seconds }: TimedRows, counts: OrderedRows['counts']): TimedRows {
  const isFirst = seconds.map((value, at) => value !== seconds[at - 1]);
  counts.duplicate = isFirst.filter((first) => !first).length;
  return { rows: rows.filter((_, at) => isFirst[at]), seconds: seconds.filter((_, at) => isFirst[at]) };
}

function spreadStamps({ rows, seconds }: TimedRows, counts: OrderedRows['counts']): TimedRows {
  const distinct = seconds.filter((value, at) => value !== seconds[at - 1]);
  const usual = median(distinct.slice(1).map((value, at) => value - (distinct[at] ?? value))) || 1;
  const even: number[] = [];
  for (let from = 0; from < seconds.length; ) {
    let to = from + 1;
    while (to < seconds.length && seconds[to] === seconds[from]) to++;
    const start = seconds[from] ?? 0;
    const room = Math.min(usual, (seconds[to] ?? start + usual) - start);
    for (let at = from; at < to; at++) even.push(start + ((at - from) / (to - from)) * room);
    counts.spread += to - from - 1;
    from = to;
  }
  return { rows, seconds: even };
}
