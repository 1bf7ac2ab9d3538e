/** A device that keeps an id from before a vehicle's record was renamed: everything goes on under the new one. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import type { Job } from '../../src/model/job.ts';
import { builtSite, folderRoot, openPage, serveSite } from './browser.ts';
import { keptInDatabase } from './device-storage.ts';
import { openSite } from './open-site.ts';

const { browser } = await openSite();

const AT = '2026-11-25T10:00:00.000Z';
const OLD = 'aldermoor-tarn-petrol';
const NOW = { id: 'aldermoor-tarn-16', title: 'Aldermoor Tarn 1.6 petrol, 2006-2012' };

const card: Job = {
  ...{ id: 'job-tarn', opened: AT, changed: AT, name: '', plate: 'HB TM 412', distance: '', said: '' },
  vehicle: { id: OLD, title: 'Aldermoor Tarn petrol' },
  ...{ answers: [], readings: [], litres: [], torques: {}, remarks: [], found: '', did: '', watch: '' },
};
const draft = {
  ...{ id: 'note-tarn', changed: AT, sent: '', title: 'Tarn', by: '', date: '2026-11-25', symptom: '' },
  ...{ cause: '', procedure: '', text: '', known: 'measured', source: '', figure: '', is: '', 'is-from': '' },
  vehicle: OLD,
};
const run = { cold: { reading: '18' } };

const keptOnDevice = (page: Page, name: string): Promise<unknown> =>
  page.evaluate((key) => {
    const { pathname } = window.headertank.root;
    const site = pathname === '/' ? 'headertank' : `headertank${pathname}`;
    return JSON.parse(localStorage.getItem(`${site}.${key}`) ?? 'null');
  }, name);

async function keepOld(page: Page, root: string): Promise<void> {
  await page.goto(`${root}about.html`);
  await page.evaluate(
    (all) => {
      const { pathname } = window.headertank.root;
      const site = pathname === '/' ? 'headertank' : `headertank${pathname}`;
      for (const [name, value] of Object.entries(all))
        localStorage.setItem(`${site}.${name}`, JSON.stringify(value));
    },
    {
      vehicle: OLD,
      'job-open': card.id,
      'job.job-tarn': card,
      'note.note-tarn': draft,
      [`proof.${OLD}`]: run,
    },
  );
}

async function expectToGoOn(page: Page, root: string): Promise<void> {
  await page.goto(`${root}tools/refractometer.html`);
  await page.locator('.top-vehicle summary', { hasText: 'Tarn 1.6' }).waitFor();
  await expect.poll(() => keptInDatabase(page, 'job.job-tarn')).toEqual({ ...card, vehicle: NOW });
  expect(await keptOnDevice(page, 'vehicle')).toBe(NOW.id);
  await expect.poll(() => keptInDatabase(page, 'note.note-tarn')).toEqual({ ...draft, vehicle: NOW.id });
  expect(await keptOnDevice(page, `proof.${NOW.id}`)).toEqual(run);
  expect(await keptOnDevice(page, `proof.${OLD}`)).toBeNull();
}

test('hosted: the choice, the card with its torques, the note and the proof run go on', async () => {
  const site = await serveSite(builtSite());
  const { page, close } = await openPage(browser, site.root, { serviceWorkers: 'block' });
  await keepOld(page, site.root);
  await page.goto(`${site.root}job.html`);
  await page.getByLabel(/Thermostat or water-outlet housing/).waitFor();
  await expect.poll(() => page.locator('.vehicle').textContent()).toBe(NOW.title);
  expect(await page.locator('.take-vehicle').isHidden()).toBe(true);
  await page.locator('.vehicle a').click();
  await page.waitForURL(`${site.root}vehicles/${NOW.id}.html`);
  await expectToGoOn(page, site.root);
  // The page of before leads on as well.
  await page.goto(`${site.root}vehicles/${OLD}.html`);
  await page.waitForURL(`${site.root}vehicles/${NOW.id}.html`);
  await close();
  await site.stop();
});

test('kept on the device, with the server gone: they go on', async () => {
  const site = await serveSite(builtSite());
  const { page, close } = await openPage(browser, site.root, {
    expected: /ERR_CONNECTION|fetching the script/,
  });
  await page.goto(site.root);
  await page.getByText('Kept on this device; works without a network.').waitFor();
  await site.stop();
  await keepOld(page, site.root);
  await expectToGoOn(page, site.root);
  await close();
});

test('copied to a stick: they go on', async () => {
  const root = folderRoot(builtSite());
  const { page, close } = await openPage(browser, root);
  await keepOld(page, root);
  await expectToGoOn(page, root);
  await close();
});
