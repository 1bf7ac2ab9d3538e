/**
 * This site beside what a shop would pick instead, on the same invented shelf, in one run:
 *
 *     npx node tests/bench/beside/run.ts                    100, 1,000 and 5,000 records; takes a long while
 *     npx node tests/bench/beside/run.ts --sizes 100        a quick one
 *     npx node tests/bench/beside/run.ts --sites starlight  only these, beside ours
 *     npx node tests/bench/beside/run.ts --write-results    puts the tables into RESULTS.md
 *
 * The other generators and Lighthouse are no part of the project: their packages are fetched for the run, into a folder outside
 * it that is kept for the next run (HEADERTANK_BENCH, or a folder of the system's for such things). Prints figures and never
 * fails.
 */
import { readdir, rm } from 'node:fs/promises';
import { cpus, loadavg, tmpdir, totalmem } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { launchBrowser } from '../../browser/browser.ts';
import { serveCounting } from './gzip-server.ts';
import { type CheckTimes, checkTable, measureCheck } from './measure-check.ts';
import { LIGHTHOUSE, measureLighthouse } from './measure-lighthouse.ts';
import { empty, fetchPackages, versionsOf } from './packages.ts';
import { writeResults } from './results-file.ts';
import type { Measured } from './rows.ts';
import { type Outcome, runMeasured } from './run-measured.ts';
import { type MadeRecord, makeShelf } from './shelf/shelf.ts';
import { SITES, type Site } from './sites.ts';
import { figuresTable, lighthouseTable, ratiosTable } from './tables.ts';
import { targetsIn } from './targets.ts';
import { SLOW, visit } from './visit.ts';

const SEED = 20_261_125;
/** For one build, or one check. */
const MINUTES = 15;

const { values } = parseArgs({
  options: {
    sizes: { type: 'string', default: '100,1000,5000' },
    sites: { type: 'string' },
    'write-results': { type: 'boolean', default: false },
  },
});
const [ours] = SITES;
if (!ours) throw new Error('There is nothing to hold beside the others.');
const wanted = values.sites?.split(',');
const sites = SITES.filter(
  (site) => site === ours || (wanted?.some((name) => site.name.startsWith(name)) ?? true),
);
const folder = process.env.HEADERTANK_BENCH ?? join(tmpdir(), 'headertank-bench');
const [busy = 0] = loadavg();
const browser = await launchBrowser();
const all: Measured[] = [];
const checks: CheckTimes[] = [];

const sizes = values.sizes.split(',').map(Number);
// Half a minute a site, and one page hardly knows how large its shelf is: once, where it weighs most.
const lighthouseAt = Math.max(...sizes);
for (const size of sizes) {
  const began = performance.now();
  const records = makeShelf(size, SEED);
  for (const site of sites) {
    process.stderr.write(`${size} records, ${site.name} …\n`);
    all.push(await measure(site, records));
  }
  process.stderr.write(`${size} records took ${((performance.now() - began) / 60_000).toFixed(1)} min\n`);
}

const versions = await Promise.all(
  [...sites.flatMap(({ packages }) => packages ?? []), LIGHTHOUSE].map(versionsOf),
);
const text = [
  `Measured ${new Date().toISOString().slice(0, 10)} on ${cpus()[0]?.model ?? 'an unknown processor'} × ${cpus().length}, ` +
    `${(totalmem() / 2 ** 30).toFixed(0)} GB, ${process.platform}, node ${process.version}, Chromium ${browser.version()}, ` +
    `load ${busy.toFixed(1)} from other work at the start; ${versions.join(', ')}.`,
  '',
  figuresTable(all),
  '',
  'Ours over theirs; under 1 is less than theirs:',
  '',
  ratiosTable(all, ours.name),
  '',
  'What Lighthouse says of the same pages on a phone, on the largest shelf; scores are of 100, more is better:',
  '',
  lighthouseTable(all),
  '',
  '`npm run check` on the same shelf:',
  '',
  checkTable(checks),
  '',
  [
    'One server with gzip for all. The page is a plain record, a tool; the complaint is ours with its walk, in the others the same',
    'record as a document that leads on to its tree.',
    `Times in the browser are with the processor ${SLOW.processor} times slower, ${SLOW.latency} ms a round trip and`,
    `${SLOW.kilobitsPerSecond} kbit/s; a search is over when the record asked for by its title is shown; a worker is not slowed,`,
    'and both ours and pagefind search in one.',
    'Lighthouse is as it comes, in its mobile setting: its times are reckoned for such a phone from a load that is not slowed, the',
    'median of three runs; accessibility, best practices and SEO are looked at once.',
    'Memory is that of all processes of a build together.',
    'Each site is as it comes, but for a menu of the kinds instead of all records, an icon, and a description of each page; ours is',
    'built with its check, with sheets, calculators and the packs that keep it without a network, which are fetched after the page',
    'and counted by themselves.',
  ].join(' '),
].join('\n');
await browser.close();
process.stdout.write(`${text}\n`);
if (values['write-results']) await writeResults(join(import.meta.dirname, 'RESULTS.md'), text);

async function measure(site: Site, records: readonly MadeRecord[]): Promise<Measured> {
  const place = join(folder, site.name.replace(/\W+/g, '-'));
  const measured: Measured = {
    site: site.name,
    records: records.length,
    pages: 0,
    build: undefined,
    visited: undefined,
    lighthouse: undefined,
  };
  try {
    await (site.packages === undefined ? empty(place) : fetchPackages(site.packages, place, MINUTES));
    await site.layOut(place, records);
    if (site === ours) {
      checks.push(await measureCheck(place, records.length, MINUTES));
      await rm(join(place, 'node_modules/.cache'), { recursive: true, force: true });
    }
    measured.build = await build(site, place);
    if (measured.build?.ok === false) return { ...measured, trouble: measured.build.why };
    const output = join(place, site.output);
    measured.pages = (await readdir(output, { recursive: true })).filter((name) =>
      name.endsWith('.html'),
    ).length;
    const targets = targetsIn(records);
    const server = await serveCounting(output);
    try {
      const { root } = server;
      const { record, complaint } = targets;
      measured.visited = await visit(browser, server, site, targets);
      const pages = {
        record: root + site.address(record.path),
        complaint: root + site.address(complaint.path),
      };
      if (records.length === lighthouseAt)
        measured.lighthouse = await measureLighthouse(join(folder, 'lighthouse'), pages, MINUTES);
    } finally {
      await server.stop();
    }
    return measured;
  } catch (error) {
    return {
      ...measured,
      trouble: error instanceof Error ? (error.message.split('\n')[0] ?? '') : String(error),
    };
  }
}

/** Commands of one build, their figures together; nothing for a site that is not built. */
async function build(site: Site, place: string): Promise<Outcome | undefined> {
  let sum: Outcome | undefined;
  for (const words of site.build) {
    const outcome = await runMeasured(words, place, MINUTES);
    if (!outcome.ok) return outcome;
    const before = sum?.ok ? sum.taken : { seconds: 0, processor: 0, megabytes: 0 };
    const { seconds, processor, megabytes } = outcome.taken;
    sum = {
      ok: true,
      taken: {
        seconds: before.seconds + seconds,
        processor: plus(before.processor, processor),
        megabytes: megabytes === undefined ? undefined : Math.max(before.megabytes ?? 0, megabytes),
      },
    };
  }
  return sum;
}

function plus(a: number | undefined, b: number | undefined): number | undefined {
  return a === undefined || b === undefined ? undefined : a + b;
}
