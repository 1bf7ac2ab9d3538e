/** Cards and choices of vehicles that this shelf no longer has, and changes that fail: said once, in words, and nothing is lost. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openPage } from './browser.ts';
import { openSite } from './open-site.ts';

const { browser, site } = await openSite();

const quiet = { serviceWorkers: 'block' as const };
const TARN = 'aldermoor-tarn-16';

async function keepOnDevice(page: Page, kept: Record<string, unknown>): Promise<void> {
  await page.goto(`${site.root}404.html`);
  await page.evaluate((all) => {
    for (const [name, value] of Object.entries(all))
      localStorage.setItem(`headertank.${name}`, JSON.stringify(value));
  }, kept);
}

test('what cannot be fetched is said once, however often it is tried, until it goes well', async () => {
  const { page } = await openPage(browser, site.root, quiet);
  await page.goto(`${site.root}tools/refractometer.html`);
  const times = async (selector: string, words: string) =>
    ((await page.locator(selector).textContent()) ?? '').split(words).length - 1;
  await page.route('**/scripts/reader-figures.js', (route) => route.abort());
  for (const units of ['US customary', 'metric', 'US customary']) {
    const failed = page.waitForEvent('requestfailed');
    await page.getByRole('button', { name: units }).click();
    await failed;
    await expect.poll(() => times('ht-units', 'cannot be rewritten')).toBe(1);
  }
  await page.route('**/data/vehicles/*', (route) => route.abort());
  for (const id of [TARN, 'harrowby-gritstone-30']) {
    const failed = page.waitForEvent('requestfailed');
    await page.evaluate((each) => window.headertank.chooseVehicle(each), id);
    await failed;
    await expect.poll(() => times('ht-vehicle', 'cannot be fetched just now')).toBe(1);
  }
  await page.unroute('**/scripts/reader-figures.js');
  await page.unroute('**/data/vehicles/*');
  await page.evaluate((id) => window.headertank.chooseVehicle(id), TARN);
  await expect.poll(() => times('ht-vehicle', 'cannot be fetched')).toBe(0);
  await expect.poll(() => times('ht-units', 'cannot be rewritten')).toBe(0);
  // The lines in the console are the browser's own about what the test let fail.
  await page.context().close();
});

test('without an open card none is looked for', async () => {
  const { page, close } = await openPage(browser, site.root, quiet);
  await keepOnDevice(page, { 'job.undefined': { name: 'Nobody’s', plate: '' } });
  await page.goto(`${site.root}tools/refractometer.html`);
  const line = page.locator('.paper-line b');
  await expect.poll(() => line.textContent()).toContain('printed');
  expect(await line.textContent()).not.toContain('Nobody');
  await close();
});
