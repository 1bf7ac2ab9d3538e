/** axe finds nothing on any kind of page, on a phone and on a desk, light and dark. */
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { builtSite, launchBrowser, openPage, type ServedSite, SIZES, serveSite } from './browser.ts';

let browser: Browser;
let site: ServedSite;
let axe: string;

beforeAll(async () => {
  browser = await launchBrowser();
  site = await serveSite(builtSite());
  axe = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
});
afterAll(async () => {
  await site.stop();
  await browser.close();
});

/** One of each kind. */
const PAGES = [
  'index.html',
  'search.html?q=heater+blows+cold',
  'symptoms/index.html',
  'symptoms/reads-low-at-cruise.html',
  'symptoms/no-cabin-heat.html#level-cold=at-mark',
  'trees/reads-low-at-cruise.html',
  'walks/reads-low-at-cruise.html',
  'causes/thermostat-stuck-open.html',
  'tests/compare-readings.html',
  'procedures/thermostat-replace.html',
  'tools/refractometer.html',
  'codes/p0128.html',
  'coolants/oat.html',
  'cautions/scald.html',
  'vehicles/index.html',
  'vehicles/aldermoor-tarn-16.html',
  'vehicles/lindqual-sedge.html',
  'notes/index.html',
  'notes/mere-stamp-read.html',
  'guides/index.html',
  'guides/where-air-hides.html',
  'calculators/index.html',
  'calculators/mixture.html',
  'calculators/boil-margin.html',
  'causes/index.html',
  'note.html',
  'job.html',
  'contribute.html',
  'sheets/index.html',
  'sheets/take-in/reads-low-at-cruise.html',
  'sheets/specs/aldermoor-tarn-16.html',
  'about.html',
  'trust.html',
  '404.html',
];

test.each(PAGES)('axe finds nothing on %s, on a phone and on a desk, light and dark', async (address) => {
  const watched = await openPage(browser, site.root, { serviceWorkers: 'block', reducedMotion: 'reduce' });
  const { page } = watched;
  await page.setViewportSize(SIZES.phone);
  await page.goto(site.root + address);
  await page.waitForLoadState('networkidle');
  await page.evaluate(axe);
  const found: string[] = [];
  for (const size of ['phone', 'desktop'] as const) {
    await page.setViewportSize(SIZES[size]);
    // Nothing may push the page wider than the screen.
    if (await page.evaluate(() => document.documentElement.scrollWidth > innerWidth))
      found.push(`wider than a ${size}`);
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      const results = await page.evaluate<AxeResults>('axe.run(document)');
      for (const { id, nodes } of results.violations)
        for (const { target } of nodes) found.push(`${id}, ${size}, ${colorScheme}: ${target.join(' ')}`);
    }
  }
  expect(found).toEqual([]);
  await watched.close();
});
