/** What is kept is kept: two windows at once, and a card of before. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { jobSchema } from '../../src/model/job.ts';
import { openPage } from './browser.ts';
import { keptInDatabase } from './device-storage.ts';
import { openSite } from './open-site.ts';

const { browser, site } = await openSite();
const quiet = { serviceWorkers: 'block' as const };

async function openCard(page: Page, hash = ''): Promise<void> {
  await page.goto(`${site.root}job.html${hash}`);
  await page.locator('ht-job-card[data-live]').waitFor();
}

/** Enters readings as a hand does, but faster, with pauses of up to so many milliseconds; does not wait for them to be kept. */
function enterReadings(page: Page, name: string, count: number, pause: number): Promise<void> {
  return page.evaluate(
    async ({ name, count, pause }) => {
      const field = (selector: string) => document.querySelector<HTMLInputElement>(selector);
      const [what, value] = [field('.reading-what'), field('.reading-value')];
      for (let at = 0; at < count; at++) {
        if (what) what.value = `${name} ${at}`;
        if (value) value.value = `${at} °C`;
        document.querySelector<HTMLElement>('.add-reading')?.click();
        await new Promise((resolve) => setTimeout(resolve, Math.random() * pause));
      }
    },
    { name, count, pause },
  );
}

/** The card of the page, once its address names it. */
async function cardId(page: Page): Promise<string> {
  const hash = () => page.evaluate(() => location.hash.slice(1));
  await expect.poll(hash).not.toBe('');
  return hash();
}

const readings = async (page: Page, id: string) => {
  const kept = await keptInDatabase(page, `job.${id}`);
  return kept === null ? [] : jobSchema.parse(kept).readings.map(({ what }) => what);
};

test('two windows write 200 times each at random moments, and 400 are there', {
  timeout: 120_000,
}, async () => {
  const { page, close } = await openPage(browser, site.root, quiet);
  await openCard(page);
  await page.getByLabel('Job: number or name').fill('Shared');
  const id = await cardId(page);
  await expect.poll(() => keptInDatabase(page, `job.${id}`)).not.toBeNull();
  const other = await page.context().newPage();
  await openCard(other, `#${id}`);
  await Promise.all([enterReadings(page, 'one', 200, 12), enterReadings(other, 'two', 200, 12)]);
  await expect.poll(async () => (await readings(page, id)).length, { timeout: 60_000 }).toBe(400);
  expect(new Set(await readings(page, id)).size).toBe(400);
  await close();
});

test('a card of before lies whole in the database, and the small storage keeps it no more', async () => {
  const { page, close } = await openPage(browser, site.root, quiet);
  const at = '2026-10-19T10:00:00.000Z';
  const old = {
    ...{
      id: 'job-old',
      opened: at,
      changed: at,
      name: '4711',
      plate: 'SL 44 KTR',
      distance: '181000',
      said: 'Runs cool',
    },
    vehicle: { id: 'aldermoor-tarn-16', title: 'Aldermoor Tarn 1.6 petrol, 2006-2012' },
    complaint: { id: 'reads-low-at-cruise', title: 'Reads low at steady cruise' },
    answers: [{ key: 'level-cold', asked: 'Where is the level?', answer: 'At the mark' }],
    proven: { id: 'thermostat-stuck-open', title: 'Thermostat stuck open' },
    readings: [{ id: 'reading-a', at, what: 'Upper hose', value: '71 °C' }],
    litres: [{ id: 'litres-a', at, way: 'drained', litres: 3.4 }],
    torques: { 'thermostat-housing': { at, what: 'Thermostat housing', figure: '9 N·m' } },
    remarks: [{ id: 'remark-a', at, text: 'Cap is new' }],
    ...{ found: 'The thermostat stood open.', did: 'New thermostat.', watch: 'The level.' },
    ...{ drafted: 'thermostat-stuck-open', 'drafted-words': { found: 'x', watch: 'y' } },
  };
  await page.goto(`${site.root}404.html`);
  await page.evaluate((card) => localStorage.setItem('headertank.job.job-old', JSON.stringify(card)), old);
  await openCard(page, '#job-old');
  expect(await keptInDatabase(page, 'job.job-old')).toEqual(old);
  expect(await page.evaluate(() => localStorage.getItem('headertank.job.job-old'))).toBeNull();
  for (const words of ['Upper hose', '71 °C', 'Drained 3.4 l', 'Cap is new', 'Where is the level?'])
    await page.locator('ht-job-card', { hasText: words }).waitFor();
  expect(await page.getByLabel('What we did').inputValue()).toBe('New thermostat.');
  // The same car six weeks later.
  await page.getByRole('button', { name: 'New card' }).click();
  await page.getByLabel('Plate').fill('sl44ktr');
  await page.locator('.earlier', { hasText: 'This car was here before' }).waitFor();
  expect(await page.locator('.earlier').textContent()).toContain('proven: Thermostat stuck open');
  await page.getByRole('button', { name: 'Take over customer and vehicle' }).click();
  await page.locator('.vehicle', { hasText: 'Aldermoor Tarn 1.6' }).waitFor();
  await close();
});

test('everything of this site is forgotten in one act, after a question', async () => {
  const { page, close } = await openPage(browser, site.root, quiet);
  await openCard(page, '');
  await page.getByLabel('Plate').fill('SL 44 KTR');
  const id = await cardId(page);
  await expect.poll(() => keptInDatabase(page, `job.${id}`)).toMatchObject({ plate: 'SL 44 KTR' });
  await page.goto(`${site.root}about.html#device`);
  await page.getByText('Kept here: one job card').waitFor();
  await page.getByRole('button', { name: 'Forget everything on this device' }).click();
  await page.getByRole('button', { name: 'Keep it' }).click();
  await page.getByRole('button', { name: 'Forget everything on this device' }).click();
  await page.getByRole('button', { name: 'Forget it all' }).click();
  await page.getByText('Nothing is kept on this device but the pages themselves.').waitFor();
  expect(await page.evaluate(() => Object.keys(localStorage))).toEqual([]);
  await openCard(page, '');
  expect(await page.getByLabel('Plate').inputValue()).toBe('');
  await close();
});
