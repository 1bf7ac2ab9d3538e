import { readdirSync, readFileSync } from 'node:fs';

/** A cell of a published table; null = not tabulated, or below freezing. */
export type Cell = number | string | null;

/** A row by column name. */
export type Row = Readonly<Record<string, Cell>>;

/** A column of outside figures, with what it is and how near ours must come. */
export interface Figure {
  readonly source: string;
  readonly kind: 'published' | 'computed from published correlation' | 'from memory' | 'common practice';
  /** Largest deviation that passes, in the unit of the deviation. */
  readonly accept: number;
  /** absolute: ours less theirs; relative: the same in per cent of theirs. */
  readonly as: 'absolute' | 'relative';
  readonly why: string;
  /** Wider tolerance in part of the table, as the source itself is worse there. */
  readonly beyond?: { readonly column: string; readonly above: number; readonly accept: number };
  /** Where one table holds two quantities. */
  readonly quantity?: string;
  readonly unit?: string;
}

/** Cells that miss their tolerance, with the reason that the site shows. */
export interface Explanation {
  readonly column: string;
  /** Column that tells which rows are meant: one text, or a span of numbers with its ends left out. */
  readonly where: string;
  readonly is?: string;
  readonly above?: number;
  readonly below?: number;
  readonly accept: number;
  readonly why: string;
}

/** A table of outside figures as it lies in data/. */
export interface PublishedTable {
  readonly id: string;
  readonly quantity: string;
  /** Unit of the deviation. */
  readonly unit: string;
  readonly conditions?: string;
  readonly note?: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly Cell[])[];
  readonly figures: Readonly<Record<string, Figure>>;
  readonly explained?: readonly Explanation[];
}

/** Where the tables lie. */
export const DATA = new URL('./data/', import.meta.url);

/** All tables of outside figures, in the order of their files. */
export const TABLES: readonly PublishedTable[] = readdirSync(DATA)
  .filter((name) => name.endsWith('.json'))
  .toSorted()
  .flatMap((name) => JSON.parse(readFileSync(new URL(name, DATA), 'utf8')).tables as PublishedTable[]);

/** Rows of a table by column name. */
export function rowsOf(table: PublishedTable): readonly Row[] {
  return table.rows.map((cells) =>
    Object.fromEntries(table.columns.map((name, i) => [name, cells[i] ?? null])),
  );
}

/** A cell that must be a number. */
export function number(row: Row, column: string): number {
  const cell = row[column];
  if (typeof cell !== 'number')
    throw new Error(`column "${column}" holds ${JSON.stringify(cell)}, not a number`);
  return cell;
}

/** A cell that must be a text. */
export function text(row: Row, column: string): string {
  const cell = row[column];
  if (typeof cell !== 'string')
    throw new Error(`column "${column}" holds ${JSON.stringify(cell)}, not a text`);
  return cell;
}
