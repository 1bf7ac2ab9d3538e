/** How a log is laid out: delimiter, decimal mark, the line with the names, the line with the units, the first data. */
import { type ClockForm, clockFormOf, clockWords } from './clock.ts';
import { type DecimalMark, decimalMarkOf, readNumber, readSwitch } from './number-text.ts';
import { type LogUnit, ROLE_KINDS, ROLES, type Role, unitNamed, unitsFor } from './roles.ts';
import { DELIMITER_WORDS, type Delimiter, delimiterOf, rowsOf, usualWidth } from './rows.ts';
import { plainWords } from './words.ts';

export interface Column {
  index: number;
  /** As the file calls it, or "column 3". */
  name: string;
  /** Unit text from the header or the line under it; empty when there is none. */
  unitText: string;
  /** A few cells, to recognise it by. */
  samples: readonly string[];
}

/** What a column was taken for. */
export interface ColumnReading {
  column: number;
  unit: LogUnit;
  /** Why this unit: named by the file, said by the person, or judged by the size of the numbers. */
  unitFrom: 'file' | 'person' | 'size';
}

export interface Layout {
  delimiter: Delimiter;
  mark: DecimalMark;
  /** Lines before the data, counted in rows of the file. */
  firstData: number;
  columns: readonly Column[];
  roles: Partial<Record<Role, ColumnReading>>;
  clock: ClockForm | undefined;
  /** Lines hold more figures than there are headings, cut by commas: the decimal mark is a comma too. */
  commasTwice: boolean;
}

/** What a person has put right. Anything left out is judged by the reader. */
export interface Choice {
  delimiter?: Delimiter;
  mark?: DecimalMark;
  /** Column of each role, counted from 0; null for "not in this log". */
  columns?: Partial<Record<Role, number | null>>;
  /** Unit symbol of each role. */
  units?: Partial<Record<Role, string>>;
}

/** Rows looked at to judge the layout. */
const SAMPLE_ROWS = 400;
const SAMPLE_TEXT = 1 << 17;

/** Judge the layout from the beginning of a log and a piece of its middle. @returns undefined when it is no table */
export function layoutOf(text: string, choice: Choice): Layout | undefined {
  const start = text.slice(0, SAMPLE_TEXT);
  const delimiter = choice.delimiter ?? delimiterOf(start.slice(0, 1 << 14));
  if (!delimiter) return undefined;
  const rows = rowsOf(start, delimiter).slice(0, SAMPLE_ROWS);
  // The first minute can lie: blank cells, a sensor still at its resting value.
  const half = text.length >> 1;
  const later =
    text.length > 2 * SAMPLE_TEXT
      ? rowsOf(text.slice(half, half + (SAMPLE_TEXT >> 1)), delimiter).slice(1, -1)
      : [];
  const mark = choice.mark ?? markOf([...rows, ...later]);
  const { width } = usualWidth(rows.filter((row) => row.length > 1));
  const firstData = firstDataRow(rows, width, mark);
  if (firstData === undefined) return undefined;
  const data = [...rows.slice(firstData), ...later].filter((row) => row.length > 1);
  const columns = columnsOf(rows, firstData, width, data, mark);
  const cells = (column: number) => data.map((row) => row[column] ?? '');
  const roles = rolesOf(columns, cells, mark, choice);
  const time = roles.time;
  const clock = time && clockFormOf(cells(time.column), clockUnit(columns[time.column], choice), mark);
  const commasTwice = delimiter === ',' && moreThanNamed(rows.slice(0, firstData), data, mark);
  return { delimiter, mark, firstData, columns, roles, clock, commasTwice };
}

/** Whether the lines go on with figures past the last heading. */
function moreThanNamed(above: readonly string[][], data: readonly string[][], mark: DecimalMark): boolean {
  const named = above.findLast((row) => row.length > 1 && row.every((cell) => !isFigure(cell, mark)));
  const last = named?.findLastIndex((cell) => cell.trim() !== '') ?? -1;
  if (last < 1) return false;
  return (
    data.filter((row) => row.slice(last + 1).some((cell) => isFigure(cell, mark))).length > 0.7 * data.length
  );
}

function clockUnit(column: Column | undefined, choice: Choice): string {
  return choice.units?.time ?? column?.unitText ?? '';
}

function markOf(rows: readonly string[][]): DecimalMark {
  return decimalMarkOf(rows.flat());
}

function isFigure(cell: string, mark: DecimalMark): boolean {
  return Number.isFinite(readNumber(cell, mark)) || /\d{1,3}:\d{2}/.test(cell);
}

/** The first row of the usual width that is mostly figures and is followed by such rows. */
function firstDataRow(rows: readonly string[][], width: number, mark: DecimalMark): number | undefined {
  const isData = (row: string[] | undefined) => {
    if (!row || Math.abs(row.length - width) > 1) return false;
    const filled = row.filter((cell) => cell.trim() !== '');
    return filled.length > 0 && filled.filter((cell) => isFigure(cell, mark)).length >= 0.5 * filled.length;
  };
  const found = rows.findIndex(
    (row, at) => isData(row) && (at + 1 >= rows.length || isData(nextFilled(rows, at))),
  );
  return found === -1 ? undefined : found;
}

/** The next row with more than one cell: a lone word between is no reading and no heading. */
function nextFilled(rows: readonly string[][], at: number): string[] | undefined {
  return rows.slice(at + 1).find((row) => row.length > 1 && row.some((cell) => cell.trim() !== ''));
}

function columnsOf(
  rows: readonly string[][],
  firstData: number,
  width: number,
  data: readonly string[][],
  mark: DecimalMark,
): Column[] {
  const above = rows.slice(0, firstData).filter((row) => row.length >= Math.max(2, width - 1));
  const words = (row: string[] | undefined) =>
    row?.filter((cell) => cell.trim() !== '' && !isFigure(cell, mark)) ?? [];
  const named = above.filter(
    (row) => words(row).length >= 0.5 * row.filter((cell) => cell.trim() !== '').length,
  );
  const last = named.at(-1);
  const unitRow = named.length > 1 && isUnitRow(words(last)) ? last : undefined;
  const header = unitRow ? named.at(-2) : last;
  return Array.from({ length: width }, (_, index) => {
    const heading = header?.[index]?.trim().replace(/\s+/g, ' ').slice(0, 80) ?? '';
    const filled = data.map((row) => row[index]?.trim() ?? '').filter((cell) => cell !== '');
    return {
      index,
      name: heading === '' ? `column ${index + 1}` : heading,
      unitText:
        unitRow?.[index]?.replace(/[[\]()]/g, '').trim() || unitInHeading(heading) || unitInCells(filled),
      samples: filled.slice(0, 3).map((cell) => cell.slice(0, 30)),
    };
  });
}

function isUnit(text: string): boolean {
  return (['time', 'temperature', 'speed', 'rotation', 'share'] as const).some((kind) =>
    unitNamed(kind, text),
  );
}

/** A heading that is a unit and nothing else. A single letter is a name as well as not; only the second is usual. */
function isUnitAlone(heading: string): boolean {
  return isUnit(heading) && (heading.length > 1 || heading === 's');
}

/** Most of its words are units. */
function isUnitRow(words: readonly string[]): boolean {
  const units = words.filter(isUnit);
  return units.length > 0 && units.length >= 0.5 * words.length;
}

/** `Coolant (°F)`, `ECT [degC]`, `Speed, mph`, `coolant_c`, `Time ms`. */
function unitInHeading(heading: string): string {
  if (isUnitAlone(heading)) return heading;
  const bracket = /[([]\s*([^()[\]]{1,12}?)\s*[)\]]\s*$/.exec(heading)?.[1];
  if (bracket !== undefined) return bracket;
  const tail = /[\s,_/:-]\s*([°º\ufffd]?\s?[a-z%/]{1,10})\s*$/i.exec(heading)?.[1] ?? '';
  return isUnit(tail) ? tail : '';
}

/** A unit stuck to the numbers. */
function unitInCells(cells: readonly string[]): string {
  return /^[-+\u2212]?[\d.,]+\s*([°º\ufffd]?[a-z%/]{1,8})$/i.exec(cells[0] ?? '')?.[1] ?? '';
}

function rolesOf(
  columns: readonly Column[],
  cells: (column: number) => string[],
  mark: DecimalMark,
  choice: Choice,
): Layout['roles'] {
  const roles: Layout['roles'] = {};
  const used = new Set<number>();
  const take = (role: Role, column: number) => {
    used.add(column);
    const { kind } = ROLE_KINDS[role];
    const said = choice.units?.[role];
    const written = unitNamed(kind, columns[column]?.unitText ?? '');
    const named = written && canBe(written, cells(column), mark) ? written : undefined;
    const chosen = said === undefined ? undefined : unitNamed(kind, said);
    const unit = chosen ?? named ?? unitBySize(role, cells(column), mark);
    if (unit) roles[role] = { column, unit, unitFrom: chosen ? 'person' : named ? 'file' : 'size' };
  };
  for (const role of ROLES) {
    const chosen = choice.columns?.[role];
    if (typeof chosen === 'number' && columns[chosen]) take(role, chosen);
  }
  const scored = ROLES.filter((role) => choice.columns?.[role] === undefined)
    .flatMap((role) =>
      columns.map((column) => ({ role, column: column.index, rank: nameRank(role, column) })),
    )
    .filter(({ rank }) => rank !== undefined)
    .sort((a, b) => (a.rank ?? 9) - (b.rank ?? 9) || a.column - b.column);
  for (const { role, column } of scored) {
    if (roles[role] || used.has(column) || !fits(role, cells(column), mark)) continue;
    take(role, column);
  }
  // A sheet by hand often names the units alone.
  for (const role of ['time', 'coolant', 'speed', 'rpm'] as const) {
    const named = columns.filter(
      ({ index, name }) =>
        !used.has(index) &&
        isUnitAlone(name) &&
        unitNamed(ROLE_KINDS[role].kind, name) &&
        fits(role, cells(index), mark),
    );
    if (!roles[role] && choice.columns?.[role] === undefined && named.length === 1 && named[0])
      take(role, named[0].index);
  }
  if (!roles.time && choice.columns?.time === undefined) {
    const rising = columns.find(({ index }) => !used.has(index) && rises(cells(index), mark));
    if (rising) take('time', rising.index);
  }
  if (!roles.coolant && choice.columns?.coolant === undefined) {
    // Two columns and no names: the one that is not the time.
    const left = columns.filter(({ index }) => !used.has(index) && fits('coolant', cells(index), mark));
    if (left.length === 1 && left[0] && nameless(left[0])) take('coolant', left[0].index);
  }
  return roles;
}

function nameless({ name, index }: Column): boolean {
  return name === `column ${index + 1}` || !/[a-z]{2}/i.test(name);
}

function nameRank(role: Role, column: Column): number | undefined {
  const words = plainWords(column.name);
  const { names, not } = ROLE_KINDS[role];
  if (not?.test(words)) return undefined;
  const rank = names.findIndex((name) => name.test(words));
  return rank === -1 ? undefined : rank;
}

/** Whether most filled cells can be read as what the role wants. */
function fits(role: Role, column: readonly string[], mark: DecimalMark): boolean {
  const { kind } = ROLE_KINDS[role];
  if (kind === 'time') return clockFormOf(column, '', mark) !== undefined;
  const filled = column.filter((cell) => cell.trim() !== '');
  const read = kind === 'switch' ? readSwitch : readNumber;
  return (
    filled.length > 0 &&
    filled.filter((cell) => Number.isFinite(read(cell, mark))).length > 0.4 * filled.length
  );
}

function rises(column: readonly string[], mark: DecimalMark): boolean {
  const form = clockFormOf(column, '', mark);
  if (!form || column.length < 3) return false;
  if (form.kind !== 'count') return true;
  const numbers = column.map((cell) => readNumber(cell, mark)).filter(Number.isFinite);
  const steps = numbers.slice(1).map((value, at) => value - (numbers[at] ?? value));
  return steps.filter((step) => step > 0).length > 0.9 * steps.length;
}

/** In SAE J1979 a temperature is one byte less 40: −40 to 215 °C (from memory). Kelvin under a heading of °C move above it all along. */
const HIGHEST_CELSIUS = 215;

/** Whether the numbers can be in the unit their heading names. */
function canBe({ symbol }: LogUnit, column: readonly string[], mark: DecimalMark): boolean {
  const numbers = column.map((cell) => readNumber(cell, mark)).filter(Number.isFinite);
  return symbol !== '°C' || numbers.some((number) => number <= HIGHEST_CELSIUS) || new Set(numbers).size < 3;
}

/** The unit the size of the numbers speaks for. */
function unitBySize(role: Role, column: readonly string[], mark: DecimalMark): LogUnit | undefined {
  const { kind } = ROLE_KINDS[role];
  const units = unitsFor(kind);
  const numbers = column
    .map((cell) => readNumber(cell, mark))
    .filter(Number.isFinite)
    .sort((a, b) => a - b);
  const high = numbers[Math.floor(0.95 * (numbers.length - 1))] ?? 0;
  const middle = numbers[numbers.length >> 1] ?? 0;
  const called = (symbol: string) => units.find((each) => each.symbol === symbol);
  if (kind === 'temperature') {
    if (middle > 240 && high < 420) return called('K');
    // No coolant thermometer passes 140 °C on a running engine; 195 °F is every warm one.
    return called(role === 'coolant' && high > 140 ? '°F' : '°C');
  }
  if (kind === 'share') return called(high > 1.5 ? '%' : '0 to 1');
  return units[0];
}

/**
 * One line a fact, in words: what the reader took the file for.
 * @param long delimiter of a file of one reading a line, before it was brought into columns
 */
export function formatWords({ delimiter, mark, clock }: Layout, long?: Delimiter): string {
  const decimals = mark === ',' ? 'decimal comma' : 'decimal point';
  const time = clock ? `, time as ${clockWords(clock)}` : '';
  const cut = long ? 'One reading a line with its name, cells' : 'Columns';
  return `${cut} cut by ${DELIMITER_WORDS[long ?? delimiter]}, ${decimals}${time}`;
}
