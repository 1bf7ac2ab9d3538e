/** A car that is not on the shelf, on a phone: typed from a complaint, walked, on the card, kept over a reload, removed. */
import { expect, test } from 'vitest';
import type { Job } from '../../src/model/job.ts';
import { openPage, SIZES } from './browser.ts';
import { openSite } from './open-site.ts';

const { browser, site } = await openSite();
const WALK = 'symptoms/hot-in-traffic.html';
const TITLE = 'Ash 1.4 <b>, 2011';

/** Calculator, its field, what is typed there, and the figure that it makes. */
const CALCULATED = [
  ['mixture', 'cap', '1.2', '1.2 bar'],
  ['correct-mixture', 'capacity', '5.4', '5.4 l'],
  ['vacuum-fill', 'air', '0.7', '0.7 l'],
] as const;

/** A job on it that found a blocked radiator and measured two figures. */
function finishedJob(vehicle: string): Job {
  const at = '2026-11-25T14:10:00.000Z';
  const reading = (what: string, value: string) => ({ id: `reading-${value.length}`, at, what, value });
  return {
    id: 'job-measured',
    ...{ opened: at, changed: at, finished: at, name: '', plate: '', distance: '', said: '' },
    ...{ found: '', did: '', watch: '', litres: [], remarks: [], torques: {}, answers: [] },
    vehicle: { id: vehicle, title: TITLE },
    complaint: { id: 'hot-in-traffic', title: 'Hot in traffic' },
    proven: { id: 'radiator-blocked', title: 'Radiator blocked inside' },
    readings: [reading('Fan starts', '97 °C'), reading('Coolant sensor at 20 °C', '2.5 kΩ')],
  };
}

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

  // A question asks the figure that it quotes and the car has not; the next one quotes it, marked.
  await page.locator('.step[data-now] .answer').first().click();
  const asks = page.locator('.step[data-now] .own-asks');
  await asks.locator('summary').click();
  await asks.getByLabel('Fan stops').fill('12');
  await asks.getByRole('button', { name: 'Keep' }).click();
  await asks.getByText('"12" has no unit.').waitFor();
  await asks.getByLabel('Fan stops').fill('91 °C');
  await asks.getByLabel('Temperature warning').fill('115 °C');
  await asks.getByRole('button', { name: 'Keep' }).click();
  await asks.waitFor({ state: 'detached' });
  await expect
    .poll(() => page.locator('.step[data-now] [data-fig="fan.off"]').first().textContent())
    .toBe('91\u00a0°C typed by you');

  // So does the work of a procedure, torques as well; a calculator offers to keep what is typed into it.
  await page.goto(`${site.root}procedures/thermostat-replace.html`);
  await page.locator('.own-asks').getByLabel('Thermostat or water-outlet housing').fill('9 Nm');
  await page.locator('.own-asks').getByLabel('Thermostat starts to open').fill('88 °C');
  await page.locator('.own-asks').getByRole('button', { name: 'Keep' }).click();
  await page.locator('.own-asks').waitFor({ state: 'detached' });
  for (const [calculator, field, typed, kept] of CALCULATED) {
    await page.goto(`${site.root}calculators/${calculator}.html`);
    const part = page.locator(`[data-field="${field}"]`);
    await page.locator('fieldset:not([disabled])').waitFor();
    await part.getByText(`No figure of ${TITLE} here`).waitFor();
    await part.locator('input').fill(typed);
    await part.locator('input').blur();
    await page.getByRole('button', { name: `Keep ${kept} as a figure of ${TITLE}` }).click();
    await part.getByText(`From ${TITLE}.`).waitFor();
  }

  const id = await page.evaluate(() => window.headertank.vehicle?.id ?? '');
  await page.evaluate((job) => {
    const [own = ''] = Object.keys(localStorage).filter((key) => key.includes('own.'));
    localStorage.setItem(own.replace(/own\..*$/, `job.${job.id}`), JSON.stringify(job));
  }, finishedJob(id));

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
  // What was typed at the work stands there beside what is asked, and what the finished job measured is offered.
  expect(await page.locator('[name="torques/thermostat-housing/is"]').inputValue()).toBe('9 Nm');
  expect(await page.locator('[name="figures/coolant.air-space/is"]').inputValue()).toBe('0.7 l');
  expect(await page.locator('[name="figures/cap.opens/is"]').inputValue()).toBe('1.2 bar');
  await page.getByText('Fan starts: 97 °C, once; 96 °C stands there').waitFor();
  await page.getByText('Coolant sensor at 20 °C: 2.5 kΩ, once').waitFor();
  await page.getByRole('button', { name: 'Take it as a figure' }).click();
  await expect.poll(() => page.locator('[name="figures/sensor.at-20/is"]').inputValue()).toBe('2.5 kΩ');
  expect(await page.locator('[name="figures/fan.on/is"]').inputValue()).toBe('96 °C');
  await expect
    .poll(() => page.evaluate(() => window.headertank.vehicle?.figures['sensor.at-20']?.mark))
    .toBe('measured on a job');
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
