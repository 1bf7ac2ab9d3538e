/** The main job: from the customer's words to the right end, with and without scripts, online, offline and from file://. */
import { cp, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import {
  builtSite,
  folderRoot,
  launchBrowser,
  openPage,
  type ServedSite,
  SIZES,
  serveSite,
  type WatchedPage,
} from './browser.ts';

let browser: Browser;
let site: ServedSite;

beforeAll(async () => {
  browser = await launchBrowser();
  site = await serveSite(builtSite());
});
afterAll(async () => {
  await site.stop();
  await browser.close();
});

const phone = { viewport: SIZES.phone, hasTouch: true, isMobile: true };

/** Answer the question that is asked now. */
async function answer(page: Page, label: string): Promise<void> {
  await page.locator('.step[data-now] .answer', { hasText: label }).first().click();
}

function result(page: Page) {
  return page.locator('.step[data-now] h3');
}

interface Job {
  words: string;
  symptom: string;
  title: string;
  answers: string[];
  /** What the end must name. */
  ends: RegExp;
  /** Repair that must be offered at the end. */
  repair: string;
}

const JOBS: Record<string, Job> = {
  'a thermostat stuck open': {
    words: 'temp drops on the highway',
    symptom: 'reads-low-at-cruise',
    title: 'Reads low at steady cruise',
    answers: ['At the mark', 'Outlet side', 'Warm early', 'Both cool'],
    ends: /Thermostat stuck open/,
    repair: 'thermostat-replace',
  },
};

test.each(Object.entries(JOBS))('%s is found from the customer’s words on a phone', async (_name, job) => {
  const watched = await openPage(browser, site.root, { ...phone, serviceWorkers: 'block' });
  const { page } = watched;
  await page.goto(`${site.root}index.html`);
  await page.getByLabel('What does the customer notice?').fill(job.words);
  await page.getByRole('link', { name: job.title }).first().click();
  await page.waitForURL(`**/symptoms/${job.symptom}.html*`);
  expect(job.answers.length).toBeLessThanOrEqual(5);
  for (const label of job.answers) await answer(page, label);
  await expect.poll(() => result(page).textContent()).toMatch(job.ends);
  expect(await page.locator(`.step[data-now] a[href*="${job.repair}"]`).count()).toBeGreaterThan(0);
  await watched.close();
});

describe('the walk', () => {
  let watched: WatchedPage;
  let page: Page;
  beforeAll(async () => {
    watched = await openPage(browser, site.root, { ...phone, serviceWorkers: 'block' });
    page = watched.page;
  });
  afterAll(() => watched.close());
  const start = async () => {
    await page.goto(`${site.root}symptoms/reads-low-at-cruise.html`);
    await page.locator('ht-walk[data-live]').waitFor();
  };

  test('shows one question at a time, and its heading has the focus after an answer', async () => {
    await start();
    expect(await page.locator('.step:visible').count()).toBe(1);
    await answer(page, 'At the mark');
    expect(await page.locator('.step:visible').count()).toBe(1);
    expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('H3');
  });

  test('keeps answers in the address: sent to another device it stands at the same question', async () => {
    await start();
    await answer(page, 'At the mark');
    await answer(page, 'Outlet side');
    const asked = await result(page).textContent();
    const other = await openPage(browser, site.root, { serviceWorkers: 'block' });
    await other.page.goto(page.url());
    await expect.poll(() => result(other.page).textContent()).toBe(asked);
    await other.close();
  });

  test('goes back one answer, also by the browser’s own Back', async () => {
    await start();
    const first = await result(page).textContent();
    await answer(page, 'At the mark');
    await page.getByRole('button', { name: 'Back' }).click();
    expect(await result(page).textContent()).toBe(first);
    await answer(page, 'At the mark');
    await page.goBack();
    await expect.poll(() => result(page).textContent()).toBe(first);
  });

  test('offers to go on where it was left, on the same device', async () => {
    await start();
    await answer(page, 'At the mark');
    const asked = await result(page).textContent();
    await page.goto(`${site.root}index.html`);
    await start();
    await page.getByRole('button', { name: 'Go on from there' }).click();
    await expect.poll(() => result(page).textContent()).toBe(asked);
    await page.getByRole('button', { name: 'Start again' }).click();
  });

  test('finds another way when a test is skipped, and says why this one', async () => {
    await start();
    const asked = await result(page).textContent();
    await page.getByRole('button', { name: 'Can’t test that now' }).click();
    await expect.poll(() => result(page).textContent()).not.toBe(asked);
    expect(await page.locator('.walk-top').textContent()).toMatch(/quickest by the numbers: .*minute/);
    await page.getByRole('button', { name: 'Start again' }).click();
  });

  test('goes round tests whose tool is not at hand', async () => {
    await start();
    await page.getByText('Tools not at hand').click();
    await page.getByLabel('Scan tool').check();
    await page.locator('summary', { hasText: 'Known so far' }).click();
    // Every test that needs a scan tool is gone from what the planner offers.
    await page.getByText('The numbers', { exact: true }).click();
    expect(await page.locator('[data-start-ranking] table').textContent()).not.toContain('Compare');
    await page.getByLabel('Scan tool').uncheck();
  });

  test('ranks causes by findings ticked in any order', async () => {
    await start();
    const leader = () => page.locator('.ranking li').first().textContent();
    expect(await leader()).toContain('Thermostat stuck open');
    await page.locator('summary', { hasText: 'Known so far' }).click();
    await page.locator('#known-compare-readings').selectOption('scan-reads-low');
    await expect.poll(leader).toContain('sensor');
    await page.getByRole('button', { name: 'Start again' }).click();
  });
});

test('without scripts every step is on the page and each answer is a link to the next', async () => {
  const watched = await openPage(browser, site.root, {
    ...phone,
    javaScriptEnabled: false,
    serviceWorkers: 'block',
  });
  const { page } = watched;
  await page.goto(`${site.root}index.html`);
  await page.getByRole('link', { name: 'Reads low at steady cruise' }).click();
  const follow = async (label: string) => {
    const fragment = new URL(page.url()).hash.slice(1) || 'step-level';
    await page.locator(`#${fragment} .answer`, { hasText: label }).first().click();
  };
  for (const label of ['At the mark', 'Outlet side', 'Warm early', 'Both cool']) await follow(label);
  const end = page.locator(`#${new URL(page.url()).hash.slice(1)}`);
  expect(await end.locator('h3').textContent()).toMatch(/Thermostat stuck open/);
  expect(await end.locator('a[href*="thermostat-replace"]').count()).toBeGreaterThan(0);
  await watched.close();
});

test('another vehicle changes the numbers in questions; a missing figure shows the labelled general range', async () => {
  const watched = await openPage(browser, site.root, { serviceWorkers: 'block' });
  const { page } = watched;
  const choose = async (id: string) => {
    await page.goto(`${site.root}vehicles/${id}.html`);
    await page.getByRole('button', { name: 'Work on this vehicle' }).click();
    await page.getByText('It stays chosen on this device').waitFor();
  };
  const figure = async (path: string) => {
    await page.goto(`${site.root}symptoms/reads-low-at-cruise.html`);
    await page.locator('.top-vehicle button').waitFor();
    return (await page.locator(`[data-fig="${path}"]`).first().textContent())?.replace(/\s+/g, ' ').trim();
  };
  await page.goto(`${site.root}symptoms/reads-low-at-cruise.html`);
  expect(await page.locator('[data-fig="running.low-limit"]').first().textContent()).toMatch(/general/);
  await choose('aldermoor-tarn-16');
  expect(await figure('running.low-limit')).toBe('78 °C');
  await choose('corvane-quill-14t');
  const other = await figure('running.low-limit');
  expect(other).toMatch(/^\d+( – \d+)? °C$/);
  expect(other).not.toBe('78 °C');
  await choose('lindqual-mere-12');
  expect(await figure('running.low-limit')).toMatch(/general, none for this vehicle/);
  await watched.close();
});

test('from a folder opened by double-click the walk works and remembers', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'stick-'));
  await cp(builtSite(), folder, { recursive: true });
  const root = folderRoot(folder);
  const watched = await openPage(browser, root, phone);
  const { page } = watched;
  await page.goto(`${root}index.html`);
  await page.getByRole('link', { name: 'Reads low at steady cruise' }).click();
  await page.locator('ht-walk[data-live]').waitFor();
  await answer(page, 'At the mark');
  await answer(page, 'Outlet side');
  await answer(page, 'Warm early');
  await answer(page, 'Both cool');
  await expect.poll(() => result(page).textContent()).toMatch(/Thermostat stuck open/);
  await watched.close();
  await rm(folder, { recursive: true });
});
