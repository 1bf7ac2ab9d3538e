/** The main job: from the customer's words to the right end, with and without scripts, online, offline and from file://. */
import { cp, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { builtSite, folderRoot, openPage, SIZES, type WatchedPage } from './browser.ts';
import { answerRow, giveAnswer } from './give-answer.ts';
import { openSite } from './open-site.ts';
import { causeTitle, usualAnswers, usualOutcomes } from './usual-answers.ts';

const { browser, site } = await openSite();

const phone = { viewport: SIZES.phone, hasTouch: true, isMobile: true };

/** Answer the question that is asked now by the words on the row. */
async function answer(page: Page, label: string): Promise<void> {
  await giveAnswer(page, page.locator('.step[data-now] .answer', { hasText: label }).first());
}

function result(page: Page) {
  return page.locator('.step[data-now] h3');
}

/** Customer's words, the complaint they mean, the fault the car has, the vehicle, the most questions it may take, the repair. */
const JOBS = [
  [
    'temp drops on the highway',
    'reads-low-at-cruise',
    'thermostat-stuck-open',
    'aldermoor-tarn-16',
    7,
    'thermostat-replace',
  ],
  [
    'temp drops on the highway',
    'reads-low-at-cruise',
    'thermostat-stuck-open',
    'aldermoor-fell-20d',
    7,
    'thermostat-replace',
  ],
  ['P0128', 'reads-low-at-cruise', 'fan-relay-stuck-on', 'aldermoor-fell-20d', 9, 'fan-relay-and-wiring'],
  ['P0128', 'reads-low-at-cruise', 'sensor-reads-low', 'aldermoor-tarn-16', 9, 'sensor-replace'],
  ['heater blows cold', 'no-cabin-heat', 'heater-core-blocked', 'aldermoor-tarn-16', 9, 'heater-core-flush'],
  [
    'coolant wont go down',
    'wont-go-down-while-filling',
    'vent-line-blocked',
    'aldermoor-tarn-16',
    9,
    'clear-vent-line',
  ],
] as const;

test.each(JOBS)(
  '“%s”: %s walked to %s on a phone, %s',
  async (words, symptom, cause, vehicle, most, repair) => {
    const watched = await openPage(browser, site.root, { ...phone, serviceWorkers: 'block' });
    const { page } = watched;
    await page.goto(`${site.root}index.html`);
    await page.getByLabel('What does the customer notice?').fill(words);
    await page.locator(`.search-results a[href*="symptoms/${symptom}.html"]`).first().click();
    await page.waitForURL(`**/symptoms/${symptom}.html*`);
    const answers = usualAnswers(symptom, cause, vehicle);
    expect(answers.length).toBeLessThanOrEqual(most);
    for (const given of answers) {
      await giveAnswer(page, answerRow(page, given));
    }
    const title = causeTitle(cause);
    await expect.poll(() => page.locator('.step[data-now]').textContent()).toContain(title);
    expect(
      await page.locator(`.step[data-now] a[href*="procedures/${repair}.html"]`).count(),
    ).toBeGreaterThan(0);
    await watched.close();
  },
);

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
    const first = await result(page).textContent();
    await answer(page, 'At the mark');
    await expect.poll(() => result(page).textContent()).not.toBe(first);
    expect(await page.locator('.step:visible').count()).toBe(1);
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe(
      await result(page).textContent(),
    );
  });

  test('each question stands where the one before it stood, however many answers there are', async () => {
    await start();
    const belowTitle = () =>
      page.evaluate(() => {
        const [title, steps] = ['.walk-title', '.steps'].map(
          (part) => document.querySelector(part)?.getBoundingClientRect().top ?? Number.NaN,
        );
        return (steps ?? Number.NaN) - (title ?? Number.NaN);
      });
    await answer(page, 'At the mark');
    const after = page.locator('.trail li');
    await after.first().waitFor();
    const first = await belowTitle();
    for (const answers of [2, 3, 4]) {
      await giveAnswer(page, page.locator('.step[data-now] .answer').first());
      await after.nth(answers - 1).waitFor();
    }
    expect(await belowTitle()).toBe(first);
    await page.getByRole('button', { name: 'Start again' }).click();
  });

  test('an answer given in the moment the page goes is not lost', async () => {
    await start();
    await page.evaluate(() => {
      document.querySelector<HTMLElement>('.step[data-now] .answer')?.click();
      location.reload();
    });
    await page.getByText('with 1 answer').waitFor();
    await page.getByRole('button', { name: 'Go on from there' }).click();
    await page.locator('.trail li').waitFor();
    await page.getByRole('button', { name: 'Start again' }).click();
  });

  test('what comes next is laid out ahead, out of sight, out of reach and not on paper', async () => {
    await start();
    await page.locator('ht-walk').dispatchEvent('touchstart');
    const ahead = page.locator('.step[data-soon]');
    await ahead.first().waitFor({ state: 'attached' });
    const heightOfRow = () =>
      ahead
        .first()
        .locator('.answer')
        .first()
        .evaluate((row: HTMLElement) => row.offsetHeight);
    expect(await heightOfRow()).toBeGreaterThan(20);
    expect(await page.locator('.step:visible').count()).toBe(1);
    await ahead
      .first()
      .locator('.answer')
      .first()
      .evaluate((row: HTMLElement) => row.focus());
    expect(await page.evaluate(() => document.activeElement?.closest('.step') ?? undefined)).toBeUndefined();
    await page.emulateMedia({ media: 'print' });
    expect(await heightOfRow()).toBe(0);
    await page.emulateMedia({ media: null });
  });

  test('keeps answers in the address: sent to another device it stands at the same question', async () => {
    await start();
    await answer(page, 'At the mark');
    await answer(page, 'Plain wax');
    await answer(page, 'Outlet side');
    const asked = await result(page).textContent();
    expect(asked).not.toContain('Where does the thermostat sit');
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
    await expect.poll(() => result(page).textContent()).not.toBe(first);
    await page.goBack();
    await expect.poll(() => result(page).textContent()).toBe(first);
  });

  /** Answers that prove the gauge on a car without a chosen vehicle. */
  const PROVES_GAUGE =
    'level-cold=at-mark&layout.thermostat-kind=plain+wax&layout.thermostat=outlet+side&hose-warm-up-outlet-side=warm-on-time&compare-readings=gauge-stands-alone&prove.gauge-or-cluster-fault=proven';

  test('an answer is asked for again when it is to be changed, also once a cause is proven', async () => {
    await start();
    await page.evaluate((hash) => {
      location.hash = hash;
    }, PROVES_GAUGE);
    await expect.poll(() => result(page).textContent()).toBe('Proven: Gauge or instrument cluster at fault');
    const asked = 'Where does the coolant stand';
    await page.locator('.trail li', { hasText: asked }).getByRole('button', { name: 'Change' }).click();
    await expect.poll(() => result(page).textContent()).toContain(asked);
    await answer(page, 'A little low');
    await expect.poll(() => page.locator('.trail').textContent()).toContain('A little low');
    await page.getByRole('button', { name: 'Start again' }).click();
  });

  test('an answer that speaks against a proven cause takes the proof back, in the heading and in the list', async () => {
    await start();
    await page.evaluate((hash) => {
      location.hash = hash;
    }, PROVES_GAUGE);
    await expect.poll(() => result(page).textContent()).toBe('Proven: Gauge or instrument cluster at fault');
    const share = () => page.locator('[data-start-ranking] .ranking li').first().textContent();
    await expect.poll(share).toMatch(/(9[89]|100).*Gauge or instrument cluster at fault/);
    await page.evaluate((hash) => {
      location.hash = hash.replace(
        'prove.gauge-or-cluster-fault=proven',
        'prove.gauge-or-cluster-fault=not-it',
      );
    }, PROVES_GAUGE);
    await expect.poll(() => result(page).textContent()).not.toContain('Proven');
    await expect.poll(share).not.toMatch(/(9[89]|100).*Gauge or instrument cluster at fault/);
    await page.getByRole('button', { name: 'Start again' }).click();
  });

  test('a typed reading chooses the answer and is kept with it', async () => {
    await start();
    await page.locator('.step[data-now] .answer').first().hover();
    const field = page.locator('.step[data-now] ht-reading input');
    await field.fill('warm');
    await field.press('Enter');
    await expect
      .poll(() => page.locator('.step[data-now] ht-reading [role=status]').textContent())
      .toMatch(/.{10,}/);
    await field.fill('0,2 l');
    await field.press('Enter');
    await expect.poll(() => page.locator('.trail li').first().textContent()).toContain('0.2 l');
    await expect.poll(() => new URL(page.url()).hash).toContain('reading.level-cold=');
    await page.getByRole('button', { name: 'Start again' }).click();
  });

  test('offers to go on where it was left, on the same device', async () => {
    await start();
    const first = await result(page).textContent();
    await answer(page, 'At the mark');
    await expect.poll(() => result(page).textContent()).not.toBe(first);
    const asked = await result(page).textContent();
    await page.goto(`${site.root}index.html`);
    await start();
    await page.getByRole('button', { name: 'Go on from there' }).click();
    await expect.poll(() => result(page).textContent()).toBe(asked);
    await page.getByRole('button', { name: 'Start again' }).click();
  });

  test('what is offered to go on with says whose answers they are, when another car stands in the bay now', async () => {
    await page.goto(`${site.root}vehicles/aldermoor-tarn-16.html`);
    await page.getByRole('button', { name: 'Work on this vehicle' }).click();
    await start();
    await answer(page, 'At the mark');
    await page.goto(`${site.root}vehicles/lindqual-mere-12.html`);
    await page.getByRole('button', { name: 'Work on this vehicle' }).click();
    await start();
    await page.getByText('with 1 answer for Tarn 1.6.').waitFor();
    await page.getByRole('button', { name: 'Forget it' }).click();
    await page.evaluate(() => localStorage.clear());
  });

  test('finds another way when a test is skipped, and says why this one', async () => {
    await start();
    await answer(page, 'At the mark');
    await answer(page, 'Plain wax');
    await answer(page, 'Outlet side');
    const asked = await result(page).textContent();
    await page.getByRole('button', { name: 'Can’t test that now' }).click();
    await expect.poll(() => result(page).textContent()).not.toBe(asked);
    expect(await page.locator('.walk-top').textContent()).toMatch(/quickest by the numbers: .*minute/);
    await page.getByRole('button', { name: 'Start again' }).click();
  });

  test('goes round tests whose tool is not at hand', async () => {
    await start();
    await page.getByText('Tools not at hand').click();
    await page.getByRole('checkbox', { name: 'Scan tool' }).check();
    await page.locator('summary', { hasText: 'Known so far' }).click();
    // Every test that needs a scan tool is gone from what the planner offers.
    await page.getByText('The numbers', { exact: true }).click();
    expect(await page.locator('[data-start-ranking] table').textContent()).not.toContain('Compare');
    await page.getByRole('checkbox', { name: 'Scan tool' }).uncheck();
  });

  test('says question and answer as tapped, also on the card', async () => {
    await start();
    await answer(page, 'At the mark');
    const line = page.locator('.trail li').first();
    await expect.poll(() => line.locator('b').textContent()).toBe('At the mark');
    await page.getByRole('button', { name: 'To the job card' }).click();
    await page.getByText('On the job card:').waitFor();
    await page.locator('.on-card a').click();
    await page.getByText('At the mark').first().waitFor();
    await start();
  });

  test('a number chooses the answer in its row while the focus is in the walk, and not from a field', async () => {
    await start();
    const first = await result(page).textContent();
    const second = await page.locator('.step[data-now] .answer').nth(0).textContent();
    await page.keyboard.press('1');
    expect(await result(page).textContent()).toBe(first);
    await page.locator('.step[data-now] .answer').nth(1).focus();
    await page.keyboard.press('1');
    await expect.poll(() => result(page).textContent()).not.toBe(first);
    expect(second).toContain((await page.locator('.trail li b').first().textContent()) ?? '–');
    await page.getByRole('button', { name: 'Start again' }).click();
  });

  test('once a cause is proven the repair stands first and nothing doubts it', async () => {
    await start();
    await page.evaluate((hash) => {
      location.hash = hash;
    }, PROVES_GAUGE);
    await expect.poll(() => result(page).textContent()).toBe('Proven: Gauge or instrument cluster at fault');
    const card = page.locator('.step[data-now] .cause');
    const heads = await card.locator('dt:visible').allTextContents();
    expect(heads[0]).toBe('Repair');
    expect(heads).toContain('While it is apart');
    expect(await page.locator('.step[data-now] .share:visible').count()).toBe(0);
    // Nobody books minutes to find what is found.
    await expect.poll(() => page.locator('[data-booking]:visible').count()).toBe(0);
    // The list agrees with the heading, and nothing more is proposed.
    await expect.poll(() => page.locator('[data-start-ranking]').textContent()).toContain('Likely now');
    expect(await page.locator('[data-start-ranking]').textContent()).not.toContain('Quickest');
    expect(await page.locator('.step[data-now] .then li').count()).toBeGreaterThan(0);
    // What became of the answers is said where the thumb is, and gone with what it was said of.
    await page.getByRole('button', { name: 'To the job card' }).click();
    const said = page.locator('.on-card');
    await said.waitFor();
    expect(await said.evaluate((line) => line.getBoundingClientRect().bottom <= innerHeight)).toBe(true);
    await page.getByRole('button', { name: 'Back' }).click();
    await expect.poll(() => said.count()).toBe(0);
  });

  test('ranks causes by findings ticked in any order', async () => {
    await start();
    const leader = () => page.locator('.ranking li').first().textContent();
    expect(await leader()).toContain('Thermostat stuck open');
    await page.locator('summary', { hasText: 'Known so far' }).click();
    const row = page.locator('.known-row', { has: page.locator('#known-compare-readings') });
    const tap = row.locator('.tap').nth(1);
    await tap.click();
    await expect.poll(leader).toContain('sensor');
    // What it comes to is said where the finger is; a second tap takes it back.
    expect(await tap.getAttribute('aria-pressed')).toBe('true');
    expect(await row.getByRole('status').textContent()).toMatch(/^Likeliest: .*sensor.*%\. Next: /);
    await tap.click();
    await expect.poll(leader).toContain('Thermostat stuck open');
    await tap.click();
    await page.getByRole('button', { name: 'Start again' }).click();
  });
});

test('without scripts every step is on a page and each answer is a link to the next', async () => {
  const watched = await openPage(browser, site.root, {
    ...phone,
    javaScriptEnabled: false,
    serviceWorkers: 'block',
  });
  const { page } = watched;
  await page.goto(`${site.root}index.html`);
  await page.getByRole('link', { name: 'Reads low at steady cruise' }).click();
  await page.waitForURL(/reads-low-at-cruise\.html/);
  const usual = usualOutcomes('reads-low-at-cruise', 'thermostat-stuck-open', 'aldermoor-tarn-16');
  for (let steps = 0; steps < 20; steps++) {
    const { hash: at } = new URL(page.url());
    const rows = (at === '' ? page.locator('.step').first() : page.locator(at)).locator('.answer');
    if ((await rows.count()) === 0) break;
    const key = (await rows.first().getAttribute('data-key')) ?? '';
    await page
      .locator(`${at} .answer[data-key="${key}"][data-value="${usual(key)}"]`)
      .first()
      .click();
  }
  const { hash } = new URL(page.url());
  // A proof that comes out for its cause leads to the page of the cause.
  const end = page.locator(hash === '' ? 'main' : hash);
  expect(await end.getByText('Thermostat stuck open').count()).toBeGreaterThan(0);
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
    await page.locator('.top-vehicle summary').waitFor();
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

test('an end names no cause the vehicle cannot have, the likeliest first, its own notes before others, and books its minutes', async () => {
  const watched = await openPage(browser, site.root, { serviceWorkers: 'block' });
  const { page } = watched;
  await page.goto(`${site.root}symptoms/reads-low-at-cruise.html`);
  const counted = page.locator('[data-booking] [data-for]');
  expect((await counted.textContent())?.length).toBeGreaterThan(5);
  await page.goto(`${site.root}vehicles/aldermoor-tarn-16.html`);
  await page.getByRole('button', { name: 'Work on this vehicle' }).click();
  await page.getByText('It stays chosen on this device').waitFor();
  await page.goto(
    `${site.root}symptoms/reads-low-at-cruise.html#level-cold=at-mark&hose-warm-up-outlet-side=a-little-early&heater-hose-pair=both-hot&compare-readings=all-agree`,
  );
  await expect.poll(() => result(page).textContent()).toBe('Coolant passes the thermostat too early');
  const end = page.locator('.step[data-now]');
  await expect.poll(() => counted.textContent()).toMatch(/^Aldermoor Tarn/);
  // A plain wax thermostat has no heater.
  await expect.poll(() => end.getByText('Thermostat heater fed all the time').isVisible()).toBe(false);
  const shares = (await end.locator('.seen .share:visible').allTextContents()).map((text) =>
    Number.parseInt(text.replace('under 1', '0'), 10),
  );
  expect(shares.length).toBeGreaterThan(2);
  expect(shares).toEqual([...shares].sort((a, b) => b - a));
  const fold = end.locator('.other-notes').first();
  expect(await fold.getByRole('link').count()).toBe(0);
  await fold.locator('summary').click();
  expect(await fold.getByRole('link').count()).toBeGreaterThan(0);
  for (const note of await end.locator('[data-notes] li[data-vehicle]').all())
    expect(await note.getAttribute('data-vehicle')).toBe('aldermoor-tarn-16');
  await watched.close();
});

test('questions that cannot be fetched lose no answer, and are asked once they can', async () => {
  const watched = await openPage(browser, site.root, {
    ...phone,
    serviceWorkers: 'block',
    expected: /ERR_FAILED/,
  });
  const { page } = watched;
  await page.route('**/walks/*.html', (route) => route.abort());
  await page.goto(`${site.root}symptoms/reads-low-at-cruise.html`);
  await page.locator('ht-walk[data-live]').waitFor();
  const first = await result(page).textContent();
  await answer(page, 'At the mark');
  await page.getByText('Your answers are kept').waitFor();
  await page.unroute('**/walks/*.html');
  await page.getByRole('button', { name: 'Try again' }).click();
  await expect.poll(() => result(page).textContent()).not.toBe(first);
  expect(await page.locator('.trail li').count()).toBeGreaterThan(0);
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
  for (const given of usualAnswers('reads-low-at-cruise', 'thermostat-stuck-open', 'aldermoor-tarn-16')) {
    await giveAnswer(page, answerRow(page, given));
  }
  await page.locator('.step[data-now]').getByText('Thermostat stuck open').first().waitFor();
  await watched.close();
  await rm(folder, { recursive: true });
});
