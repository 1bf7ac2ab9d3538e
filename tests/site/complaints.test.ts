/** Each complaint, said in ways no record was written from, is found among the first three. */
import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openPage, type WatchedPage } from './browser.ts';
import { openSite } from './open-site.ts';

const { queries } = JSON.parse(readFileSync('tests/site/complaints.json', 'utf8')) as {
  queries: Record<string, string[]>;
};

const { browser, site } = await openSite();
let opened: WatchedPage;

beforeAll(async () => {
  opened = await openPage(browser, site.root, { serviceWorkers: 'block' });
});
afterAll(async () => {
  await opened.close();
});

test.each(Object.entries(queries))('%s', async (symptom, words) => {
  const { page } = opened;
  const missed: string[] = [];
  for (const query of words) {
    await page.goto(`${site.root}search.html?q=${encodeURIComponent(query)}`);
    await page.getByText(/\d+ results?\b|Nothing found/).waitFor();
    const first = await page
      .locator('.search-results > li a:first-of-type')
      .evaluateAll((links) =>
        links
          .slice(0, 3)
          .map((link) => (link as HTMLAnchorElement).href.replace(/^.*\/([^/]+\/[^/]+)\.html.*$/, '$1')),
      );
    if (!first.includes(`symptoms/${symptom}`)) missed.push(`${query}: ${first.join(', ')}`);
  }
  expect(missed).toEqual([]);
});
