/**
 * Logs of one reading a line, with its name: `0.5;Coolant temperature;83;°C`. They are brought into columns, a line for
 * each time and a column for each name, and read on like any other.
 */
import { clockFormOf } from './clock.ts';
import { decimalMarkOf, readNumber } from './number-text.ts';
import { ROLE_KINDS, ROLES, unitNamed } from './roles.ts';
import { blocks, type Delimiter, delimiterOf, rowsOf, usualWidth } from './rows.ts';
import { plainWords } from './words.ts';

export interface LongForm {
  delimiter: Delimiter;
  /** Columns of the file, counted from 0. */
  time: number;
  name: number;
  value: number;
  unit: number | undefined;
  /** Names of the readings in the order met, each with the unit beside it or none. */
  names: readonly { name: string; unit: string }[];
}

/** Text looked at, and columns a line of this kind has. */
const SAMPLE_TEXT = 1 << 16;
const WIDTHS = [3, 8] as const;
/** Names kept as columns: all of the usual ones, and the first of the others. */
const MOST_NAMES = 24;
/** A line of this kind comes back under its name so often at least. */
const TIMES = 2;

/** @returns undefined when lines hold several readings, or no coolant temperature by name */
export function longFormOf(text: string, chosen?: Delimiter): LongForm | undefined {
  const sample = text.slice(0, SAMPLE_TEXT);
  const delimiter = chosen ?? delimiterOf(sample.slice(0, 1 << 14));
  if (!delimiter) return undefined;
  const all = rowsOf(sample, delimiter);
  const { width } = usualWidth(all.filter((row) => row.length > 1));
  if (width < WIDTHS[0] || width > WIDTHS[1]) return undefined;
  const rows = all.filter((row) => row.length === width);
  const mark = decimalMarkOf(rows.flat());
  const columns = Array.from({ length: width }, (_, index) =>
    rows.slice(1).map((row) => row[index]?.trim() ?? ''),
  );
  const name = columns.findIndex(isNames);
  if (name === -1) return undefined;
  const clocks = columns.map((cells, index) => index !== name && clockFormOf(cells, '', mark));
  // A clock with colons or a date is the time for sure; else the first column of figures, and the value comes after it.
  const sure = clocks.findIndex((form) => form && form.kind !== 'count' && form.kind !== 'epoch');
  const time = sure === -1 ? clocks.findIndex(Boolean) : sure;
  const isValue = (cells: readonly string[]) =>
    cells.filter((cell) => Number.isFinite(readNumber(cell, mark))).length > 0.5 * cells.length;
  const value = columns.findLastIndex((cells, index) => index !== time && index !== name && isValue(cells));
  if (time === -1 || value === -1) return undefined;
  // Figures under a name of their own are a column; a state beside them in words names nothing.
  if (isNamed(rows[0]?.[value] ?? '')) return undefined;
  const unit = columns.findIndex(
    (cells, index) => index !== time && index !== name && index !== value && isUnits(cells),
  );
  return {
    delimiter,
    time,
    name,
    value,
    unit: unit === -1 ? undefined : unit,
    names: namesOf(rows.slice(1), name, unit),
  };
}

/** A few names that come back again and again, the coolant's among them. */
function isNames(cells: readonly string[]): boolean {
  const counts = new Map<string, number>();
  for (const cell of cells) counts.set(cell, (counts.get(cell) ?? 0) + 1);
  if (counts.size < 2 || counts.size > 0.5 * cells.length) return false;
  return [...counts].some(([cell, count]) => count >= TIMES && isNamed(cell, ['coolant']));
}

function isNamed(cell: string, roles: readonly (typeof ROLES)[number][] = ROLES): boolean {
  const words = plainWords(cell);
  return roles.some((role) => {
    const { names, not } = ROLE_KINDS[role];
    return !not?.test(words) && names.some((each) => each.test(words));
  });
}

function isUnits(cells: readonly string[]): boolean {
  const kinds = ['temperature', 'speed', 'rotation', 'share'] as const;
  const filled = cells.filter((cell) => cell !== '');
  const units = filled.filter((cell) => kinds.some((kind) => unitNamed(kind, cell)));
  return filled.length > 0 && units.length > 0.5 * filled.length;
}

function namesOf(rows: readonly string[][], name: number, unit: number): LongForm['names'] {
  const units = new Map<string, string>();
  for (const row of rows) {
    const cell = row[name]?.trim() ?? '';
    if (cell !== '' && !units.has(cell)) units.set(cell, row[unit]?.trim() ?? '');
  }
  const found = [...units].map(([each, beside]) => ({ name: each, unit: beside }));
  const [usual, others] = [
    found.filter((each) => isNamed(each.name)),
    found.filter((each) => !isNamed(each.name)),
  ];
  return [...usual, ...others].slice(0, MOST_NAMES);
}

/** The same readings in columns, cut by tabs. Yields the share done, 0 to 1. */
export function* widened(
  text: string,
  { delimiter, time, name, value, names }: LongForm,
): Generator<number, string> {
  const columns = new Map(names.map((each, at) => [each.name, at]));
  const parts = [
    ['Time', ...names.map((each) => (each.unit === '' ? each.name : `${each.name} [${each.unit}]`))].join(
      '\t',
    ),
  ];
  let stamp: string | undefined;
  let cells: string[] = [];
  const close = () => {
    if (stamp !== undefined) parts.push(`${stamp}\t${cells.join('\t')}`);
    cells = Array.from(names, () => '');
  };
  let done = 0;
  for (const block of blocks(text)) {
    for (const row of rowsOf(block, delimiter)) {
      const column = columns.get(row[name]?.trim() ?? '');
      if (column === undefined) continue;
      const at = plainCell(row[time]);
      // A reading of the same name at the same time is another line all the same.
      if (at !== stamp || cells[column] !== '') {
        close();
        stamp = at;
      }
      cells[column] = plainCell(row[value]);
    }
    done += block.length;
    yield done / text.length;
  }
  close();
  return parts.join('\n');
}

/** A cell that cannot break the line it is put into. */
function plainCell(cell: string | undefined): string {
  return (cell ?? '').replace(/[\t\n"]/g, ' ').trim();
}
