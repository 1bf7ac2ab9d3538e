/**
 * This site beside what a shop would pick instead, on the same invented shelf, in one run:
 *
 *     node tests/bench/beside/run.ts                    100, 1,000 and 5,000 records; takes a long while
 *     node tests/bench/beside/run.ts --sizes 100        a quick one
 *     node tests/bench/beside/run.ts --sites starlight  only these, beside ours
 *     node tests/bench/beside/run.ts --write-readme     puts the tables into README.md
 *
 * The other generators are no part of the project: their packages are fetched for the run, into a folder outside it that is
 * kept for the next run (HEADERTANK_BENCH, or a folder of the system's for such things). Prints figures and never fails.
 */
import { cp, mkdir, readdir, readFile, rm } from 'node:fs/promises';
import { cpus, loadavg, tmpdir, totalmem } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { launchBrowser } from '../../site/browser.ts';
import { serveCounting } from './gzip-server.ts';
import { type CheckTimes, checkTable, measureCheck } from './measure-check.ts';
import { writeReadme } from './readme.ts';
import { type Outcome, runMeasured } from './run-measured.ts';
import { pathOf } from './shelf/document.ts';
import { AREA, type MadeRecord, makeShelf } from './shelf/shelf.ts';
import { clear, SITES, type Site } from './sites.ts';
import { figuresTable, type Measured, ratiosTable } from './tables.ts';
import { SLOW, type Target, visit } from './visit.ts';

const SEED = 20_261_125;
/** For one build, or one check. */
const MINUTES = 15;
const SEARCHES = 8;

const { values } = parseArgs({
  options: {
    sizes: { type: 'string', default: '100,1000,5000' },
    sites: { type: 'string' },
    'write-readme': { type: 'boolean', default: false },
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

for (const size of values.sizes.split(',').map(Number)) {
  const records = makeShelf(size, SEED);
  for (const site of sites) {
    process.stderr.write(`${size} records, ${site.name} …\n`);
    all.push(await measure(site, records));
  }
}

const versions = await Promise.all(sites.map(versionsOf));
const text = [
  `Measured ${new Date().toISOString().slice(0, 10)} on ${cpus()[0]?.model ?? 'an unknown processor'} × ${cpus().length}, ` +
    `${(totalmem() / 2 ** 30).toFixed(0)} GB, ${process.platform}, node ${process.version}, Chromium ${browser.version()}, ` +
    `load ${busy.toFixed(1)} from other work at the start; ${versions.filter((each) => each !== '').join(', ')}.`,
  '',
  figuresTable(all),
  '',
  'Ours over theirs; under 1 is less than theirs:',
  '',
  ratiosTable(all, ours.name),
  '',
  '`npm run check` on the same shelf:',
  '',
  checkTable(checks),
  '',
  `One server with gzip for all. The page is a plain record, a tool. Times in the browser are with the processor ${SLOW.processor} times ` +
    `slower, ${SLOW.latency} ms a round trip and ${SLOW.kilobitsPerSecond} kbit/s; a search is over when the record asked for by its title ` +
    'is shown; a worker is not slowed, and both ours and pagefind search in one. Memory is that of all processes of a build together. Each site is as it comes, but for a menu of the kinds instead of all ' +
    'records; ours is built with its check, with sheets, calculators and the packs that keep it without a network, which are fetched after ' +
    'the page and counted by themselves.',
].join('\n');
await browser.close();
process.stdout.write(`${text}\n`);
if (values['write-readme']) await writeReadme('README.md', text);

async function measure(site: Site, records: readonly MadeRecord[]): Promise<Measured> {
  const place = join(folder, site.name.replace(/\W+/g, '-'));
  const measured: Measured = {
    site: site.name,
    records: records.length,
    pages: 0,
    build: undefined,
    visited: undefined,
  };
  try {
    await prepare(site, place);
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
    const server = await serveCounting(output);
    try {
      measured.visited = await visit(browser, server, site, targetsIn(records));
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

/** An empty folder, with the packages of the generator if it has its own. */
async function prepare({ packages }: Site, place: string): Promise<void> {
  if (packages === undefined) {
    await rm(place, { recursive: true, force: true });
    await mkdir(place, { recursive: true });
    return;
  }
  await mkdir(place, { recursive: true });
  const manifest = join(place, 'package.json');
  const before = await readFile(manifest, 'utf8').catch(() => '');
  const now = await readFile(join(packages, 'package.json'), 'utf8');
  if (before !== now) {
    await rm(place, { recursive: true, force: true });
    await mkdir(place, { recursive: true });
    await cp(join(packages, 'package.json'), manifest);
    const installed = await runMeasured(['npm', 'install', '--no-audit', '--no-fund'], place, MINUTES);
    if (!installed.ok) {
      await rm(manifest);
      throw new Error(`its packages cannot be fetched: ${installed.why}`);
    }
  }
  await clear(place);
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

/** Tools of the first areas, by their titles: plain records, on every shelf. */
function targetsIn(records: readonly MadeRecord[]): [Target, ...Target[]] {
  const tools = records.filter(({ kind }) => kind === 'tool');
  const inArea = tools.length / (records.length / AREA);
  const found = Array.from({ length: SEARCHES + 1 }, (_, at) => {
    const area = Math.floor((at * (records.length / AREA)) / (SEARCHES + 1));
    return tools[area * inArea + (at % inArea)];
  });
  const [first, ...others] = found.flatMap((tool) =>
    tool ? [{ path: pathOf(tool), title: tool.title }] : [],
  );
  if (!first) throw new Error('The shelf has no tools to look for.');
  return [first, ...others];
}

async function versionsOf({ packages }: Site): Promise<string> {
  if (packages === undefined) return '';
  const manifest: unknown = JSON.parse(await readFile(join(packages, 'package.json'), 'utf8'));
  const named =
    typeof manifest === 'object' && manifest !== null && 'dependencies' in manifest
      ? manifest.dependencies
      : {};
  return Object.entries(named ?? {})
    .map(([name, version]) => `${name} ${version}`)
    .join(', ');
}
