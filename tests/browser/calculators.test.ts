/** Calculators in a browser: what is typed, where it stays, whose figures they are. */
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { CALCULATOR_IDS } from '../../src/model/calculator-ids.ts';
import { builtSite, folderRoot, openPage, SIZES, settled } from './browser.ts';
import { openSite } from './open-site.ts';

const { browser, site } = await openSite();

/** No test here is about the site without a connection, so none fetches all of it. */
const open = (options = {}) => openPage(browser, site.root, { serviceWorkers: 'block', ...options });

async function goTo(page: Page, id: string, hash = ''): Promise<void> {
  await page.goto(`${site.root}calculators/${id}.html${hash}`);
  await page.locator('fieldset:not([disabled])').waitFor();
}

async function sentence(page: Page): Promise<string> {
  const said = await page.locator('.answer-sentence').textContent();
  return (said ?? '').replaceAll('\u00a0', ' ');
}

/** A vehicle chosen as a reader does, on its page. */
async function chooseVehicle(page: Page, id: string): Promise<void> {
  await page.goto(`${site.root}vehicles/${id}.html`);
  await page.locator('ht-choose-vehicle button').click();
  await page.locator('.vehicle-chosen').waitFor();
}

describe('every calculator', () => {
  test('says before scripts run what it says after, and fits a phone', async () => {
    const still = await open({ javaScriptEnabled: false });
    const live = await open({ viewport: SIZES.phone });
    for (const id of CALCULATOR_IDS) {
      await still.page.goto(`${site.root}calculators/${id}.html`);
      expect(await still.page.locator('fieldset').getAttribute('disabled'), id).not.toBeNull();
      await goTo(live.page, id);
      expect(await sentence(live.page), id).toBe(await sentence(still.page));
      const width = await live.page.evaluate(() => document.documentElement.scrollWidth);
      expect(width, id).toBeLessThanOrEqual(SIZES.phone.width);
    }
    await still.close();
    await live.close();
  });
});

describe('typing', () => {
  test('changes the answer at once, and the address keeps it for a reload', async () => {
    const { page, close } = await open();
    await goTo(page, 'fill-account');
    await page.getByLabel('Came out, measured', { exact: true }).fill('4.0');
    await page.getByLabel('The level before draining').selectOption('mark');
    await page.getByLabel('Went back in so far', { exact: true }).fill('3.9');
    expect(await sentence(page)).toContain('What came out is back in');
    await page.waitForURL(/#.*refilled/);
    expect(new URLSearchParams(new URL(page.url()).hash.slice(1)).get('refilled')).toBe('3.9 l');
    await page.reload();
    await page.locator('fieldset:not([disabled])').waitFor();
    expect(await page.getByLabel('Went back in so far', { exact: true }).inputValue()).toBe('3.9');
    expect(await sentence(page)).toContain('What came out is back in');
    await close();
  });

  test('a unit typed with the number goes to its place beside it', async () => {
    const { page, close } = await open();
    await goTo(page, 'boil-margin');
    await page.getByLabel('Cap opens at', { exact: true }).fill('15 psi');
    const typed = await sentence(page);
    await page.keyboard.press('Tab');
    expect(await page.getByLabel('Cap opens at', { exact: true }).inputValue()).toBe('15');
    expect(await page.getByLabel('Unit of: Cap opens at').inputValue()).toBe('psi');
    expect(await sentence(page)).toBe(typed);
    await close();
  });

  test('a decimal comma is taken, and its field says as what', async () => {
    const { page, close } = await open({ viewport: SIZES.phone });
    await goTo(page, 'heat-balance');
    await page.getByLabel('Hose coming out', { exact: true }).fill('75');
    await page.getByLabel('Hose going in', { exact: true }).fill('83,5');
    expect(await page.locator('[data-field="hot"] .says').textContent()).toContain('Read as 83.5 °C.');
    expect(await sentence(page)).toContain('9 K between the hoses');
    expect(await page.getByLabel('Hose going in', { exact: true }).inputValue()).toBe('83,5');
    await close();
  });

  test('a comma that may be for thousands is said at its field, what was typed stays, and the place of the answer is kept', async () => {
    const { page, close } = await open({ viewport: SIZES.phone });
    await goTo(page, 'fill-account');
    const field = page.getByLabel('The whole system holds', { exact: true });
    await page.getByLabel('Came out, measured', { exact: true }).fill('4.0');
    await page.getByLabel('Went back in so far', { exact: true }).fill('2.3');
    const height = await page.locator('.answer-detail').evaluate((part) => part.clientHeight);
    await field.fill('4,600');
    expect(await page.locator('[data-field="capacity"] .says').textContent()).toBe(
      '"4,600 l" may be read in two ways. Write 4.600 l or 4600 l, whichever is meant.',
    );
    expect(await field.getAttribute('aria-invalid')).toBe('true');
    expect(await field.inputValue()).toBe('4,600');
    expect(await sentence(page)).toBe('No figure yet.');
    expect(await page.locator('.answer-detail').evaluate((part) => part.clientHeight)).toBeGreaterThanOrEqual(
      height,
    );
    await field.fill('4.6');
    expect(await field.getAttribute('aria-invalid')).toBe('false');
    expect(await sentence(page)).toContain('1.7 l of air');
    await close();
  });

  test('markup typed in a field, or sent in an address, stays text', async () => {
    const { page, close } = await open();
    await goTo(page, 'fill-account', '#capacity=%3Cimg+src%3Dx%3E&level=%3Cb%3E&nothing=1');
    expect(await page.locator('.calculator img').count()).toBe(0);
    expect(await page.locator('[data-field="capacity"] .says').textContent()).toContain('<img src=x>');
    await close();
  });
});

describe('an example', () => {
  test('is called one and alarms nobody until a figure is typed, and does not go onto a job card', async () => {
    const { page, close } = await open();
    await goTo(page, 'fill-account');
    const toCard = page.getByRole('button', { name: 'To the job card' });
    expect(await sentence(page)).toMatch(/^Example: About 1\.7 l of air/);
    expect(await page.locator('.answer-sentence.stop').count()).toBe(0);
    expect(await toCard.isVisible()).toBe(false);
    await page.getByLabel('Went back in so far', { exact: true }).fill('2');
    await page.getByLabel('Came out, measured', { exact: true }).fill('4');
    expect(await sentence(page)).toMatch(/^About 2\.0 l of air/);
    expect(await page.locator('.answer-sentence.stop').count()).toBe(1);
    expect(await toCard.isVisible()).toBe(true);
    await close();
  });

  test('of a reading leaves its field with the first figure typed, and is no reading any more', async () => {
    const { page, close } = await open({ viewport: SIZES.phone });
    await goTo(page, 'sensor');
    expect(await sentence(page)).toMatch(/^Example: All three agree/);
    await page.getByLabel('Measured on the sensor', { exact: true }).fill('300');
    expect(await page.getByLabel('Scan tool shows', { exact: true }).inputValue()).toBe('');
    expect(await page.getByLabel('Infrared shows', { exact: true }).inputValue()).toBe('');
    expect(await page.getByLabel('At 80 °C', { exact: true }).inputValue()).toBe('323');
    expect(await sentence(page)).toMatch(/^This resistance means 8\d °C/);
    await goTo(page, 'pressure-decay');
    await page.getByLabel('Tester at the start', { exact: true }).fill('1.2');
    expect(await sentence(page)).toBe('No figure yet.');
    expect(await page.locator('.answer-detail').textContent()).toContain('Tester at the end: Write a number');
    expect(await page.locator('[data-field="end"]').getAttribute('data-fault')).toBeNull();
    await close();
  });

  test('takes the litres of the whole from a chosen vehicle, and none as measured at its drain', async () => {
    const { page, close } = await open();
    await chooseVehicle(page, 'aldermoor-tarn-16');
    await goTo(page, 'fill-account');
    await page.locator('[data-field="capacity"] .says', { hasText: 'From Aldermoor Tarn' }).waitFor();
    expect(await page.getByLabel('The whole system holds', { exact: true }).inputValue()).toBe('5.6');
    // The shelf says 3.4 l for its drain: that is what usually comes out, and nobody has measured it here.
    const drained = page.getByLabel('Came out, measured', { exact: true });
    expect(await drained.inputValue()).toBe('4.0');
    expect(await page.locator('[data-field="drained"] .says').textContent()).not.toContain('From');
    expect(await sentence(page)).toMatch(/^Example: /);
    await page.getByLabel('Went back in so far', { exact: true }).fill('3.4');
    expect(await drained.inputValue()).toBe('');
    expect(await sentence(page)).toBe('No figure yet.');
    await close();
  });
});

describe('units', () => {
  test('US customary shows and takes them, and what was typed before keeps its meaning', async () => {
    const { page, close } = await open();
    await goTo(page, 'boil-margin');
    await page.getByLabel('Coolant now', { exact: true }).fill('118');
    await page.getByRole('button', { name: 'US units' }).click();
    await expect.poll(() => page.getByLabel('Cap opens at', { exact: true }).inputValue()).toBe('20');
    expect(await page.getByLabel('Unit of: Coolant now').inputValue()).toBe('°C');
    expect(await page.getByLabel('Unit of: Cap opens at').inputValue()).toBe('psi');
    expect(await sentence(page)).toMatch(/^3\d °F to boiling, which comes at 27\d °F/);
    expect(await page.locator('.drawing-ladder').innerHTML()).toContain('°F');
    await close();
  });

  test('leave a US reader no kelvin and no °C in hints, labels and the method, and come back', async () => {
    const { page, close } = await open({ viewport: SIZES.phone });
    for (const id of ['boil-margin', 'sensor', 'level', 'bench-test']) {
      await goTo(page, id);
      const metric = await page.locator('article').textContent();
      await page.getByRole('button', { name: 'US units' }).click();
      await expect
        .poll(() => page.locator('article').textContent())
        .not.toMatch(/\d\s(K|°C)(?![\p{L}\d·/²³])/u);
      await page.getByRole('button', { name: 'metric units' }).click();
      await expect.poll(() => page.locator('article').textContent()).toBe(metric);
    }
    await close();
  });

  test('picked beside an example converts it; beside what was typed it says how that is read', async () => {
    const { page, close } = await open();
    await goTo(page, 'torque');
    const field = page.getByLabel('Torque given', { exact: true });
    const unit = page.getByLabel('Unit of: Torque given');
    await unit.selectOption('lbf·in');
    expect(await field.inputValue()).toBe('89');
    await field.fill('89');
    await unit.selectOption('N·m');
    expect(await field.inputValue()).toBe('89');
    expect(await sentence(page)).toContain('Do not use 89 N·m here');
    await close();
  });
});

describe('a chosen vehicle', () => {
  test('gives its figures as the defaults, and the field says whose they are', async () => {
    const { page, close } = await open();
    await chooseVehicle(page, 'aldermoor-fell-20d');
    await goTo(page, 'boil-margin');
    await page.getByText('From Aldermoor Fell 2.0 diesel').first().waitFor();
    expect(await page.getByLabel('Cap opens at', { exact: true }).inputValue()).toBe('1.4');
    await goTo(page, 'fill-account');
    await page.getByText('From Aldermoor Fell 2.0 diesel').first().waitFor();
    expect(await page.getByLabel('The whole system holds', { exact: true }).inputValue()).toBe('7.8');
    await page.getByLabel('The whole system holds', { exact: true }).fill('7.5');
    expect(await page.locator('[data-field="capacity"] .says').textContent()).not.toContain('From');
    await close();
  });

  test('offers its joints to the torque calculator, bolt and hole with them', async () => {
    const { page, close } = await open();
    await chooseVehicle(page, 'aldermoor-fell-20d');
    await goTo(page, 'torque');
    await page.getByLabel('Joint of this vehicle').selectOption('Water pump to block');
    expect(await page.getByLabel('Torque given', { exact: true }).inputValue()).toBe('22');
    expect(await page.getByLabel('Thread', { exact: true }).inputValue()).toBe('M8');
    expect(await sentence(page)).toContain('22 N·m fits an M8');
    await close();
  });
});

describe('folded into a step', () => {
  test('its arithmetic is asked for when it is opened, and not before', async () => {
    const { page, close } = await open({ viewport: SIZES.phone });
    const asked: string[] = [];
    page.on('request', (request) => asked.push(new URL(request.url()).pathname));
    await page.goto(`${site.root}procedures/gravity-fill-and-bleed.html`);
    await settled(page);
    expect(asked.filter((name) => /calculator-live|calculators\//.test(name))).toEqual([]);
    const part = page
      .locator('details.calculator', { has: page.locator('[data-id="fill-account"]') })
      .first();
    await part.locator('summary').click();
    await part.locator('fieldset:not([disabled])').waitFor();
    // An example would be taken for this car's figures: none stands there.
    expect(await part.locator('.answer-sentence').textContent()).toBe(
      'Choose the vehicle or type the figures.',
    );
    await part.getByLabel('Came out, measured', { exact: true }).fill('4,0');
    expect(await part.locator('.answer-sentence').textContent()).toBe('No figure yet.');
    await part.getByLabel('Went back in so far', { exact: true }).fill('3.9');
    await part.getByLabel('The level before draining').selectOption('mark');
    expect(await part.locator('.answer-sentence').textContent()).toContain('What came out is back in');
    expect(page.url()).not.toContain('#');
    await close();
  });

  test('without scripts it says so and leads to its own page, where the example is worked out', async () => {
    const { page, close } = await open({ javaScriptEnabled: false });
    await page.goto(`${site.root}procedures/gravity-fill-and-bleed.html`);
    const part = page.locator('details.calculator').first();
    await part.locator('summary').click();
    expect(await part.locator('noscript').textContent()).toBe('The fields come once scripts may run.');
    await part.getByRole('link', { name: 'Formula, source and range of validity' }).click();
    await page.waitForURL(/\/calculators\//);
    expect(await page.locator('.answer-sentence').textContent()).toMatch(/^Example: /);
    await close();
  });

  test.each([
    ['from a server', () => site.root],
    ['from a folder', () => folderRoot(builtSite())],
  ])('brings its styles %s', async (_, root) => {
    const { page, close } = await openPage(browser, root());
    await page.goto(`${root()}procedures/gravity-fill-and-bleed.html`);
    const part = page.locator('details.calculator', { has: page.locator('[data-id="level"]') });
    await part.locator('summary').click();
    await part.locator('fieldset:not([disabled])').waitFor();
    expect(await part.locator('fieldset').evaluate((fields) => getComputedStyle(fields).display)).toBe(
      'grid',
    );
    await close();
  });

  test('takes joint, thread and torque of the step, and shows no other figure beside it', async () => {
    const { page, close } = await open({ viewport: SIZES.phone });
    const part = page.locator('details.calculator', {
      has: page.locator('[data-joint="thermostat-housing"]'),
    });
    await page.goto(`${site.root}procedures/thermostat-replace.html`);
    await part.locator('summary').click();
    await part.locator('fieldset:not([disabled])').waitFor();
    expect(await part.locator('.worked').textContent()).not.toMatch(/\d/);
    await page.emulateMedia({ media: 'print' });
    expect(await part.isVisible()).toBe(false);
    await page.emulateMedia({ media: 'screen' });
    await chooseVehicle(page, 'harrowby-gritstone-30');
    await page.goto(`${site.root}procedures/thermostat-replace.html`);
    await part.locator('summary').click();
    await expect
      .poll(async () => (await part.locator('.answer-sentence').textContent())?.replaceAll('\u00a0', ' '))
      .toMatch(/^20 N·m fits an M8/);
    expect(await part.getByLabel('Joint of this vehicle').inputValue()).toBe(
      'Thermostat or water-outlet housing',
    );
    expect(await part.locator('[data-field="thread"] .says').textContent()).toContain(
      'From Harrowby Gritstone',
    );
    await close();
  });
});

describe('the estimate', () => {
  test('starts at the rate of the shop', async () => {
    const { page, close } = await open();
    await goTo(page, 'estimate');
    expect(await page.getByLabel('Rate for an hour').inputValue()).toBe('68');
    expect(await sentence(page)).toMatch(/^Example: Book 2 h 45 min\. Tell the customer \d+ EUR/);
    await close();
  });
});
