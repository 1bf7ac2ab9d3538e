import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type Comparison, compare } from './compare.ts';
import { OURS } from './ours/all.ts';
import { TRUST_FILE, trustText } from './report.ts';
import { DATA, type PublishedTable, rowsOf, TABLES } from './tables.ts';
import { compareAll, summarise } from './trust.ts';

const comparisons = compareAll();

/** Says a comparison so that a failure needs no look into the file. */
function say({ table, row, column, published, ours, unit, accept, deviation }: Comparison): string {
  return `${table}, row ${row}, ${column}: ${published} printed, ${ours} here, off by ${deviation} ${unit}, ${accept} passes`;
}

const missed = comparisons.filter((c) => !(Math.abs(c.deviation) <= c.accept));

describe.each(TABLES)('$id', (table) => {
  const own = comparisons.filter((c) => c.table === table.id);

  test('stands beside figures of ours in every row', () => {
    const used = new Set(own.map(({ row }) => row));
    expect([...used]).toEqual(table.rows.map((_, i) => i));
  });

  test('is met within its tolerance, or it is said why not', () => {
    const unexplained = own.filter((c) => !(Math.abs(c.deviation) <= (c.explained?.accept ?? c.accept)));
    expect(unexplained.map(say)).toEqual([]);
  });

  test('names source, kind and reason of the tolerance for each column', () => {
    for (const figure of Object.values(table.figures)) {
      expect(figure.source.length).toBeGreaterThan(5);
      expect(figure.why.length).toBeGreaterThan(3);
      expect(['published', 'computed from published correlation', 'from memory']).toContain(figure.kind);
      expect(figure.accept).toBeGreaterThan(0);
    }
  });

  test('gives each row as many cells as there are columns', () => {
    expect(new Set(table.rows.map((row) => row.length))).toEqual(new Set([table.columns.length]));
  });
});

describe('the outside figures as a whole', () => {
  test('are at least 400, each of a kind that is not our own', () => {
    expect(comparisons.length).toBeGreaterThanOrEqual(400);
  });

  test('are at least 400 even without those recalled from memory', () => {
    expect(comparisons.filter(({ kind }) => kind !== 'from memory').length).toBeGreaterThanOrEqual(400);
  });

  test('come from every file in data/', () => {
    const files = readdirSync(DATA);
    expect(files.every((name) => name.endsWith('.json'))).toBe(true);
    for (const name of files) {
      const { tables } = JSON.parse(readFileSync(new URL(name, DATA), 'utf8')) as {
        tables: PublishedTable[];
      };
      expect(tables.length).toBeGreaterThan(0);
      for (const { id } of tables) expect(comparisons.some((c) => c.table === id)).toBe(true);
    }
  });

  test('have a table for each set of figures of ours, and no id twice', () => {
    expect(TABLES.map(({ id }) => id).toSorted()).toEqual(Object.keys(OURS).toSorted());
    for (const { id, figures } of TABLES) {
      expect(Object.keys(OURS[id] ?? {}).toSorted()).toEqual(Object.keys(figures).toSorted());
    }
  });

  test.each([
    ['water', /water|IAPWS/],
    ['ethylene glycol', /ethylene glycol/],
    ['propylene glycol', /propylene glycol/],
  ])('hold %s against at least two independent sources', (_, quantity) => {
    const sources = new Set(comparisons.filter((c) => quantity.test(c.quantity)).map(({ source }) => source));
    const families = ['Melinder', 'ASHRAE', 'CRC', 'Kamihama', 'Perry', 'Eisenbach', 'IAPWS', 'ISO 2533'];
    const named = families.filter((family) => [...sources].some((source) => source.includes(family)));
    expect(named.length).toBeGreaterThanOrEqual(2);
  });

  test('leave out what is marked as wrong or contradicted', () => {
    const all = JSON.stringify(TABLES);
    expect(all).not.toMatch(/do not use/i);
    // Older compilation of boiling points and a mislabelled freezing column: both from one handbook.
    expect(all).not.toMatch(/Lange/);
    expect(cells('eg-boiling-measured', '°C')).not.toContain(110.0);
    expect(cells('eg-freezing-by-volume-handbook', '°C')).not.toContain(-33.2);
    // One suspected misprint at 30 °C and 10 % by volume.
    expect(all).not.toMatch(/1009\.62\b/);
  });

  test('include the hard cases', () => {
    expect(cells('eg-boiling-measured', 'mass fraction')).toContain(0.9118);
    expect(cells('eg-freezing-by-mass', 'mass fraction')).toContain(0.6);
    expect(cells('boiling-at-altitude', 'm')).toContain(4000);
    expect(cells('tight-reading', 'to °C')).toContain(40);
    expect(cells('ntc-10k-m8', '°C')).toContain(-35);
  });
});

describe('an explanation of a missed tolerance', () => {
  test('covers only figures that miss it', () => {
    const needless = comparisons.filter((c) => c.explained && Math.abs(c.deviation) <= c.accept);
    expect(needless.map(say)).toEqual([]);
  });

  test('is shown in the summary', () => {
    const lines = summarise(comparisons);
    for (const { explained } of missed) {
      expect(lines.some((line) => line.explained.includes(explained?.why ?? 'not explained'))).toBe(true);
    }
    expect(lines.filter(({ explained }) => explained.includes('not explained'))).toEqual([]);
  });
});

describe('compare', () => {
  const table: PublishedTable = {
    id: 'sample',
    quantity: 'sample',
    unit: 'K',
    columns: ['x', 'y'],
    rows: [
      [1, 10],
      [2, null],
      [3, 30],
    ],
    figures: {
      y: {
        source: 'nowhere',
        kind: 'from memory',
        accept: 1,
        as: 'relative',
        why: 'a sample',
        beyond: { column: 'x', above: 2, accept: 5 },
      },
    },
  };

  test('counts a deviation in per cent where the figure says so, and skips what is not tabulated', () => {
    const found = compare(table, { sample: { y: (row) => (row.x === 1 ? 11 : 27) } });
    expect(found.map(({ row, accept }) => [row, accept])).toEqual([
      [0, 1],
      [2, 5],
    ]);
    expect(found.map(({ deviation }) => deviation)).toEqual([10, -10]);
  });

  test('refuses a column that nothing of ours stands against', () => {
    expect(() => compare(table, {})).toThrow('table "sample" has no figure of ours for column "y"');
  });

  test('reads rows by column name', () => {
    expect(rowsOf(table)[1]).toEqual({ x: 2, y: null });
  });
});

test('the summary the site shows is up to date', () => {
  const written = readFileSync(TRUST_FILE, 'utf8');
  expect(written, 'run: npm run figures -- --write').toBe(trustText(summarise(comparisons)));
});

function cells(id: string, column: string): readonly unknown[] {
  const table = TABLES.find((candidate) => candidate.id === id);
  return table ? rowsOf(table).map((row) => row[column]) : [];
}
