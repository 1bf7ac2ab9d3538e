/** A log file's text to a trace, or a message that says what to do. */
import { clockWords, median, readClock } from './clock.ts';
import {
  type Choice,
  type Column,
  type ColumnReading,
  formatWords,
  type Layout,
  layoutOf,
} from './layout.ts';
import { longFormOf, widened } from './long-form.ts';
import { readNumber, readSwitch } from './number-text.ts';
import { type OrderedRows, putInOrder } from './order.ts';
import { ROLE_KINDS, type Role, SIGNALS, type Signal, unitNamed, unitsFor } from './roles.ts';
import { blocks, type Delimiter, rowsOf } from './rows.ts';

/** One signal over time: seconds from the start, values in SI (a fan as written). No NaN. */
export interface Channel {
  time: Float64Array;
  value: Float64Array;
}

/** A road test: at least coolant temperature over time. */
export type Trace = { coolant: Channel } & Partial<Record<Signal, Channel>>;

/** What the reader took the file for, so that a person can see it and put it right. */
export interface LogReading {
  /** How the file is cut, in words. */
  words: string;
  layout: Omit<Layout, 'columns'>;
  columns: readonly Column[];
  roles: Partial<Record<Role, ColumnReading>>;
  rows: {
    /** Lines with something on them, headings left out. */
    read: number;
    kept: number;
    blank: number;
    /** No time or no figure that could be read. */
    junk: number;
  } & OrderedRows['counts'];
  /** Seconds. */
  duration: number;
  /** Usual time between two coolant readings, s. */
  sampling: number;
  /** What a person should know: assumptions, things left out. */
  remarks: readonly string[];
}

/** Why a file gives no trace. `understood` is there when columns were found and can be put right. */
export interface LogFault {
  id:
    | 'empty'
    | 'not-text'
    | 'no-table'
    | 'decimal-comma-between-commas'
    | 'no-time'
    | 'no-coolant'
    | 'no-readings'
    | 'broken';
  message: string;
  columns: readonly Column[];
  layout: Layout | undefined;
}

export type ReadLog = { ok: true; trace: Trace; understood: LogReading } | { ok: false; fault: LogFault };

/**
 * Read a log. A generator so that a page without a worker can stop between blocks: it yields the share read, 0 to 1.
 * Never throws, whatever the text.
 */
export function* readLog(text: string, choice: Choice = {}): Generator<number, ReadLog> {
  const whole = text.replace(/^\ufeff/, '');
  if (whole.trim() === '')
    return refuse('empty', 'The file is empty. Export the log again and choose that file.');
  if (isBinary(whole))
    return refuse(
      'not-text',
      'This is not a text file. Open it where it was made, save it as CSV or text, and choose that file.',
    );
  const long = longFormOf(whole, choice.delimiter);
  if (!long) return yield* readColumns(whole, choice, undefined);
  const { delimiter: _cut, ...chosen } = choice;
  return yield* readColumns(yield* widened(whole, long), chosen, long.delimiter);
}

function* readColumns(text: string, choice: Choice, long: Delimiter | undefined): Generator<number, ReadLog> {
  const layout = layoutOf(text, choice);
  if (!layout)
    return refuse(
      'no-table',
      'No columns of figures were found. A log needs one line a reading, with a time and a coolant temperature, cut by commas, semicolons or tabs.',
    );
  if (layout.commasTwice)
    return refuse(
      'decimal-comma-between-commas',
      'The lines have more cells than there are headings: the decimal commas look the same as the commas between columns. Export again with semicolons or tabs between columns, or with decimal points.',
      layout,
    );
  const { time, coolant } = layout.roles;
  const fault = missingColumn(layout);
  if (fault || !time || !coolant || !layout.clock) return fault ?? refuse('no-time', NO_TIME, layout);
  return yield* assemble(yield* readTable(text, layout, layout.clock), layout, long);
}

/** Runs a reading to its end in one go. */
export function finish(reading: Generator<number, ReadLog>): ReadLog {
  for (;;) {
    const step = reading.next();
    if (step.done) return step.value;
  }
}

const NO_TIME =
  'No column of times was found. Say which column holds the time: seconds, hh:mm:ss or date and time.';

function refuse(id: LogFault['id'], message: string, layout?: Layout): ReadLog {
  return { ok: false, fault: { id, message, columns: layout?.columns ?? [], layout } };
}

function missingColumn(layout: Layout): ReadLog | undefined {
  if (!layout.roles.time) return refuse('no-time', NO_TIME, layout);
  if (!layout.clock)
    return refuse(
      'no-time',
      `The column "${layout.columns[layout.roles.time.column]?.name}" cannot be read as times. Choose the column that holds seconds, hh:mm:ss or date and time.`,
      layout,
    );
  if (!layout.roles.coolant)
    return refuse(
      'no-coolant',
      'No column of coolant temperature was found. Say which column it is, or log again with it.',
      layout,
    );
  return undefined;
}

/** Zip, PDF, pictures and the like: many characters that no log writes. */
function isBinary(text: string): boolean {
  const start = text.slice(0, 2000);
  if (['PK\u0003\u0004', '%PDF', '\u0089PNG'].some((mark) => start.startsWith(mark))) return true;
  let odd = 0;
  for (const character of start) {
    const code = character.codePointAt(0) ?? 0;
    if (code < 9 || (code > 13 && code < 32) || code === 0xfffd) odd++;
  }
  return odd > 0.1 * start.length;
}

interface Table {
  seconds: Float64Array;
  /** By row, SI, NaN where there is nothing. */
  values: Map<Signal, Float64Array>;
  blank: number;
  junk: number;
}

function* readTable(
  text: string,
  layout: Layout,
  clock: NonNullable<Layout['clock']>,
): Generator<number, Table> {
  const { delimiter, mark, roles } = layout;
  const timeColumn = roles.time?.column ?? 0;
  const wanted = SIGNALS.flatMap((signal) => {
    const taken = roles[signal];
    return taken
      ? [{ signal, ...taken, read: ROLE_KINDS[signal].kind === 'switch' ? readSwitch : readNumber }]
      : [];
  });
  const lists = wanted.map((): number[] => []);
  const seconds: number[] = [];
  const counts = { blank: 0, junk: 0 };
  let row = 0;
  let done = 0;
  for (const block of blocks(text)) {
    const rows = rowsOf(block, delimiter);
    // The end of a block is the end of a line: what follows it is no row.
    if (rows.at(-1)?.join('').trim() === '') rows.pop();
    for (const cells of rows) {
      if (row++ < layout.firstData) continue;
      if (cells.every((cell) => cell.trim() === '')) {
        counts.blank++;
        continue;
      }
      const at = readClock(cells[timeColumn] ?? '', clock, mark);
      const figures = wanted.map(
        ({ column, unit, read }) => read(cells[column] ?? '', mark) * unit.factor + unit.offset,
      );
      if (!Number.isFinite(at) || !figures.some(Number.isFinite)) {
        counts.junk++;
        continue;
      }
      seconds.push(at);
      figures.forEach((figure, list) => {
        lists[list]?.push(figure);
      });
    }
    done += block.length;
    yield done / text.length;
  }
  return {
    seconds: Float64Array.from(seconds),
    values: new Map(wanted.map(({ signal }, at) => [signal, Float64Array.from(lists[at] ?? [])])),
    blank: counts.blank,
    junk: counts.junk,
  };
}

function* assemble(table: Table, layout: Layout, long: Delimiter | undefined): Generator<number, ReadLog> {
  const { clock } = layout;
  const wraps = clock?.kind === 'time of day' || clock?.kind === 'two parts';
  yield 1;
  const ordered = putInOrder(table.seconds, wraps);
  yield 1;
  const coolant = channelOf(table, 'coolant', ordered, 1);
  if (!coolant || coolant.time.length < 2)
    return refuse(
      'no-readings',
      'Fewer than two coolant readings with a time could be read. Check the columns, the unit of the time and the decimal mark, or log again.',
      layout,
    );
  const slowClock = clockInMinutes(coolant, layout);
  const factor = slowClock ? 60 : 1;
  const trace: Trace = {
    coolant: factor === 1 ? coolant : (channelOf(table, 'coolant', ordered, factor) ?? coolant),
  };
  const noAir: string[] = [];
  for (const signal of SIGNALS) {
    if (signal === 'coolant') continue;
    yield 1;
    const found = channelOf(table, signal, ordered, factor);
    const possible = found && withoutNoAir(signal, found);
    if (found && possible && possible.time.length < found.time.length)
      noAir.push(
        noAirText(layout.columns[layout.roles[signal]?.column ?? 0]?.name ?? signal, found, possible),
      );
    if (possible && possible.time.length > 0) trace[signal] = possible;
  }
  const beginning = Array.from(trace.coolant.time.subarray(0, 5000));
  const { columns, ...rest } = layout;
  const understood: LogReading = {
    words: formatWords(layout, long),
    layout: rest,
    columns,
    roles: layout.roles,
    rows: {
      read: table.seconds.length + table.junk,
      kept: ordered.rows.length,
      blank: table.blank,
      junk: table.junk,
      ...ordered.counts,
    },
    duration: trace.coolant.time.at(-1) ?? 0,
    sampling: median(beginning.slice(1).map((each, at) => each - (beginning[at] ?? each))),
    remarks: [],
  };
  const remarks = [...remarksOn(understood, slowClock), ...noAir];
  return { ok: true, trace, understood: { ...understood, remarks } };
}

/** One signal with its times. Rows without it are left out. */
function channelOf(
  { values }: Table,
  signal: Signal,
  ordered: OrderedRows,
  factor: number,
): Channel | undefined {
  const column = values.get(signal);
  if (!column) return undefined;
  const time = new Float64Array(ordered.rows.length);
  const value = new Float64Array(ordered.rows.length);
  let count = 0;
  for (let at = 0; at < ordered.rows.length; at++) {
    const figure = column[ordered.rows[at] ?? 0] ?? Number.NaN;
    if (!Number.isFinite(figure)) continue;
    time[count] = (ordered.time[at] ?? 0) * factor;
    value[count++] = figure;
  }
  return count === 0 ? undefined : { time: time.slice(0, count), value: value.slice(0, count) };
}

/**
 * What air can be, K: intake is warmed under the bonnet and by a turbocharger. A tool without the sensor writes an end of
 * the scale, 215 °C or −40 °C.
 */
const AIR: Partial<Record<Signal, readonly [number, number]>> = {
  ambient: [233.3, 330],
  intake: [233.3, 420],
};

function withoutNoAir(signal: Signal, channel: Channel): Channel {
  const limits = AIR[signal];
  if (!limits) return channel;
  const isAir = (at: number) => {
    const value = channel.value[at] ?? Number.NaN;
    return value > limits[0] && value < limits[1];
  };
  if (channel.value.every((_, at) => isAir(at))) return channel;
  return {
    time: channel.time.filter((_, at) => isAir(at)),
    value: channel.value.filter((_, at) => isAir(at)),
  };
}

function noAirText(name: string, all: Channel, possible: Channel): string {
  const left = all.time.length - possible.time.length;
  return possible.time.length === 0
    ? `"${name}" is no temperature of air; left out.`
    : `${left} ${left === 1 ? 'reading' : 'readings'} of "${name}" that no air has left out.`;
}

/** Fastest an engine with coolant in it warms, K/s: 100 kW into 50 kJ/K. */
const FASTEST_RISE = 2;

/** A clock whose unit nobody named counts minutes when the engine would otherwise warm faster than any can. */
function clockInMinutes({ time, value }: Channel, layout: Layout): boolean {
  const { clock, roles } = layout;
  const unnamed =
    (clock?.kind === 'count' && clock.unit.symbol === 's' && roles.time?.unitFrom === 'size') ||
    (clock?.kind === 'two parts' && clock.smaller === 1 && roles.time?.unitFrom !== 'person');
  if (!unnamed || time.length > 500) return false;
  const duration = time.at(-1) ?? 0;
  const low = Math.min(...value);
  const high = Math.max(...value);
  return (
    duration > 0 &&
    duration < 600 &&
    high - low > 20 &&
    (high - low) / duration > FASTEST_RISE / 4 &&
    time.length < duration + 2
  );
}

function remarksOn(understood: LogReading, slowClock: boolean): string[] {
  const { rows, roles, columns, layout } = understood;
  const name = (taken: ColumnReading) => `"${columns[taken.column]?.name}"`;
  const remarks: string[] = [];
  for (const signal of SIGNALS) {
    const taken = roles[signal];
    const { kind } = ROLE_KINDS[signal];
    if (taken?.unitFrom !== 'size' || kind === 'switch' || unitsFor(kind).length === 1) continue;
    const said = unitNamed(kind, columns[taken.column]?.unitText ?? '');
    remarks.push(
      `${name(taken)} ${said ? `says ${said.symbol}, which its numbers cannot be` : 'names no unit'}; taken as ${taken.unit.symbol}.`,
    );
  }
  if (slowClock)
    remarks.push(
      `The time is taken as ${layout.clock?.kind === 'two parts' ? 'hours and minutes' : 'minutes'}: as ${layout.clock ? clockWords(layout.clock) : 'seconds'} the engine would warm faster than any can.`,
    );
  const told: [number, (count: string) => string][] = [
    [rows.junk, (count) => `${count} without a time or a figure left out.`],
    [rows.backward, (count) => `${count} with a time that goes back left out.`],
    [rows.duplicate, (count) => `${count} with the same time as the one before left out.`],
    [rows.spread, (count) => `${count} under the same stamp as the one before, spread evenly to the next.`],
    [
      rows.otherRecording,
      (count) =>
        `There is more than one recording in the file: the longest is read, ${count} of others left out.`,
    ],
  ];
  for (const [count, say] of told)
    if (count > 0) remarks.push(say(count === 1 ? '1 line' : `${count} lines`));
  return remarks;
}
