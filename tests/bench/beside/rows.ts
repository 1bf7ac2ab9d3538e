/** What is measured, one row each, in the order of the tables. */
import type { LighthouseFigures } from './measure-lighthouse.ts';
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
  /** Undefined on all shelves but the largest, and when Lighthouse could not be fetched or did not get through. */
  lighthouse: LighthouseFigures | undefined;
  /** Why there is none of something, in words. */
  trouble?: string;
}

export interface Row {
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

export const ROWS: readonly Row[] = [
  { label: 'HTML pages', show: ({ pages }) => (pages > 0 ? String(pages) : undefined) },
  number('build, s', 1, (each) => taken(each)?.seconds),
  number('build, processor s', 1, (each) => taken(each)?.processor),
  number('build, ms a page', 1, perPage),
  number('build, peak memory, MB', 0, (each) => taken(each)?.megabytes),
  ...weight('first page', ({ visited }) => visited?.record.weight),
  number('largest paint, ms', 0, ({ visited }) => visited?.record.largestPaint),
  ...weight('complaint', ({ visited }) => visited?.complaint.weight),
  number('complaint, largest paint, ms', 0, ({ visited }) => visited?.complaint.largestPaint),
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

export const LIGHTHOUSE_ROWS: readonly Row[] = [
  number('performance', 0, ({ lighthouse }) => lighthouse?.performance),
  number('first contentful paint, ms', 0, ({ lighthouse }) => lighthouse?.firstPaint),
  number('largest contentful paint, ms', 0, ({ lighthouse }) => lighthouse?.largestPaint),
  number('speed index, ms', 0, ({ lighthouse }) => lighthouse?.speedIndex),
  number('total blocking time, ms', 0, ({ lighthouse }) => lighthouse?.blocking),
  number('cumulative layout shift', 3, ({ lighthouse }) => lighthouse?.shift),
  number('accessibility', 0, ({ lighthouse }) => lighthouse?.accessibility),
  number('best practices', 0, ({ lighthouse }) => lighthouse?.bestPractices),
  number('SEO', 0, ({ lighthouse }) => lighthouse?.seo),
  number('performance, complaint', 0, ({ lighthouse }) => lighthouse?.complaintPerformance),
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
