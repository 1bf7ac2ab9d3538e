/** What Lighthouse says of a site's pages, as a phone sees them: scores of 100 and its own times. */
import { cp, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { z } from 'zod';
import { FLAGS } from '../../browser/browser.ts';
import { findChromium } from '../../browser/chromium.ts';
import { median } from './median.ts';
import { fetchPackages } from './packages.ts';
import { runMeasured } from './run-measured.ts';

export const LIGHTHOUSE = join(import.meta.dirname, 'lighthouse');

export interface LighthouseFigures {
  /** Of 100, the median. */
  performance: number;
  /** Milliseconds, the median. */
  firstPaint: number;
  largestPaint: number;
  blocking: number;
  speedIndex: number;
  /** Share of the page that moved, times how far. */
  shift: number;
  /** Of 100; the same each time, so looked at once. */
  accessibility: number;
  bestPractices: number;
  seo: number;
  /** What cost one of these three something. */
  lacking: string[];
  /** Of the complaint's page, of 100, the median. */
  complaintPerformance: number;
}

/** One run is noisy. */
const RUNS = 3;
/** Nothing but the server of the bench can be reached, by its name. */
const BROWSER = [...FLAGS, '--headless=new', '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE localhost'];
const CHECKED = ['accessibility', 'best-practices', 'seo'];

const score = z.number().min(0).max(1);
const run = z.object({
  scores: z.object({
    performance: score,
    accessibility: score.optional(),
    'best-practices': score.optional(),
    seo: score.optional(),
  }),
  figures: z.object({
    'first-contentful-paint': z.number(),
    'largest-contentful-paint': z.number(),
    'total-blocking-time': z.number(),
    'cumulative-layout-shift': z.number(),
    'speed-index': z.number(),
  }),
  lacking: z.array(z.string()),
});
type Run = z.infer<typeof run>;

/**
 * @param place folder that Lighthouse's packages are fetched into
 * @param pages addresses on the server of the bench
 * @param minutes after which fetching, or all runs together, are given up
 * @throws Error when Lighthouse cannot be fetched or does not get through
 */
export async function measureLighthouse(
  place: string,
  pages: { record: string; complaint: string },
  minutes: number,
): Promise<LighthouseFigures> {
  await fetchPackages(LIGHTHOUSE, place, minutes);
  await cp(join(LIGHTHOUSE, 'run.mjs'), join(place, 'run.mjs'));
  const jobs = [pages.record, pages.complaint].flatMap((address) =>
    Array.from({ length: RUNS }, (_, at) => ({
      address,
      categories: ['performance', ...(at === 0 && address === pages.record ? CHECKED : [])],
    })),
  );
  const order = JSON.stringify({ chromium: findChromium(), flags: BROWSER, jobs });
  const outcome = await runMeasured([process.execPath, 'run.mjs', order], place, minutes);
  if (!outcome.ok) throw new Error(`Lighthouse ${outcome.why}`);
  const runs = z
    .array(run)
    .length(jobs.length)
    .parse(JSON.parse(await readFile(join(place, 'runs.json'), 'utf8')));
  return figuresOf(runs.slice(0, RUNS), runs.slice(RUNS));
}

function figuresOf(record: readonly Run[], complaint: readonly Run[]): LighthouseFigures {
  const figure = (name: keyof Run['figures']) => median(record.map(({ figures }) => figures[name]));
  const ofHundred = (all: readonly Run[], name: keyof Run['scores']) =>
    100 * median(all.flatMap(({ scores }) => scores[name] ?? []));
  return {
    performance: ofHundred(record, 'performance'),
    firstPaint: figure('first-contentful-paint'),
    largestPaint: figure('largest-contentful-paint'),
    blocking: figure('total-blocking-time'),
    speedIndex: figure('speed-index'),
    shift: figure('cumulative-layout-shift'),
    accessibility: ofHundred(record, 'accessibility'),
    bestPractices: ofHundred(record, 'best-practices'),
    seo: ofHundred(record, 'seo'),
    lacking: record.flatMap(({ lacking }) => lacking),
    complaintPerformance: ofHundred(complaint, 'performance'),
  };
}
