import { type Explanation, type Figure, number, type PublishedTable, type Row, rowsOf } from './tables.ts';

/** Our figure for a row, in the unit of the column it stands against. */
export type Ours = (row: Row, published: number) => number;

/** Our figures by table and column. */
export type OursByTable = Readonly<Record<string, Readonly<Record<string, Ours>>>>;

/** One outside figure beside ours. */
export interface Comparison {
  readonly table: string;
  readonly column: string;
  /** Index of the row in its table. */
  readonly row: number;
  readonly quantity: string;
  readonly unit: string;
  readonly source: string;
  readonly kind: Figure['kind'];
  readonly published: number;
  readonly ours: number;
  /** Ours less theirs in `unit`; in per cent where the figure is compared relatively. */
  readonly deviation: number;
  readonly accept: number;
  readonly why: string;
  /** Where the tolerance of the entry is missed and it is said why. */
  readonly explained?: Explanation;
}

/** Compares every figure of a table with ours. */
export function compare(table: PublishedTable, ours: OursByTable): readonly Comparison[] {
  return rowsOf(table).flatMap((row, index) =>
    Object.entries(table.figures).flatMap(([column, figure]) => {
      const published = row[column];
      if (typeof published !== 'number') return [];
      const mine = ours[table.id]?.[column];
      if (!mine) throw new Error(`table "${table.id}" has no figure of ours for column "${column}"`);
      return [compareCell({ table, column, figure, row, index, published, ours: mine(row, published) })];
    }),
  );
}

interface CellToCompare {
  readonly table: PublishedTable;
  readonly column: string;
  readonly figure: Figure;
  readonly row: Row;
  readonly index: number;
  readonly published: number;
  readonly ours: number;
}

function compareCell({ table, column, figure, row, index, published, ours }: CellToCompare): Comparison {
  const difference = ours - published;
  const deviation = figure.as === 'relative' ? (100 * difference) / published : difference;
  const { beyond } = figure;
  const worse = beyond && number(row, beyond.column) > beyond.above;
  const explained = table.explained?.find((e) => e.column === column && covers(e, row));
  return {
    table: table.id,
    column,
    row: index,
    quantity: figure.quantity ?? table.quantity,
    unit: figure.unit ?? table.unit,
    source: figure.source,
    kind: figure.kind,
    published,
    ours,
    deviation,
    accept: worse ? beyond.accept : figure.accept,
    why: figure.why,
    ...(explained && { explained }),
  };
}

function covers({ where, is, above = -Infinity, below = Infinity }: Explanation, row: Row): boolean {
  if (is !== undefined) return row[where] === is;
  const at = number(row, where);
  return at > above && at < below;
}
