/** A browser and the built site, for the tests of one file; both end with them. */
import type { Browser } from 'playwright-core';
import { afterAll } from 'vitest';
import { builtSite, launchBrowser, type ServedSite, serveSite } from './browser.ts';

/** @throws Error when no browser or no built site is there */
export async function openSite(): Promise<{ browser: Browser; site: ServedSite }> {
  const browser = await launchBrowser();
  const site = await serveSite(builtSite());
  afterAll(async () => {
    await site.stop();
    await browser.close();
  });
  return { browser, site };
}
