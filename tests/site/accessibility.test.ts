/** axe finds nothing on any kind of page, on a phone and on a desk, light and dark. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { axeFindings } from './axe-page.ts';
import { builtSite, launchBrowser, openPage, type ServedSite, serveSite } from './browser.ts';
import { PAGE_KINDS } from './page-kinds.ts';

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

test.each(PAGE_KINDS)(
  'axe finds nothing on %s, on a phone and on a desk, light and dark',
  async (address) => {
    const watched = await openPage(browser, site.root, { serviceWorkers: 'block', reducedMotion: 'reduce' });
    expect(await axeFindings(watched.page, site.root + address)).toEqual([]);
    await watched.close();
  },
);
