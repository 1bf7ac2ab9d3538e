/** The lists of a kind: in groups, with a field that leaves only what is asked for; and the pages of codes that lead on. */
import { expect, test } from 'vitest';
import { openPage } from './browser.ts';
import { openSite } from './open-site.ts';

const { browser, site } = await openSite();
const quiet = { serviceWorkers: 'block', reducedMotion: 'reduce' } as const;

test('a word leaves the causes that have it, and hides the groups without one', async () => {
  const watched = await openPage(browser, site.root, quiet);
  const { page } = watched;
  await page.goto(`${site.root}causes/index.html`);
  const all = await page.locator('.plain-list li:visible').count();
  await page.getByLabel('Filter').fill('head gasket');
  await expect.poll(() => page.locator('.plain-list li:visible').count()).toBeLessThan(all);
  const left = await page.locator('.plain-list li:visible').allTextContents();
  expect(left.length).toBeGreaterThan(0);
  for (const line of left) for (const word of ['head', 'gasket']) expect(line.toLowerCase()).toContain(word);
  expect(await page.getByRole('heading', { name: 'Thermostat' }).isVisible()).toBe(false);
  expect(await page.getByRole('status').textContent()).toBe(`${left.length} left`);
  await watched.close();
});

test('vehicles are found by a word of their name or engine', async () => {
  const watched = await openPage(browser, site.root, quiet);
  const { page } = watched;
  await page.goto(`${site.root}vehicles/index.html`);
  await page.getByLabel('Filter').fill('hybrid at15');
  const left = page.locator('main .plain-list li:visible');
  await expect.poll(() => left.count()).toBe(1);
  expect(await left.textContent()).toMatch(/hybrid.*engine AT15/s);
  await watched.close();
});

test('without scripts it is a plain list', async () => {
  const watched = await openPage(browser, site.root, { ...quiet, javaScriptEnabled: false });
  await watched.page.goto(`${site.root}tests/index.html`);
  expect(await watched.page.locator('input').count()).toBe(0);
  expect(await watched.page.locator('.plain-list li:visible').count()).toBeGreaterThan(60);
  await watched.close();
});

test('a code leads to its walks first, and each check to the test that does it', async () => {
  const watched = await openPage(browser, site.root, quiet);
  const { page } = watched;
  await page.goto(`${site.root}codes/p0128.html`);
  const links = await page
    .locator('main a')
    .evaluateAll((all) => all.map((each) => each.getAttribute('href')));
  expect(links[0]).toBe('../symptoms/reads-low-at-cruise.html');
  expect(await page.locator('.work a').first().getAttribute('href')).toBe('../tests/level-cold.html');
  await watched.close();
});
