/** What a reader gets: bytes and requests, the largest paint, a search, and a second visit; in a real browser. */
import type { Browser, BrowserContext, Page } from 'playwright-core';
import type { Asked, CountingServer } from './gzip-server.ts';
import { median } from './median.ts';
import type { Site } from './sites.ts';
import type { Target, Targets } from './targets.ts';

/** A middling phone on a weak mobile line, as Lighthouse's mobile setting has it (slow 4G, processor four times slower). */
export const SLOW = { latency: 150, kilobitsPerSecond: 1638, processor: 4 };

export interface Weight {
  bytes: number;
  requests: number;
}

/** A page opened with nothing kept from before. */
export interface Opened {
  weight: Weight;
  /** Milliseconds to the largest contentful paint on the slow line and processor, the median of three. */
  largestPaint: number;
}

export interface Visited {
  record: Opened;
  complaint: Opened;
  firstSearch: (Weight & { milliseconds: number }) | undefined;
  /** Milliseconds from the words to the result with the search open, slowed as above, the median. */
  furtherSearch: number | undefined;
  secondVisit: Weight;
  /** What a service worker fetched meanwhile, to be without a network later. */
  kept: Weight;
}

const RUNS = 3;
const QUIET = 700;
const WAIT = 120_000;

export async function visit(
  browser: Browser,
  server: CountingServer,
  site: Site,
  targets: Targets,
): Promise<Visited> {
  const address = server.root + site.address(targets.record.path);
  return {
    record: await openAnew(browser, server, address),
    complaint: await openAnew(browser, server, server.root + site.address(targets.complaint.path)),
    ...(await search(browser, server, site, targets)),
    ...(await returning(browser, server, address)),
  };
}

async function openAnew(browser: Browser, server: CountingServer, address: string): Promise<Opened> {
  const paints: number[] = [];
  let weight: Weight = { bytes: 0, requests: 0 };
  for (let run = 0; run < RUNS; run++) {
    const { page, context } = await open(browser, 'block');
    await slowDown(page);
    const from = server.asked.length;
    await page.goto(address, { waitUntil: 'load', timeout: WAIT });
    await quiet(server);
    paints.push(await page.evaluate(() => globalThis.largestPaint ?? Number.NaN));
    weight = weightOf(server.asked.slice(from));
    await context.close();
  }
  return { weight, largestPaint: median(paints) };
}

declare global {
  var largestPaint: number | undefined;
}

async function open(browser: Browser, serviceWorkers: 'allow' | 'block') {
  const context: BrowserContext = await browser.newContext({
    viewport: { width: 390, height: 844 },
    serviceWorkers,
  });
  context.setDefaultTimeout(WAIT);
  const page = await context.newPage();
  await page.addInitScript(() => {
    new PerformanceObserver((list) => {
      globalThis.largestPaint = list.getEntries().at(-1)?.startTime;
    }).observe({ type: 'largest-contentful-paint', buffered: true });
  });
  return { page, context };
}

async function slowDown(page: Page): Promise<void> {
  const session = await page.context().newCDPSession(page);
  await session.send('Network.enable');
  await session.send('Network.emulateNetworkConditions', {
    offline: false,
    latency: SLOW.latency,
    downloadThroughput: (SLOW.kilobitsPerSecond * 1000) / 8,
    uploadThroughput: (SLOW.kilobitsPerSecond * 500) / 8,
  });
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOW.processor });
}

async function search(
  browser: Browser,
  server: CountingServer,
  site: Site,
  targets: Targets,
): Promise<Pick<Visited, 'firstSearch' | 'furtherSearch'>> {
  if (!site.search) return { firstSearch: undefined, furtherSearch: undefined };
  const { page, context } = await open(browser, 'block');
  await page.goto(server.root + site.address(targets.record.path), { waitUntil: 'load' });
  await quiet(server);
  await slowDown(page);
  const from = server.asked.length;
  const began = performance.now();
  await site.search.open(page, server.root);
  await look(page, site.search, targets.record);
  const milliseconds = performance.now() - began;
  await quiet(server);
  const firstSearch = { ...weightOf(server.asked.slice(from)), milliseconds };
  const further: number[] = [];
  for (const target of targets.searched) {
    further.push(await look(page, site.search, target));
    await quiet(server);
  }
  await context.close();
  return { firstSearch, furtherSearch: median(further) };
}

/** Puts the title into the field and waits until a result has it. @returns milliseconds */
async function look(
  page: Page,
  { field, result }: NonNullable<Site['search']>,
  target: Target,
): Promise<number> {
  await page.waitForSelector(field, { state: 'visible' });
  const began = performance.now();
  await page.fill(field, target.title);
  // Looked for with every frame: a locator waits up to half a second between two looks.
  await page.waitForFunction(
    ([selector, title]) =>
      [...document.querySelectorAll(selector)].some(
        (each) => each.textContent?.replace(/\s+/g, ' ').includes(title) && each.checkVisibility(),
      ),
    [result, target.title] as const,
    { polling: 'raf' },
  );
  return performance.now() - began;
}

/** A visit, time for whatever keeps files to do so, and a second visit. */
async function returning(
  browser: Browser,
  server: CountingServer,
  address: string,
): Promise<Pick<Visited, 'secondVisit' | 'kept'>> {
  const { page, context } = await open(browser, 'allow');
  const from = server.asked.length;
  await page.goto(address, { waitUntil: 'load' });
  const keeps = await hasWorker(page);
  if (keeps) await page.evaluate(async () => void (await navigator.serviceWorker.ready));
  await quiet(server, keeps ? 4 * QUIET : QUIET);
  const kept = weightOf(
    server.asked.slice(from).filter(({ byWorker }) => byWorker),
    true,
  );
  await page.close();
  const again = await context.newPage();
  const since = server.asked.length;
  await again.goto(address, { waitUntil: 'load' });
  await quiet(server);
  const secondVisit = weightOf(server.asked.slice(since));
  await context.close();
  return { secondVisit, kept };
}

/** A worker may begin only after the page; on a site without one that is waited for in vain, and not for long. */
async function hasWorker(page: Page): Promise<boolean> {
  for (const until = performance.now() + 4 * QUIET; performance.now() < until; ) {
    const has = await page.evaluate(
      async () => (await navigator.serviceWorker?.getRegistration()) !== undefined,
    );
    if (has) return true;
    await new Promise((done) => setTimeout(done, 100));
  }
  return false;
}

/** Waits until nothing has been asked for some time. */
async function quiet(server: CountingServer, milliseconds = QUIET): Promise<void> {
  for (let seen = -1; seen !== server.asked.length; ) {
    seen = server.asked.length;
    await new Promise((done) => setTimeout(done, milliseconds));
  }
}

function weightOf(asked: readonly Asked[], byWorker = false): Weight {
  const counted = asked.filter((each) => each.byWorker === byWorker);
  return { bytes: counted.reduce((sum, { bytes }) => sum + bytes, 0), requests: counted.length };
}
