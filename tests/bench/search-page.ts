/**
 * What a first search fetches, and how long a key waits for its complaint with the processor slowed four times.
 * Prints figures and never fails: npx node tests/bench/search-page.ts (a built site in HEADERTANK_SITE or dist/)
 */
import { readFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { builtSite, launchBrowser, SIZES, serveSite } from '../browser/browser.ts';

const SLOWED = 4;
/** One frame at 60 Hz, in milliseconds. */
const FRAME = 1000 / 60;

const { queries } = JSON.parse(readFileSync('tests/browser/complaints.json', 'utf8')) as {
  queries: Record<string, string[]>;
};
const texts = Object.values(queries).flat();

const browser = await launchBrowser();
const site = await serveSite(builtSite());
console.log(
  `${cpus()[0]?.model ?? 'unknown processor'} × ${cpus().length}, Chromium ${browser.version()}, processor slowed ${SLOWED} times`,
);
/** What a first search fetches until everything that it shows is there. */
async function firstSearch(text: string): Promise<void> {
  const context = await browser.newContext({ viewport: SIZES.phone, serviceWorkers: 'block' });
  const page = await context.newPage();
  const fetched: string[] = [];
  page.on('request', (request) => fetched.push(request.url()));
  await page.goto(`${site.root}search.html`);
  const onPage = fetched.length;
  await page.locator('ht-search input').fill(text);
  await page.locator('.complaints a').first().waitFor();
  await page.locator('ht-search:not([aria-busy])').waitFor();
  const asked = fetched.slice(onPage).map((address) => new URL(address).pathname.slice(1));
  const ofComplaints = asked.filter((address) => /recognise|complaints/.test(address));
  const rest = asked.filter((address) => !ofComplaints.includes(address));
  console.log(
    `first search, “${text}”: ${said(ofComplaints)} until its complaint, ${said(rest)} for the full text`,
  );
  await context.close();
}

function said(addresses: readonly string[]): string {
  return `${addresses.length} requests, ${(packedBytes(addresses) / 1000).toFixed(1)} kB packed`;
}

await firstSearch('needle drops on the motorway and the heater goes lukewarm');
await firstSearch('car overheats');

const context = await browser.newContext({ viewport: SIZES.phone, serviceWorkers: 'block' });
const page = await context.newPage();
await page.goto(`${site.root}search.html`);
await page.locator('ht-search input').fill('heater blows cold');
await page.locator('.complaints a').first().waitFor();
await page.locator('ht-search:not([aria-busy])').waitFor();

const slow = await context.newCDPSession(page);
await slow.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
// Every key of every text, the letters as they grow.
const times = await page.evaluate((all: string[]) => {
  const field = document.querySelector<HTMLInputElement>('ht-search input');
  const first = document.querySelector('.recognised');
  if (!field || !first) throw new Error('The page has no search.');
  return all.flatMap((text) =>
    [...text].map((_, at) => {
      const began = performance.now();
      field.value = text.slice(0, at + 1);
      field.dispatchEvent(new Event('input', { bubbles: true }));
      // Reading a size makes the browser lay the page out now, as it would before it paints.
      first.getBoundingClientRect();
      return performance.now() - began;
    }),
  );
}, texts);
times.sort((a, b) => a - b);
const at = (share: number) => times[Math.floor(share * (times.length - 1))]?.toFixed(1);
const inFrame = times.filter((time) => time <= FRAME).length;
console.log(
  `key to complaint, script and layout: median ${at(0.5)} ms, nine in ten ${at(0.9)} ms, ninety-nine in a hundred ${at(0.99)} ms, longest ${at(1)} ms; within a frame ${((inFrame / times.length) * 100).toFixed(1)} % of ${times.length} keys`,
);
await browser.close();
await site.stop();

function packedBytes(addresses: readonly string[]): number {
  return addresses.reduce(
    (sum, address) => sum + gzipSync(readFileSync(join(builtSite(), address)), { level: 9 }).length,
    0,
  );
}
