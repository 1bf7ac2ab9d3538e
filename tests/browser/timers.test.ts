/** The timers at steps, by a clock that the test sets: started, loaded anew, two at once, over, taken off, put back. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openPage } from './browser.ts';
import { openSite } from './open-site.ts';

const { browser, site } = await openSite();
const START = Date.UTC(2026, 10, 25, 10);

const lines = (page: Page) => page.locator('.timers li');
/** Sets the clock of the page, so many minutes after the start. */
const at = (page: Page, minutes: number) => page.clock.setFixedTime(START + minutes * 60_000);

test('a time started at a step runs by the clock through reload and other pages, rings, and can be put back', async () => {
  const { page, close } = await openPage(browser, site.root, {
    serviceWorkers: 'block',
    viewport: { width: 390, height: 844 },
  });
  await page.addInitScript(() => {
    const { start } = OscillatorNode.prototype;
    OscillatorNode.prototype.start = function (when) {
      document.documentElement.dataset.sounds = String(
        Number(document.documentElement.dataset.sounds ?? 0) + 1,
      );
      start.call(this, when);
    };
    navigator.vibrate = () => {
      document.documentElement.dataset.vibrated = 'yes';
      return true;
    };
  });
  await at(page, 0);
  await page.goto(`${site.root}procedures/pressure-test.html`);
  const title = await page.title();
  expect(await page.locator('script[src*="timers"]').count()).toBe(0);
  const start = page.locator('[data-wait="15"]');
  expect(await start.textContent()).toBe('Start 15 min');
  await start.click();
  await lines(page).first().waitFor();
  expect(await lines(page).locator('.clock').textContent()).toBe('15:00');
  expect(await start.textContent()).toBe('Stop 15:00');

  // Laid into the audio clock after the press, and once.
  await page.locator('html[data-sounds="1"]').waitFor({ state: 'attached' });

  await at(page, 5);
  await page.reload();
  await page.locator('.timers .clock', { hasText: '10:00' }).waitFor();

  // A second one on another page, with its own line.
  await page.goto(`${site.root}tests/vacuum-hold.html`);
  await page.locator('[data-wait="5"]').click();
  await lines(page).nth(1).waitFor();
  expect(await lines(page).locator('.clock').allTextContents()).toEqual(['10:00', '5:00']);

  // Taken off and put back: its end is what it was.
  await at(page, 7);
  await page.locator('.timers .clock', { hasText: '3:00' }).waitFor();
  await lines(page).nth(1).getByRole('button').click();
  const undo = page.locator('.timers .undone').getByRole('button');
  expect(await lines(page).locator('.clock').count()).toBe(1);
  expect(await undo.evaluate((each) => each === document.activeElement)).toBe(true);
  await at(page, 8);
  await undo.click();
  expect((await lines(page).locator('.clock').allTextContents()).sort()).toEqual(['2:00', '7:00']);

  // One is over, the other runs on.
  await at(page, 10.5);
  await page.locator('.timers li.over').waitFor();
  expect(await page.title()).toMatch(/^Time is up: /);
  expect(await page.locator('.timers [role=alert]').textContent()).toContain('5 min');
  expect(await page.locator('html').getAttribute('data-vibrated')).toBe('yes');
  expect(await lines(page).locator('.clock').allTextContents()).toEqual(['4:30']);

  // It is said on the page one comes to, and leads back to its step.
  await page.goto(`${site.root}tools/refractometer.html`);
  const over = page.locator('.timers li.over');
  await over.waitFor();
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
  for (const press of await page.locator('.timers button').all())
    expect((await press.boundingBox())?.height).toBeGreaterThanOrEqual(44);
  await over.getByRole('link').click();
  await page.waitForURL(/tests\/vacuum-hold\.html#wait-\d+$/);
  await over.getByRole('button').click();
  await over.waitFor({ state: 'detached' });
  expect(await page.title()).not.toMatch(/^Time is up/);

  // The step's own button stops it as well; then nothing is kept and no script is asked for.
  await page.goto(`${site.root}procedures/pressure-test.html`);
  await page.locator('[data-wait="15"] .clock').waitFor();
  await start.click();
  expect(await start.textContent()).toBe('Start 15 min');
  expect(await page.evaluate(() => localStorage.getItem('headertank.timers'))).toBeNull();
  await page.reload();
  expect(await page.title()).toBe(title);
  expect(await page.locator('script[src*="timers"]').count()).toBe(0);
  await close();
});
