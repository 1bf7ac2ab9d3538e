/** Each complaint, said in ways no record was written from, is found among the first three. */
import { readdirSync, readFileSync } from 'node:fs';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openPage, type WatchedPage } from './browser.ts';
import { openSite } from './open-site.ts';

const { queries } = JSON.parse(readFileSync('tests/browser/complaints.json', 'utf8')) as {
  queries: Record<string, string[]>;
};
const PHRASES = Object.entries(queries).flatMap(([symptom, words]) =>
  words.map((query) => ({ symptom, query })),
);

const { browser, site } = await openSite();
let opened: WatchedPage;

beforeAll(async () => {
  opened = await openPage(browser, site.root, { serviceWorkers: 'block' });
  await opened.page.goto(`${site.root}search.html`);
});
afterAll(async () => {
  await opened.close();
});

/** Asked one after the other on one page, as at a counter. */
async function firstThree(query: string): Promise<string[]> {
  const { page } = opened;
  const field = page.locator('ht-search input');
  await field.fill(query);
  await field.press('Enter');
  // The address takes up a question once it is answered: what is read below is the answer to this one.
  await page.waitForURL((address) => address.searchParams.get('q') === query);
  await page.locator('ht-search:not([aria-busy])').waitFor();
  await page.waitForFunction(() => 'headertankFinder' in globalThis && 'headertankComplaints' in globalThis);
  return page
    .locator('.search-results > li:visible a:first-of-type')
    .evaluateAll((links) =>
      links
        .slice(0, 3)
        .map((link) => (link as HTMLAnchorElement).href.replace(/^.*\/([^/]+\/[^/]+)\.html.*$/, '$1')),
    );
}

test.each(PHRASES)('$symptom: “$query”', async ({ symptom, query }) => {
  expect(await firstThree(query)).toContain(`symptoms/${symptom}`);
});

test('every complaint of the shelf is said in some such way', () => {
  const onShelf = readdirSync('content/symptoms').map((file) => file.replace(/\.yaml$/, ''));
  expect(Object.keys(queries).sort()).toEqual(onShelf.sort());
  for (const [symptom, words] of Object.entries(queries)) expect(words, symptom).not.toEqual([]);
});
