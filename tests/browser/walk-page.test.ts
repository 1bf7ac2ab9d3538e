/** The complaint's page round its walk: what was seen beside the answers, minutes and estimate, what stays in sight on a phone. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openPage, SIZES, type WatchedPage } from './browser.ts';
import { giveAnswer } from './give-answer.ts';
import { openSite } from './open-site.ts';

const { browser, site } = await openSite();
const phone = { viewport: SIZES.phone, hasTouch: true, isMobile: true };

let watched: WatchedPage;
let page: Page;
beforeAll(async () => {
  watched = await openPage(browser, site.root, { ...phone, serviceWorkers: 'block' });
  page = watched.page;
});
afterAll(() => watched.close());

const asked = () => page.locator('.step[data-now] h3').textContent();
const open = async (symptom: string) => {
  await page.goto(`${site.root}symptoms/${symptom}.html`);
  await page.locator('ht-walk[data-live]').waitFor({ state: 'attached' });
};
const choose = async (vehicle: string) => {
  await page.goto(`${site.root}vehicles/${vehicle}.html`);
  await page.getByRole('button', { name: 'Work on this vehicle' }).click();
  await page.getByText('It stays chosen on this device').waitFor();
};
const answer = (label: string) =>
  giveAnswer(page, page.locator('.step[data-now] .answer', { hasText: label }).first());

test('something else was seen: its words are kept with the answer, move nothing, go onto the card and can be sent', async () => {
  await open('reads-low-at-cruise');
  await page.locator('.step[data-now] .answer').first().hover();
  const ranking = () => page.locator('.ranking').allTextContents();
  const before = await ranking();
  const question = await asked();
  await page.getByRole('button', { name: 'Something else was seen' }).click();
  await page.getByLabel('What was seen, in a few words').fill('The tank is full of jelly');
  await page.getByRole('button', { name: 'Keep it and go on' }).click();
  await expect.poll(asked).not.toBe(question);
  expect(await ranking()).toEqual(before);
  const line = page.locator('.trail li').first();
  await expect.poll(() => line.textContent()).toContain('Something else was seen“The tank is full of jelly”');
  // The words are nobody's business but the device's.
  await expect.poll(() => page.url()).toContain('level-cold=something-else-seen');
  expect(page.url()).not.toContain('jelly');
  await page.reload();
  await page.getByText('The tank is full of jelly').waitFor();
  await page.getByRole('button', { name: 'To the job card' }).click();
  await page.getByText('On the job card:').waitFor();
  await page.getByRole('link', { name: 'Send it as a note' }).click();
  await page.waitForURL('**/note.html*');
  await expect.poll(() => page.locator('[name=text]').inputValue()).toBe('The tank is full of jelly');
  expect(await page.locator('[name=symptom]').inputValue()).toBe('reads-low-at-cruise');
  await page.goto(`${site.root}job.html`);
  await page.getByText('Something else was seen: The tank is full of jelly').first().waitFor();
});

test('minutes and estimate are of the likeliest cause now, on this vehicle; without a repair there is no estimate', async () => {
  await choose('aldermoor-tarn-16');
  await open('hot-in-traffic');
  const estimate = page.locator('[data-estimate]');
  await expect.poll(() => page.locator('#counter [data-for]').textContent()).toMatch(/^Aldermoor Tarn/);
  const cause = await page.locator('[data-start-ranking] .ranking a').first().textContent();
  await expect
    .poll(async () => (await estimate.textContent())?.toLowerCase())
    .toContain(cause?.toLowerCase() ?? '–');
  expect(await estimate.textContent()).not.toContain('ydraulic');
  const minutes = async () => {
    const address = await estimate.locator('a').getAttribute('href');
    return Object.fromEntries(new URLSearchParams(address?.split('#')[1] ?? ''));
  };
  expect(Number((await minutes()).repair)).toBeGreaterThan(0);
  const booked = page.locator('#counter [data-nine]');
  const start = Number(await booked.textContent());
  expect((await minutes())['find-nine']).toBe(String(start));
  await giveAnswer(page, page.locator('.step[data-now] .answer').first());
  await expect
    .poll(() => page.locator('#counter [data-for]').textContent())
    .toContain('from this question on');
  expect(Number(await booked.textContent())).not.toBe(start);
  expect((await minutes())['find-nine']).toBe(await booked.textContent());
});

test('where a test is done on the chosen vehicle is said with its own words and marked on its circuit, and not without one', async () => {
  const fold = page.locator('.step[data-now] .where');
  await page.goto(`${site.root}index.html`);
  await page.evaluate(() => localStorage.clear());
  await open('pushed-out-after-parking');
  expect(await asked()).toContain('upper and the lower hose squeezed');
  expect(await fold.count()).toBe(0);
  const fetched: string[] = [];
  page.on('request', (request) => fetched.push(request.url().replace(site.root, '')));
  await choose('corvane-quill-14t');
  await open('pushed-out-after-parking');
  await fold.waitFor();
  expect(fetched).not.toContain('scripts/mark-circuit.js');
  await fold.locator('summary').click();
  const picture = fold.getByRole('img', { name: /^Cooling circuit of the Corvane Quill/ });
  await picture.waitFor();
  expect(fetched).toContain('scripts/mark-circuit.js');
  const words = await fold.locator('p').allTextContents();
  expect(words[0]).toMatch(/^1 Pressure cap, on the tank\. /);
  expect(words[1]).toMatch(/^2 Hose from engine to radiator\. All large hoses are quick connectors\./);
  // What is said of both hoses is said once.
  expect(words[2]).toBe('3 Hose from radiator to engine. ');
  expect(await picture.locator('desc').textContent()).toContain('2 Hose from engine to radiator;');
  expect(await picture.locator('text.here').allTextContents()).toEqual(['1', '2', '3', '4', '5']);
});

test('a car without an engine is told first that the complaint is not its own, and nothing else of it', async () => {
  await choose('lindqual-sedge');
  await open('reads-low-at-cruise');
  await page.getByText('Not on this vehicle: it has no engine.').waitFor();
  await expect
    .poll(() =>
      page
        .getByText(/May it be driven|Estimate for|Book \d/)
        .filter({ visible: true })
        .count(),
    )
    .toBe(0);
  expect(await page.locator('article .not-here').textContent()).not.toMatch(
    /May it be driven|thermostat|Book \d/i,
  );
});

test('on a phone, cautions met before are a line, and an answer, both ways out and the likeliest are in sight at every question', async () => {
  await choose('aldermoor-tarn-16');
  await open('reads-low-at-cruise');
  await expect.poll(() => page.locator('.walk-title').textContent()).toBe('The walk: Tarn 1.6');
  const full = page.locator('.step[data-now] > .caution:not([data-met]) .in-full');
  expect(await full.count()).toBeGreaterThan(0);
  for (let steps = 0; steps < 4; steps++) {
    await giveAnswer(page, page.locator('.step[data-now] .answer').first());
    await expect.poll(() => page.locator('.walk-line').textContent()).toMatch(/^(Likeliest|Proven): /);
    const seen = await page.evaluate(() => {
      const top = document.querySelector('.walk-reach')?.getBoundingClientRect().top ?? 0;
      const rows = [...document.querySelectorAll('.step[data-now] .answer')];
      return { isAnswer: rows.length > 0, top, bottom: rows[0]?.getBoundingClientRect().bottom ?? 0 };
    });
    if (!seen.isAnswer) break;
    expect(seen.bottom, (await asked()) ?? '').toBeLessThanOrEqual(seen.top);
    expect(await page.getByRole('button', { name: 'Can’t test that now' }).isVisible()).toBe(true);
  }
  expect(await page.locator('.step > .caution[data-met]').count()).toBeGreaterThan(0);
});

test('a link to a place on this page keeps the answers', async () => {
  await page.evaluate(() => localStorage.clear());
  await open('reads-low-at-cruise');
  await answer('At the mark');
  await answer('Plain wax');
  const question = await asked();
  const before = await page.locator('.trail li').count();
  for (const name of ['Ask the customer', 'To the page']) {
    await page.getByRole('link', { name }).evaluate((link: HTMLElement) => link.click());
    await expect.poll(() => page.url()).toContain('level-cold=at-mark');
    expect(await asked()).toBe(question);
    expect(await page.locator('.trail li').count()).toBe(before);
  }
});

test('a long name of a vehicle stands whole in the top line, at 320 px and with text twice as large, and nothing goes out of the page', async () => {
  await choose('fennick-packhorse-23d-4x4');
  await page.setViewportSize({ width: 320, height: 844 });
  await open('reads-low-at-cruise');
  const name = page.locator('.top-vehicle summary');
  await expect.poll(() => name.textContent()).toBe('Packhorse 2.3 D 4x4');
  expect(await name.getAttribute('aria-label')).toBe('Packhorse 2.3 D 4x4, the chosen vehicle');
  for (const size of ['100%', '200%']) {
    await page.evaluate((text) => {
      document.documentElement.style.fontSize = text;
    }, size);
    const fits = await name.evaluate((part) => part.scrollWidth <= part.clientWidth);
    expect(fits, size).toBe(true);
    expect(await page.evaluate(() => document.documentElement.scrollWidth), size).toBeLessThanOrEqual(320);
    const card = await page.locator('ht-open-job a').boundingBox();
    expect(card?.width, size).toBeGreaterThan(40);
  }
  await page.setViewportSize(SIZES.phone);
});

test('each question is a place of its own in the history, and choosing a vehicle in the top line says so where it stays', async () => {
  await open('reads-low-at-cruise');
  await giveAnswer(page, page.locator('.step[data-now] .answer').first());
  await expect.poll(() => page.title()).toBe(`${await asked()} · Reads low at steady cruise · Headertank`);
  await page.locator('.top-vehicle summary').click();
  await page.getByLabel('Vehicle: any part of its name').fill('Mere');
  await page.locator('ht-vehicle-choice .rows button').first().click();
  await expect.poll(() => page.locator('.top-vehicle summary').textContent()).toContain('Mere');
  expect(await page.locator('.top-vehicle details').getAttribute('open')).not.toBeNull();
  // Who goes on leaves the menu, and it is out of the way.
  await page.locator('.step[data-now] .answer').first().focus();
  await expect.poll(() => page.locator('.top-vehicle details').getAttribute('open')).toBeNull();
});
