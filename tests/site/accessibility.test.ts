/** axe finds nothing on any kind of page, on a phone and on a desk, light and dark. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { axeFindings } from './axe-page.ts';
import { builtSite, launchBrowser, openPage, type ServedSite, serveSite } from './browser.ts';

let browser: Browser;
let site: ServedSite;

beforeAll(async () => {
  browser = await launchBrowser();
  site = await serveSite(builtSite());
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
  expect(await axeFindings(watched.page, site.root + address)).toEqual([]);
  await watched.close();
});
