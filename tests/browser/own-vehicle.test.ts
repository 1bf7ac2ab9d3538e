/** A car that is not on the shelf, on a phone: typed from a complaint, walked, on the card, kept over a reload, removed. */
import { expect, test } from 'vitest';
import { openPage, SIZES } from './browser.ts';
import { openSite } from './open-site.ts';

const { browser, site } = await openSite();
const WALK = 'symptoms/hot-in-traffic.html';
const TITLE = 'Ash 1.4 <b>, 2011';

test('a car that is not listed is used like a listed one', async () => {
  const watched = await openPage(browser, site.root, { serviceWorkers: 'block', viewport: SIZES.phone });
  const { page } = watched;
  await page.goto(site.root + WALK);
  await page.getByRole('button', { name: 'Choose the vehicle' }).click();
  await page.getByRole('link', { name: 'My car is not listed' }).first().click();
  await page.locator('ht-own-vehicle[data-live]').waitFor();
  // Only what this complaint knows apart, and the drive.
  expect(await page.locator('[data-feature="power"]').isVisible()).toBe(true);
  expect(await page.locator('[data-feature="fan"]').isVisible()).toBe(true);
  expect(await page.locator('.asked-for').textContent()).toMatch(/Only what matters for/);
  const asked = await page.locator('[data-feature]:visible').count();
  await page.getByRole('button', { name: 'Ask the whole layout' }).click();
  expect(await page.locator('[data-feature]:visible').count()).toBeGreaterThan(asked);

  const take = page.getByRole('button', { name: 'Work on this vehicle' });
  await page.locator('[name="figures/fan.on/is"]').fill('96');
  await take.click();
  expect(await page.locator('[data-fault]').count()).toBe(2);
  await page.locator('[name="title"]').fill(TITLE);
  await page.locator('[name="figures/fan.on/is"]').fill('96 °C');
  await page.locator('[name="layout/power"][value="combustion"]').check();
  await page.locator('[name="layout/fan"][value="electric, one stage"]').check();
  // A fan of one stage has no full speed of its own.
  expect(await page.locator('[name="figures/fan.fast/is"]').isVisible()).toBe(false);
  await take.click();
  await page.getByRole('link', { name: /^Back to: / }).click();

  const line = page.locator('ht-vehicle summary');
  await expect.poll(() => line.textContent()).toBe('Ash 1.4 <b>, 2011 (your own)');
  const sheet = await page.evaluate(() => window.headertank.vehicle);
  expect(sheet?.layout).toEqual({
    power: 'combustion',
    fan: 'electric, one stage',
    'fan-electronics': 'none',
    'clutch-control': 'none',
  });
  expect(Object.keys(sheet?.figures ?? {})).toEqual(['fan.on']);
  await page.getByText('The walk: Ash 1.4 <b>, 2011 (your own)').waitFor();

  await page.goto(`${site.root}procedures/index.html`);
  await page.reload();
  await expect.poll(() => line.textContent()).toMatch(/your own/);
  await page.goto(`${site.root}job.html`);
  await page.locator('.take-vehicle').click();
  await expect
    .poll(() => page.locator('ht-job-card .vehicle').textContent())
    .toBe(`${TITLE}, your own, not on the shelf`);

  await page.locator('ht-job-card .vehicle a').click();
  await page.locator('ht-own-vehicle[data-live]').waitFor();
  expect(await page.locator('[name="title"]').inputValue()).toBe(TITLE);
  page.on('dialog', (dialog) => void dialog.accept());
  await page.getByRole('button', { name: `Remove: ${TITLE}` }).click();
  await expect.poll(() => line.textContent()).toBe('No vehicle');
  expect(await page.evaluate(() => Object.keys(localStorage).filter((key) => key.includes('own.')))).toEqual(
    [],
  );
  await page.goto(`${site.root}job.html`);
  await page.getByText('It was typed on one device and is not on this one').waitFor();
  expect(watched.problems).toEqual([]);
});
