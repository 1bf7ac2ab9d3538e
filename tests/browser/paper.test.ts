/** What comes out of the printer filled in: the wall chart for the chosen vehicle, the take-in sheet from the open card. */
import { expect, test } from 'vitest';
import type { Job } from '../../src/model/job.ts';
import { openPage, settled } from './browser.ts';
import { openSite } from './open-site.ts';

const { browser, site } = await openSite();

const TARN = { id: 'aldermoor-tarn-16', title: 'Aldermoor Tarn 1.6 petrol, 2006-2012' };
const AT = '2026-11-25T10:00:00.000Z';
const CARD: Job = {
  ...{ id: 'job-tarn', opened: AT, changed: AT, name: '', plate: 'HB TM 412', distance: '', vehicle: TARN },
  ...{ said: 'Needle drops on the motorway.', customer: 'A. Sample', limit: '150.00' },
  complaint: { id: 'reads-low-at-cruise', title: 'Reads low at steady cruise' },
  told: [{ key: 'told.weak', asked: 'Is the heater weak as well?', answer: 'Yes, on long trips' }],
  ...{ answers: [], readings: [], litres: [], torques: {}, remarks: [], found: '', did: '', watch: '' },
};

test('a wall chart says what the chosen vehicle settles, and fills one sheet of A4 and of A3', async () => {
  const { page, close } = await openPage(browser, site.root, { serviceWorkers: 'block' });
  await page.goto(`${site.root}trees/reads-low-at-cruise.html`);
  await page.emulateMedia({ media: 'print' });
  const own = page.locator('.on-this-vehicle');
  expect(await own.isVisible()).toBe(false);
  await page.evaluate((id) => window.headertank.chooseVehicle(id), TARN.id);
  await own.waitFor();
  // Its plain wax thermostat on the outlet side, a fan of one stage, switched in the radiator.
  expect(await own.locator('b[data-layout]:visible').allTextContents()).toEqual(['3', '4', 'G', '20', 'I']);
  expect(await own.textContent()).toMatch(/thermostat starts to open 87\s°C/);
  expect(await page.locator('.on-paper').first().textContent()).toContain(TARN.title);
  const size = () =>
    page.locator('.cautions').evaluate((part) => Number.parseFloat(getComputedStyle(part).fontSize));
  const sizes: number[] = [];
  for (const [format, width, height] of [
    ['A4', 718, 1047],
    ['A3', 1047, 1512],
  ] as const) {
    await page.setViewportSize({ width, height });
    sizes.push(await size());
    const pdf = (await page.pdf({ format, preferCSSPageSize: true })).toString('latin1');
    expect(pdf.match(/\/Type\s*\/Page\b/g)?.length, format).toBe(1);
  }
  expect((sizes[1] ?? 0) / (sizes[0] ?? 1)).toBeCloseTo(Math.SQRT2, 1);
  await close();
});

test('a take-in sheet is filled in from the open card of its complaint, with a limit and a line to sign', async () => {
  const { page, close } = await openPage(browser, site.root, { serviceWorkers: 'block' });
  await page.goto(`${site.root}about.html`);
  await page.evaluate((card) => {
    localStorage.setItem('headertank.job-open', JSON.stringify(card.id));
    localStorage.setItem(`headertank.job.${card.id}`, JSON.stringify(card));
  }, CARD);
  await page.goto(`${site.root}sheets/take-in/reads-low-at-cruise.html`);
  await page.getByText('Filled in from the card').waitFor();
  const lines = (await page.locator('.paper .line').allTextContents()).map((text) =>
    text.replace(/\s+/g, ' ').trim(),
  );
  expect(lines).toEqual(
    expect.arrayContaining([
      'Name A. Sample',
      'Plate HB TM 412',
      'Odometer',
      'Without a call no more than 150.00',
      'Customer, day and time',
      'Taken in by',
    ]),
  );
  expect(await page.locator('[data-card="said"]').textContent()).toBe(CARD.said);
  const asked = page.locator('.paper ol > li', { hasText: 'Is the heater weak as well?' });
  expect(await asked.locator('.empty').first().textContent()).toBe('Yes, on long trips');
  // The card is about another complaint: nothing of it stands on this sheet.
  await page.goto(`${site.root}sheets/take-in/hot-in-traffic.html`);
  await settled(page);
  expect(await page.locator('.paper').textContent()).not.toContain('HB TM 412');
  await close();
});
