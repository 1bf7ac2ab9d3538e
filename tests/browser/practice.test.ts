/** Practice in a real browser: one case played through on a phone, its address and source telling nothing; ten cases handed out. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { axeFindings } from './axe-page.ts';
import { builtSite, folderRoot, openPage, SIZES } from './browser.ts';
import { openSite } from './open-site.ts';

const { browser, site } = await openSite();
/** A folder opened from a stick is the harder place: no fetch, no worker. */
const root = folderRoot(builtSite());
const phone = { viewport: SIZES.phone, hasTouch: true, isMobile: true };
const SYMPTOM = 'reads-low-at-cruise';

test('a case on a phone, from the customer to the answer', async () => {
  const { page, close } = await openPage(browser, root, phone);
  await page.goto(`${root}practice.html`);
  await page.selectOption('#practice-symptom', SYMPTOM);
  await page.getByRole('button', { name: 'Open a case' }).click();
  await page.locator('.practice-round blockquote').waitFor();
  const address = page.url();
  expect(address).toMatch(/#case=[2-9a-z]{6}$/);

  const tests = page.locator('.practice-tests button');
  await tests.nth(0).click();
  await tests.nth(0).click();
  const seen = page.locator('.practice-log li');
  expect(await seen.count()).toBe(2);
  const reading = (text: string | null) => (text ?? '').replace(/\d+ min/, '');
  expect(reading(await seen.nth(1).textContent())).toBe(reading(await seen.nth(0).textContent()));

  // What was done so far is still there after the page was closed.
  await page.reload();
  await seen.nth(1).waitFor();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
    SIZES.phone.width,
  );
  expect(await page.locator('.practice-round').textContent()).not.toMatch(
    /\bundefined\b|\bNaN\b|\{[a-z.]+\}/,
  );

  await page.locator('.practice-clock button').click();
  await page.keyboard.type('thermostat');
  await page.locator('.practice-causes button').first().click();
  await page.locator('.practice-causes button.main').click();
  await page.locator('.practice-steps > li').nth(2).waitFor();
  expect(await page.locator('.answer-sentence').textContent()).toMatch(/^(Right|Not right)$/);
  expect(await page.locator('.practice-answer tbody tr').count()).toBe(3);
  expect(await page.locator('.practice-answer').textContent()).not.toMatch(
    /\bundefined\b|\bNaN\b|\{[a-z.]+\}/,
  );
  // Only now the fault is on the page.
  const fault = await page.locator('.practice-answer > p a').first().getAttribute('href');
  const cause = /causes\/(.+)\.html/.exec(fault ?? '')?.[1] ?? '';
  expect(cause).not.toBe('');
  expect(address).not.toContain(cause);

  await page.getByRole('button', { name: 'On', exact: true }).click();
  await page.locator('.practice-results summary').click();
  await page.locator('#results-name').fill('Sam');
  await page.getByRole('button', { name: 'Show as text' }).click();
  expect(await page.locator('.practice-results textarea').inputValue()).toContain('Practice results of Sam');
  await page.getByRole('button', { name: 'Show as a code' }).click();
  await page.locator('.practice-code canvas').waitFor();

  await page.locator('.practice-teacher summary').click();
  await page.getByRole('button', { name: 'Make the address' }).click();
  const handedOut = await page.locator('#practice-address').inputValue();
  expect(handedOut).toMatch(/#list=[2-9a-z]{62}$/);
  await page.goto(handedOut);
  await page.reload();
  expect(await page.locator('.practice-list button').count()).toBe(10);
  await page.goto(`${handedOut}x`);
  await page.reload();
  await page.getByText('This address is not whole').waitFor();
  await close();
});

test('neither the list of cases nor a complaint’s cases tell a fault or a mechanism in plain text', () => {
  const read = (file: string) => readFileSync(join(builtSite(), file), 'utf8');
  const named = (kind: string) =>
    readdirSync(join('content', kind)).map((file) => file.replace(/\.yaml$/, ''));
  const index = read('data/practice.js');
  expect([...named('causes'), ...named('cases')].filter((id) => index.includes(id))).toEqual([]);
  const pack =
    /^headertank\.receivePractice\?\.\((.*)\);\s*$/s.exec(read(`data/practice/${SYMPTOM}.js`))?.[1] ?? '';
  const { cases, ...open }: { cases: string } = JSON.parse(pack);
  expect(cases).toMatch(/^[A-Za-z0-9+/]+=*$/);
  expect(Object.keys(open).sort()).toEqual(['figures', 'measures', 'sound', 'walk']);
  expect(pack).not.toMatch(/mechanism|faults|"said"/);
});

test('axe finds nothing on an open case', async () => {
  const { page, close } = await openPage(browser, site.root, { serviceWorkers: 'block' });
  await page.goto(`${site.root}practice.html`);
  await page.getByRole('button', { name: /Case of the day/ }).click();
  await page.locator('.practice-round').waitFor();
  const address = page.url();
  expect(await axeFindings(page, address)).toEqual([]);
  await close();
});
