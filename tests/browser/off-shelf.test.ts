/** Cards and choices of vehicles that this shelf no longer has, and changes that fail: said once, in words, and nothing is lost. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { type Job, jobSchema } from '../../src/model/job.ts';
import { openPage, settled } from './browser.ts';
import { keptInDatabase } from './device-storage.ts';
import { openSite } from './open-site.ts';

const { browser, site } = await openSite();

const quiet = { serviceWorkers: 'block' as const };
const AT = '2026-11-25T10:00:00.000Z';
const GONE = { id: 'sold-and-gone', title: 'Aldermoor Combe 1.3 petrol, 1998-2003' };
const TARN = 'aldermoor-tarn-16';

const goneCard: Job = {
  ...{ id: 'job-gone', opened: AT, changed: AT, name: '', plate: 'HB CO 13', distance: '', said: 'Runs hot' },
  vehicle: GONE,
  answers: [{ key: 'level-cold', asked: 'Where is the level?', answer: 'At the mark' }],
  proven: { id: 'thermostat-stuck-open', title: 'Thermostat stuck open' },
  readings: [{ id: 'reading-a', at: AT, what: 'Upper hose', value: '71 °C' }],
  litres: [],
  torques: { 'thermostat-housing': { at: AT, what: 'Thermostat housing', figure: '9 N·m' } },
  ...{ remarks: [], found: '', did: '', watch: '' },
};

async function keepOnDevice(page: Page, kept: Record<string, unknown>): Promise<void> {
  await page.goto(`${site.root}404.html`);
  await page.evaluate((all) => {
    for (const [name, value] of Object.entries(all))
      localStorage.setItem(`headertank.${name}`, JSON.stringify(value));
  }, kept);
}

const keptCard = async (page: Page) => jobSchema.parse(await keptInDatabase(page, 'job.job-gone'));

test.each([GONE.id, TARN])(
  'a card whose vehicle is off the shelf says so and asks for nothing, with %s chosen',
  async (chosen) => {
    const { page, close } = await openPage(browser, site.root, quiet);
    await keepOnDevice(page, { vehicle: chosen, 'job-open': 'job-gone', 'job.job-gone': goneCard });
    const asked: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    await page.goto(`${site.root}job.html#job-gone`);
    await page.locator('.vehicle', { hasText: 'no longer on the shelf' }).waitFor();
    expect(await page.locator('.vehicle a').count()).toBe(0);
    await page.locator('.plan', { hasText: 'Repair' }).waitFor();
    await page.getByLabel('Odometer').fill('181000');
    await settled(page);
    expect(asked.filter((address) => address.includes(GONE.id))).toEqual([]);
    // The card stays what it was, and the words for the customer are drafted from the general figures.
    await expect
      .poll(() => keptCard(page))
      .toMatchObject({
        vehicle: GONE,
        readings: goneCard.readings,
        torques: goneCard.torques,
        distance: '181000',
      });
    await expect.poll(async () => (await keptCard(page)).drafted).toBe('thermostat-stuck-open');
    await page.reload();
    await page.locator('.vehicle', { hasText: 'no longer on the shelf' }).waitFor();
    await close();
  },
);

test('what cannot be fetched is said once, however often it is tried, until it goes well', async () => {
  const { page } = await openPage(browser, site.root, quiet);
  await page.goto(`${site.root}tools/refractometer.html`);
  const times = async (selector: string, words: string) =>
    ((await page.locator(selector).textContent()) ?? '').split(words).length - 1;
  await page.route('**/scripts/reader-figures.js', (route) => route.abort());
  for (const units of ['US units', 'metric units', 'US units']) {
    const failed = page.waitForEvent('requestfailed');
    await page.getByRole('button', { name: units }).click();
    await failed;
    await expect.poll(() => times('.foot', 'cannot be rewritten')).toBe(1);
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
  await expect.poll(() => times('.foot', 'cannot be rewritten')).toBe(0);
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
