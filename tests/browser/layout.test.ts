/** What is shown fits the chosen vehicle's layout, and nothing that warns is lost by it. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openPage, type WatchedPage } from './browser.ts';
import { openSite } from './open-site.ts';

const { browser, site } = await openSite();
let watched: WatchedPage;
let page: Page;

beforeAll(async () => {
  watched = await openPage(browser, site.root, { serviceWorkers: 'block' });
  page = watched.page;
});
afterAll(async () => {
  await watched.close();
});

/** A page with a vehicle chosen, or with none. */
async function open(address: string, vehicle: string | undefined): Promise<void> {
  await page.goto(`${site.root}about.html`);
  await page.evaluate((id) => {
    if (id) localStorage.setItem('headertank.vehicle', JSON.stringify(id));
    else localStorage.removeItem('headertank.vehicle');
  }, vehicle);
  await page.goto(site.root + address);
  await page.waitForFunction(
    (wanted) =>
      !wanted || (window.headertank?.figures !== undefined && window.headertank.vehicle !== undefined),
    vehicle !== undefined,
  );
}

const stops = () => page.locator('.walk-stops .caution');

describe('a battery-electric car', () => {
  test('has no complaint of an engine, and is not walked through it', async () => {
    await open('symptoms/white-exhaust-cold-misfire.html', 'lindqual-sedge');
    await page.getByText('Not on this vehicle: it has no engine.').waitFor();
    expect(await page.locator('ht-walk .answer:visible').count()).toBe(0);
    await expect.poll(() => page.locator('[data-start-ranking] li:visible').count()).toBe(0);
    expect(await stops().textContent()).toMatch(/high-voltage.*Stop before anything is opened/s);
  });

  test('opens every other walk with high voltage, and names no cause of an engine', async () => {
    await open('symptoms/no-cabin-heat.html', 'lindqual-sedge');
    await stops().waitFor();
    const ranking = page.locator('[data-start-ranking] .ranking');
    await expect.poll(() => ranking.textContent()).not.toMatch(/[Hh]ead gasket|Thermostat/);
    expect(await page.locator('ht-walk .answer:visible').count()).toBeGreaterThan(1);
  });

  test('is given no figure of an engine', async () => {
    await page.goto(`${site.root}vehicles/lindqual-sedge.html`);
    const text = await page.locator('main').textContent();
    expect(text).not.toMatch(/Thermostat starts to open|Idle speed|Belt deflection|steady cruise/);
    expect(text).toMatch(/Cap opens/);
  });
});

test('a hybrid is stopped at its battery and inverter loops, a petrol car nowhere', async () => {
  await open('symptoms/hot-in-traffic.html', 'aldermoor-tarn-hybrid');
  await stops().waitFor();
  expect(await stops().textContent()).toMatch(/battery and inverter loops/);
  await open('symptoms/hot-in-traffic.html', 'aldermoor-tarn-16');
  expect(await stops().count()).toBe(0);
});

test('steps of other layouts fold, the rest count on, and cautions are said in full where they bite first', async () => {
  await open('procedures/thermostat-replace.html', undefined);
  const all = await page.locator('ol.work > li').count();
  expect(await page.locator('ol.work > li:visible').count()).toBe(all);
  const names = await page.locator('.caution.names a').allTextContents();
  expect(names.length).toBeGreaterThan(3);
  // Each name of the top line has its whole text at a step.
  for (const name of names)
    expect(await page.locator('ol.work .caution', { hasText: name }).first().textContent(), name).toMatch(
      new RegExp(`${name}\\. .{15,}`),
    );

  await open('procedures/thermostat-replace.html', 'aldermoor-tarn-16');
  const fold = page.getByRole('button', { name: /^\d steps for other layouts$/ });
  await fold.waitFor();
  const folded = Number.parseInt((await fold.textContent()) ?? '', 10);
  expect(await page.locator('ol.work > li:visible').count()).toBe(all - folded);
  await fold.click();
  expect(await page.locator('ol.work > li:visible').count()).toBe(all);
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('ol.work > li:visible').count()).toBe(all - folded);
  await page.emulateMedia({ media: 'screen' });
});

test('a caution about high voltage stands for everybody, but not on a chosen petrol car', async () => {
  const name = page.locator('.caution.names a', { hasText: 'high-voltage' });
  await open('procedures/gravity-fill-and-bleed.html', undefined);
  await expect.poll(() => name.isVisible()).toBe(true);
  await open('procedures/gravity-fill-and-bleed.html', 'aldermoor-tarn-hybrid');
  await expect.poll(() => name.isVisible()).toBe(true);
  await open('procedures/gravity-fill-and-bleed.html', 'aldermoor-tarn-16');
  await expect.poll(() => name.isVisible()).toBe(false);
});

test('known so far offers what this layout allows, by the state of the engine', async () => {
  await open('symptoms/reads-low-at-cruise.html', 'aldermoor-tarn-16');
  await page.locator('summary', { hasText: 'Known so far' }).click();
  await page.locator('.known-row').first().waitFor();
  const ids = await page
    .locator('.known-row:visible > p[id]')
    .evaluateAll((list) => list.map((each) => each.id));
  expect(ids).toContain('known-hose-warm-up-outlet-side');
  expect(ids).not.toContain('known-hose-warm-up-inlet-side');
  expect(ids).not.toContain('known-viscous-spin-down');
  expect(ids).not.toContain('known-map-thermostat-circuit');
  expect(await page.locator('.known-rows h3:visible').allTextContents()).toEqual([
    'Engine cold',
    'Cold or warm',
    'Engine warm or running',
    'Electrical',
    'Opened or taken off',
  ]);
});

test('codes of parts this vehicle has not are left out', async () => {
  const code = page.locator('aside a', { hasText: 'P0598' });
  await open('symptoms/reads-low-at-cruise.html', undefined);
  await expect.poll(() => code.isVisible()).toBe(true);
  await open('symptoms/reads-low-at-cruise.html', 'aldermoor-tarn-16');
  await expect.poll(() => code.isVisible()).toBe(false);
  // With all of them the heading goes.
  const heading = page.getByRole('heading', { name: 'A first check for' });
  await open('tests/electric-pump-drive.html', undefined);
  await expect.poll(() => heading.isVisible()).toBe(true);
  await open('tests/electric-pump-drive.html', 'aldermoor-tarn-16');
  await page.getByText('Only on vehicles with: an electric coolant pump.').waitFor();
  await expect.poll(() => heading.isVisible()).toBe(false);
});
