/** The open card and its vehicle: the top line, the way back to the complaint, the plan of a proven cause, ticked steps. */
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import type { Job } from '../../src/model/job.ts';
import { openPage } from './browser.ts';
import { giveAnswer } from './give-answer.ts';
import { openSite } from './open-site.ts';

const { browser, site } = await openSite();

const quiet = { serviceWorkers: 'block' as const };
const AT = '2026-11-25T10:00:00.000Z';
const TARN = { id: 'aldermoor-tarn-16', title: 'Aldermoor Tarn 1.6 petrol, 2006-2012' };
const GRITSTONE = { id: 'harrowby-gritstone-30', title: 'Harrowby Gritstone 3.0 V6 pickup, 2003-2010' };

/** A card as the site kept it before plans, follow-ups and ticked steps were there. */
function oldCard(id: string, plate: string, vehicle: Job['vehicle']): Job {
  return {
    ...{ id, opened: AT, changed: AT, name: '', plate, distance: '', said: '', vehicle },
    complaint: { id: 'reads-low-at-cruise', title: 'Reads low at steady cruise' },
    proven: { id: 'thermostat-stuck-open', title: 'Thermostat stuck open' },
    ...{ answers: [], readings: [], litres: [], torques: {}, remarks: [], found: '', did: '', watch: '' },
  };
}

async function keepOnDevice(page: Page, kept: Record<string, unknown>): Promise<void> {
  await page.goto(`${site.root}about.html`);
  await page.evaluate((all) => {
    for (const [name, value] of Object.entries(all))
      localStorage.setItem(`headertank.${name}`, JSON.stringify(value));
  }, kept);
}

const tarnCard = {
  vehicle: TARN.id,
  'job-open': 'job-tarn',
  'job.job-tarn': oldCard('job-tarn', 'HB TM 412', TARN),
};

describe('the top line', () => {
  for (const width of [390, 320])
    test(`is two lines at ${width}, with the open card and the vehicle`, async () => {
      const { page, close } = await openPage(browser, site.root, {
        ...quiet,
        viewport: { width, height: 800 },
      });
      await keepOnDevice(page, tarnCard);
      await page.goto(`${site.root}tools/refractometer.html`);
      await page.locator('.top-vehicle summary', { hasText: 'Tarn 1.6' }).waitFor();
      const top = await page.locator('.top').boundingBox();
      expect(top?.height).toBeLessThan(110);
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth - innerWidth),
      ).toBeLessThanOrEqual(0);
      await page.getByRole('link', { name: /HB TM 412/ }).click();
      await page.locator('ht-job-card[data-live]').waitFor();
      await close();
    });

  test('by the keyboard: to the other card, whose vehicle comes with it; and to no vehicle', async () => {
    const { page, close } = await openPage(browser, site.root, quiet);
    await keepOnDevice(page, { ...tarnCard, 'job.job-grit': oldCard('job-grit', 'HB GS 3', GRITSTONE) });
    await page.goto(`${site.root}procedures/thermostat-replace.html`);
    const summary = page.locator('.top-vehicle summary');
    await summary.filter({ hasText: 'Tarn 1.6' }).waitFor();
    await summary.focus();
    await page.keyboard.press('Enter');
    const other = page.getByRole('button', { name: /^HB GS 3/ });
    await other.waitFor();
    await page.keyboard.press('Escape');
    await other.waitFor({ state: 'hidden' });
    expect(await summary.evaluate((each) => each === document.activeElement)).toBe(true);
    await page.keyboard.press('Enter');
    await other.focus();
    await page.keyboard.press('Enter');
    await summary.filter({ hasText: 'Gritstone' }).waitFor();
    await page
      .getByRole('link', { name: /HB GS 3/ })
      .first()
      .waitFor();
    await page.reload();
    await summary.filter({ hasText: 'Gritstone' }).click();
    await page.getByRole('button', { name: /^Remove Harrowby/ }).click();
    await summary.filter({ hasText: 'No vehicle' }).waitFor();
    await close();
  });
});

test('after a vehicle is chosen the way leads back to the walk and its answers; another car begins another card', async () => {
  const { page, close } = await openPage(browser, site.root, quiet);
  await keepOnDevice(page, tarnCard);
  await page.goto(`${site.root}symptoms/reads-low-at-cruise.html`);
  await page.locator('ht-walk[data-live]').waitFor();
  await giveAnswer(page, page.locator('.step[data-now] .answers .answer').first());
  await expect.poll(() => page.evaluate(() => location.hash)).not.toBe('');
  await page.goto(`${site.root}index.html`);
  await page.getByRole('link', { name: 'Go on with: Reads low at steady cruise' }).waitFor();
  await page.getByRole('link', { name: /^Job card: HB TM 412/ }).waitFor();
  await page.goto(`${site.root}vehicles/index.html`);
  await page.getByRole('button', { name: `Work on this: ${GRITSTONE.title}` }).click();
  await page.getByText('what comes now begins a new one').waitFor();
  await page.getByRole('link', { name: 'Back to: Reads low at steady cruise' }).click();
  await page.waitForURL(/symptoms\/reads-low-at-cruise\.html#./);
  await page.locator('.trail li').first().waitFor();
  await close();
});

test('the vehicle is chosen within the walk: the answers stay, its figures come, and the card takes it', async () => {
  const { page, close } = await openPage(browser, site.root, quiet);
  const { vehicle: _, ...noVehicle } = tarnCard;
  await keepOnDevice(page, { ...noVehicle, 'job.job-tarn': oldCard('job-tarn', 'HB TM 412', undefined) });
  await page.goto(`${site.root}symptoms/reads-low-at-cruise.html`);
  await page.locator('ht-walk[data-live]').waitFor();
  await giveAnswer(page, page.locator('.step[data-now] .answers .answer').first());
  const asked = await page.locator('.trail li').first().textContent();
  const at = page.url();
  await page.getByRole('button', { name: 'Choose the vehicle' }).click();
  const field = page.locator('ht-walk').getByLabel('Vehicle: any part of its name');
  await expect.poll(() => field.evaluate((each) => each === document.activeElement)).toBe(true);
  await field.fill('no such car');
  await page.getByText('No vehicle on this shelf has that name.').waitFor();
  await field.fill('2006 TARN');
  await page.locator('ht-walk').getByRole('button', { name: TARN.title }).click();
  await page.locator('.top-vehicle summary', { hasText: 'Tarn 1.6' }).waitFor();
  await field.waitFor({ state: 'detached' });
  await expect
    .poll(() => page.evaluate(() => document.activeElement?.matches('.step[data-now] h3')))
    .toBe(true);
  expect(page.url()).toBe(at);
  expect(await page.locator('.trail li').first().textContent()).toBe(asked);
  // Of what kind its thermostat is and where it sits, the vehicle says itself.
  const itself = page.locator('.trail li', { hasText: 'from the vehicle' });
  await expect.poll(() => itself.count()).toBe(2);
  await page.goto(`${site.root}job.html`);
  await page.locator('ht-job-card').getByText(TARN.title).first().waitFor();
  await close();
});

test('on any page the vehicle is chosen from the top line, and without a connection it says so', async () => {
  const { page, close } = await openPage(browser, site.root, { ...quiet, expected: /ERR_FAILED/ });
  await page.goto(`${site.root}procedures/thermostat-replace.html`);
  const summary = page.locator('.top-vehicle summary');
  await page.route('**/data/vehicles.js', (route) => route.abort());
  await summary.click();
  await page.getByText('The vehicles cannot be fetched').waitFor();
  await page.unroute('**/data/vehicles.js');
  await page.reload();
  await summary.click();
  await page.getByRole('button', { name: TARN.title }).click();
  await summary.filter({ hasText: 'Tarn 1.6' }).waitFor();
  await expect.poll(() => summary.evaluate((each) => each === document.activeElement)).toBe(true);
  await close();
});

test('Enter takes the only vehicle that fits, and of several none unseen', async () => {
  const { page, close } = await openPage(browser, site.root, quiet);
  await page.goto(`${site.root}procedures/thermostat-replace.html`);
  const summary = page.locator('.top-vehicle summary');
  await summary.click();
  const choice = page.locator('.top-vehicle ht-vehicle-choice');
  const field = choice.getByLabel('Vehicle: any part of its name');
  const rows = choice.getByRole('button');
  await field.fill('tarn');
  await expect.poll(() => rows.count()).toBeGreaterThan(1);
  await field.press('Enter');
  expect(await rows.first().evaluate((each) => each === document.activeElement)).toBe(true);
  expect(await summary.textContent()).toContain('No vehicle');
  await field.fill('2006 TARN');
  await expect.poll(() => rows.count()).toBe(1);
  await field.press('Enter');
  await summary.filter({ hasText: 'Tarn 1.6' }).waitFor();
  await close();
});

test('at the counter: minutes at the top, and an estimate with them filled in', async () => {
  const { page, close } = await openPage(browser, site.root, quiet);
  await page.goto(`${site.root}symptoms/reads-low-at-cruise.html`);
  const said = await page
    .locator('p', { hasText: /^Book \d+ min to find it/ })
    .first()
    .textContent();
  const [, nine = '', find = ''] =
    /Book\s+(\d+)\s+min\s+to find it, on average\s+(\d+)/.exec(said ?? '') ?? [];
  await page.getByRole('link', { name: 'Estimate for the likeliest' }).click();
  await page.getByText('Your figures. A reading that is not typed does not count.').waitFor();
  expect(await page.locator('[name="find"]').inputValue()).toBe(find);
  expect(await page.locator('[name="find-nine"]').inputValue()).toBe(nine);
  expect(Number(await page.locator('[name="repair"]').inputValue())).toBeGreaterThan(0);
  expect(await page.locator('[name="rate"]').inputValue()).not.toBe('');
  await close();
});

test('the take-in sheet has the minutes of the car that is taken in, as the complaint has them', async () => {
  const { page, close } = await openPage(browser, site.root, quiet);
  await page.goto(`${site.root}vehicles/index.html`);
  await page.getByRole('button', { name: `Work on this: ${GRITSTONE.title}` }).click();
  await page.goto(`${site.root}symptoms/hot-in-traffic.html`);
  const counter = page.locator('#counter');
  await expect.poll(() => counter.textContent()).toContain(`Counted for ${GRITSTONE.title}`);
  const [, nine, find] =
    /Book\s+(\d+)\s+min\s+to find it, enough for nine in ten; on average it takes\s+(\d+)/.exec(
      (await counter.textContent()) ?? '',
    ) ?? [];
  expect(Number(nine)).toBeGreaterThan(Number(find));
  await page.goto(`${site.root}sheets/take-in/hot-in-traffic.html`);
  await expect
    .poll(() => page.locator('.paper').textContent())
    .toMatch(
      new RegExp(
        `Book ${nine} min to find it, enough for nine in ten; on average it takes ${find} min\\..*Counted for ${GRITSTONE.title}`,
      ),
    );
  await close();
});

test('with the cause proven the card is the main way on from the walk', async () => {
  const { page, close } = await openPage(browser, site.root, quiet);
  await page.goto(`${site.root}symptoms/reads-low-at-cruise.html`);
  await page.locator('ht-walk[data-live]').waitFor();
  await giveAnswer(page, page.locator('.step[data-now] .answers .answer').first());
  const toCard = page.locator('.walk-foot').getByRole('button', { name: 'To the job card' });
  await toCard.waitFor();
  expect(await toCard.getAttribute('class')).toBe('quiet');
  await page.evaluate(() => {
    location.hash +=
      '&hose-warm-up-outlet-side=warm-early&thermostat-inspection=gapes-cold&thermostat-bench-test=open-when-cold';
  });
  await page.getByRole('heading', { name: 'Proven: Thermostat stuck open' }).waitFor();
  await expect.poll(() => toCard.getAttribute('class')).toBe('main');
  await toCard.click();
  await page.getByText('On the job card:').waitFor();
  await page.locator('ht-open-job a').click();
  await page.locator('.plan').getByRole('link', { name: 'Estimate' }).waitFor();
  // The call about the same car is no second card.
  await page.goto(`${site.root}symptoms/reads-low-at-cruise.html`);
  await page.getByRole('link', { name: 'Open a job card for this call' }).click();
  await page.locator('ht-job-card[data-live]').waitFor();
  await page.locator('.plan').getByRole('link', { name: 'Estimate' }).waitFor();
  expect(await page.getByText(/^Card without a name/).count()).toBe(1);
  await close();
});

test('another cause proven: the customer’s sheet says nothing of the first', async () => {
  const { page, close } = await openPage(browser, site.root, quiet);
  const handOver = async (answers: string, proven: string) => {
    await page.goto(`${site.root}symptoms/reads-low-at-cruise.html#${answers}`);
    await page.reload();
    await page.getByRole('heading', { name: `Proven: ${proven}` }).waitFor();
    await page.locator('.walk-foot').getByRole('button', { name: 'To the job card' }).click();
    await page.getByText('On the job card: ').waitFor();
    await page.goto(`${site.root}job.html`);
    await expect
      .poll(() => page.getByLabel('What we found').inputValue())
      .toMatch(new RegExp(`^${proven}\\. `));
  };
  await handOver(
    'hose-warm-up-outlet-side=warm-early&thermostat-inspection=gapes-cold&thermostat-bench-test=open-when-cold',
    'Thermostat stuck open',
  );
  await handOver(
    'hose-warm-up-outlet-side=warm-on-time&compare-readings=scan-reads-low&sensor-resistance=too-high&prove.sensor-reads-low=proven',
    'Coolant sensor reads low',
  );
  await page.getByRole('link', { name: 'Customer sheet' }).click();
  await expect.poll(() => page.locator('.paper').textContent()).toContain('Coolant sensor reads low');
  expect(await page.locator('.paper').textContent()).not.toContain('Thermostat stuck open');
  await close();
});

test('a proven cause brings its plan: work, this repair’s torques, drafts to change, one parts list', async () => {
  const { page, close } = await openPage(browser, site.root, quiet);
  await keepOnDevice(page, tarnCard);
  await page.goto(`${site.root}job.html`);
  const plan = page.locator('.plan');
  await plan.getByRole('link', { name: 'Replace the thermostat' }).waitFor();
  await expect.poll(() => plan.textContent()).toContain('3.4\u00a0l to go in');
  expect(await plan.textContent()).toContain('Thermostat with the stamp of 87\u00a0°C');
  expect(await page.locator('.torques li').first().textContent()).toContain(
    'Thermostat or water-outlet housing',
  );
  expect(await page.locator('.torques li').count()).toBeLessThan(4);
  await page.getByText('Other joints of this vehicle').click();
  expect(await page.locator('.torques-rest li').count()).toBeGreaterThan(2);
  await expect
    .poll(() => page.getByLabel('What we found').inputValue())
    .toMatch(/^Thermostat stuck open\. .*78\u00a0°C/);
  await page.getByLabel('What we found').fill('');
  await page.reload();
  await plan.getByRole('link', { name: 'Replace the thermostat' }).waitFor();
  await expect.poll(() => page.getByLabel('What to watch').inputValue()).not.toBe('');
  expect(await page.getByLabel('What we found').inputValue()).toBe('');
  // Filled: the level of the next morning is open until it is read.
  await page.getByLabel('Drained or filled').selectOption('filled');
  await page.getByLabel('Litres', { exact: true }).fill('3.4');
  await page.getByRole('button', { name: 'Add litres' }).click();
  await expect
    .poll(() => page.locator('.cards').textContent())
    .toContain('Still open: Level after the night');
  await page.getByLabel(/^Reading: Level after the night/).fill('at the mark');
  await page.getByRole('button', { name: /^Done: Level after the night/ }).click();
  await expect.poll(() => page.locator('.open-items').textContent()).toContain('at the mark');
  expect(await page.locator('.cards').textContent()).not.toContain('Still open');
  await page.getByRole('link', { name: 'Parts list' }).click();
  await expect.poll(() => page.locator('.paper').textContent()).toContain('Seal rings for the bleed screws');
  await close();
});

test('steps ticked on a procedure stay with the card', async () => {
  const { page, close } = await openPage(browser, site.root, quiet);
  await page.goto(`${site.root}procedures/final-proof-run.html`);
  await page.getByRole('link', { name: 'Log it or enter it here' }).waitFor();
  expect(await page.locator('ht-steps label.tick').count()).toBe(0);
  await keepOnDevice(page, tarnCard);
  await page.goto(`${site.root}procedures/final-proof-run.html`);
  await page.getByLabel(/^Done: Cold, before the start/).check();
  await page.getByText(/^1 of \d+ steps ticked on the card/).waitFor();
  await page.reload();
  await page.getByText(/^1 of \d+ steps ticked on the card/).waitFor();
  expect(await page.getByLabel(/^Done: Cold, before the start/).isChecked()).toBe(true);
  await page.goto(`${site.root}job.html`);
  await page.locator('.plan', { hasText: '1 step ticked' }).waitFor();
  await close();
});

test('a vehicle whose figures cannot be fetched stays chosen; one that is off the shelf is told and forgotten', async () => {
  const { page } = await openPage(browser, site.root, quiet);
  await page.goto(`${site.root}vehicles/index.html`);
  await page.getByRole('button', { name: `Work on this: ${GRITSTONE.title}` }).click();
  const line = page.locator('ht-vehicle');
  await page.route('**/data/vehicles/*', (route) => route.abort());
  await page.goto(`${site.root}tools/index.html`);
  await expect.poll(() => line.textContent()).toContain('cannot be fetched just now');
  await page.unroute('**/data/vehicles/*');
  await page.reload();
  await expect.poll(() => line.textContent()).toContain('Gritstone');
  await page.route('**/data/vehicles/*', (route) => route.fulfill({ status: 404, body: '' }));
  await page.reload();
  await expect.poll(() => line.textContent()).toContain('no longer on the shelf');
  await page.reload();
  expect((await line.textContent())?.trim()).toBe('No vehicle');
  // The lines in the console are the browser's own about the two answers that failed.
  await page.context().close();
});
