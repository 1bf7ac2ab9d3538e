/** Figures and ratios as Markdown. */
import { LIGHTHOUSE_ROWS, type Measured, ROWS, type Row } from './rows.ts';

/** One row for each measure and size, one column for each site; then what could not be measured. */
export function figuresTable(all: readonly Measured[]): string {
  const troubles = all.flatMap(({ site, records, trouble }) =>
    trouble === undefined ? [] : [`- ${site}, ${records.toLocaleString('en')} records: ${trouble}`],
  );
  return withList(
    table(all, ROWS, ({ show }) => show),
    troubles,
  );
}

/** What Lighthouse says, in the same way; then what cost a site part of a score. */
export function lighthouseTable(all: readonly Measured[]): string {
  const lacking = all.flatMap(({ site, lighthouse }) =>
    (lighthouse?.lacking ?? []).map((what) => `- ${site}: ${what}`),
  );
  return withList(
    table(all, LIGHTHOUSE_ROWS, ({ show }) => show),
    [...new Set(lacking)],
  );
}

/** Ours over theirs: under 1 is less than theirs. */
export function ratiosTable(all: readonly Measured[], ours: string): string {
  const others = all.filter(({ site }) => site !== ours);
  const rows = ROWS.map((row) => ({ ...row, label: measureOf(row) }));
  return table(others, rows, ({ value }) => (theirs) => {
    const own = all.find(({ site, records }) => site === ours && records === theirs.records);
    const [a, b] = [own && value?.(own), value?.(theirs)];
    return a === undefined || b === undefined || b === 0 ? undefined : (a / b).toFixed(2);
  });
}

/** What a row is about, without its unit. */
function measureOf({ label }: Row): string {
  return label
    .replace(/, kB$/, ', bytes')
    .replace(/, MB$/, '')
    .replace(/, m?s$/, ', time')
    .replace(/ s$/, ' time');
}

function withList(text: string, items: readonly string[]): string {
  return items.length === 0 ? text : [text, '', ...items].join('\n');
}

function table(
  all: readonly Measured[],
  rows: readonly Row[],
  cellOf: (row: Row) => (measured: Measured) => string | undefined,
): string {
  const sites = [...new Set(all.map(({ site }) => site))];
  const lines = [`| records | | ${sites.join(' | ')} |`, `|--:|---|${sites.map(() => '--:|').join('')}`];
  for (const size of new Set(all.map(({ records }) => records))) {
    for (const row of rows) {
      const cells = sites.map((site) => {
        const measured = all.find((each) => each.site === site && each.records === size);
        return measured && cellOf(row)(measured);
      });
      if (cells.some((each) => each !== undefined))
        lines.push(
          `| ${size.toLocaleString('en')} | ${row.label} | ${cells.map((each) => each ?? '–').join(' | ')} |`,
        );
    }
  }
  return lines.join('\n');
}
