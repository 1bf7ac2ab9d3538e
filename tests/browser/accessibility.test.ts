/** axe finds nothing on any kind of page, on a phone and on a desk, light and dark. */
import { expect, test } from 'vitest';
import { axeFindings } from './axe-page.ts';
import { openPage } from './browser.ts';
import { openSite } from './open-site.ts';
import { PAGE_KINDS } from './page-kinds.ts';

const { browser, site } = await openSite();

test.each(PAGE_KINDS)(
  'axe finds nothing on %s, on a phone and on a desk, light and dark',
  async (address) => {
    const watched = await openPage(browser, site.root, { serviceWorkers: 'block', reducedMotion: 'reduce' });
    expect(await axeFindings(watched.page, site.root + address)).toEqual([]);
    await watched.close();
  },
);
