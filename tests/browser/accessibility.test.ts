/** axe finds nothing on any kind of page, on a phone and on a desk, light and dark. */
import { afterAll, expect, test } from 'vitest';
import { axeFindings } from './axe-page.ts';
import { openPage } from './browser.ts';
import { openSite } from './open-site.ts';
import { PAGE_KINDS } from './page-kinds.ts';

const { browser, site } = await openSite();
// One page for all: a browser that is opened anew reads axe anew, half a second each time.
const { page, problems, close } = await openPage(browser, site.root, {
  serviceWorkers: 'block',
  reducedMotion: 'reduce',
});
const protocol = await page.context().newCDPSession(page);
afterAll(close);

test.each(PAGE_KINDS)(
  'axe finds nothing on %s, on a phone and on a desk, light and dark',
  async (address) => {
    await protocol.send('Storage.clearDataForOrigin', {
      origin: new URL(site.root).origin,
      storageTypes: 'all',
    });
    expect(await axeFindings(page, site.root + address)).toEqual([]);
    expect(problems).toEqual([]);
  },
);
