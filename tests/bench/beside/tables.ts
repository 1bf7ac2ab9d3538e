/** Figures and ratios as Markdown. */
import type { Outcome, Taken } from './run-measured.ts';
import type { Visited, Weight } from './visit.ts';

export interface Measured {
  site: string;
  records: number;
  /** HTML pages in the output. */
  pages: number;
  /** Undefined for pages that are not built. */
  build: Outcome | undefined;
  /** Undefined when there was nothing to visit. */
  visited: Visited | undefined;
  /** Why there is none of it, in words. */
  trouble?: string;
}

interface Row {
  label: string;
  /** As it is shown. */
  show(measured: Measured): string | undefined;
  /** What ratios are made of; rows without are only shown. */
  value?(measured: Measured): number | undefined;
}

const taken = ({ build }: Measured): Taken | undefined => (build?.ok ? build.taken : undefined);
const perPage = (measured: Measured): number | undefined => {
  const seconds = taken(measured)?.seconds;
  return seconds === undefined ? undefined : (1000 * seconds) / measured.pages;
};

const ROWS: readonly Row[] = [
  { label: 'HTML pages', show: ({ pages }) => (pages > 0 ? String(pages) : undefined) },
  number('build, s', 1, (each) => taken(each)?.seconds),
  number('build, processor s', 1, (each) => taken(each)?.processor),
  number('build, ms a page', 1, perPage),
  number('build, peak memory, MB', 0, (each) => taken(each)?.megabytes),
  ...weight('first page', ({ visited }) => visited?.firstPage),
  number('largest paint, ms', 0, ({ visited }) => visited?.largestPaint),
  ...weight('first search', ({ visited }) => visited?.firstSearch),
  number('first search, ms', 0, ({ visited }) => visited?.firstSearch?.milliseconds),
  number('further search, ms', 0, ({ visited }) => visited?.furtherSearch),
  { label: 'second visit, requests', show: ({ visited }) => count(visited?.secondVisit.requests) },
  {
    label: 'kept for no network, kB / requests',
    show: ({ visited }) =>
      visited && visited.kept.requests > 0
        ? `${kilobytes(visited.kept.bytes)} / ${visited.kept.requests}`
        : undefined,
  },
];

function number(label: string, digits: number, value: (measured: Measured) => number | undefined): Row {
  return { label, value, show: (measured) => value(measured)?.toFixed(digits) };
}

function weight(label: string, value: (measured: Measured) => Weight | undefined): Row[] {
  return [
    {
      label: `${label}, kB`,
      value: (measured) => value(measured)?.bytes,
      show: (measured) => kilobytes(value(measured)?.bytes),
    },
    {
      label: `${label}, requests`,
      value: (measured) => value(measured)?.requests,
      show: (measured) => count(value(measured)?.requests),
    },
  ];
}

function kilobytes(bytes: number | undefined): string | undefined {
  return bytes === undefined ? undefined : (bytes / 1000).toFixed(1);
}

function count(requests: number | undefined): string | undefined {
  return requests === undefined ? undefined : String(requests);
}

/** One row for each measure and size, one column for each site. */
export function figuresTable(all: readonly Measured[]): string {
  return table(all, ({ label, show }) => ({ label, cell: show }));
}

/** Ours over theirs: under 1 is less than theirs. */
export function ratiosTable(all: readonly Measured[], ours: string): string {
  const others = all.filter(({ site }) => site !== ours);
  return table(others, ({ label, value }) => ({
    label: label
      .replace(/, kB$/, ', bytes')
      .replace(/, MB$/, '')
      .replace(/, m?s$/, ', time')
      .replace(/ s$/, ' time'),
    cell: (theirs) => {
      const own = all.find(({ site, records }) => site === ours && records === theirs.records);
      const [a, b] = [own && value?.(own), value?.(theirs)];
      return a === undefined || b === undefined || b === 0 ? undefined : (a / b).toFixed(2);
    },
  }));
}

function table(
  all: readonly Measured[],
  made: (row: Row) => { label: string; cell: (measured: Measured) => string | undefined },
): string {
  const sites = [...new Set(all.map(({ site }) => site))];
  const lines = [`| records | | ${sites.join(' | ')} |`, `|--:|---|${sites.map(() => '--:|').join('')}`];
  for (const size of new Set(all.map(({ records }) => records))) {
    for (const row of ROWS) {
      const { label, cell } = made(row);
      const cells = sites.map((site) => {
        const measured = all.find((each) => each.site === site && each.records === size);
        return measured && cell(measured);
      });
      if (cells.some((each) => each !== undefined))
        lines.push(
          `| ${size.toLocaleString('en')} | ${label} | ${cells.map((each) => each ?? '–').join(' | ')} |`,
        );
    }
  }
  const troubles = all.flatMap(({ site, records, trouble }) =>
    trouble === undefined ? [] : [`- ${site}, ${records.toLocaleString('en')} records: ${trouble}`],
  );
  return [...lines, ...(troubles.length > 0 ? ['', ...troubles] : [])].join('\n');
}
