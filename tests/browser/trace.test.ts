/** A logged road test in a real browser: chosen, read in the background, judged, put right, handed to the walk; the proof run. */
import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { longLog } from '../trace/long-log.ts';
import { axeViolations } from './axe-page.ts';
import { builtSite, folderRoot, openPage, SIZES } from './browser.ts';
import { openSite } from './open-site.ts';

const { browser, site } = await openSite();
let scratch: string;

beforeAll(async () => {
  scratch = await mkdtemp(join(tmpdir(), 'road-test-'));
});
afterAll(async () => {
  await rm(scratch, { recursive: true });
});

/** No test here is about the site without a connection, so none fetches all of it. */
const quiet = { serviceWorkers: 'block' } as const;
const phone = { ...quiet, viewport: SIZES.phone, hasTouch: true, isMobile: true };
/** The page answers in the background. */
const PATIENCE = { timeout: 15_000 };
const sample = (name: string) => `public/samples/${name}.csv`;
const verdict = (page: Page) => page.locator('.result .answer-sentence');

async function choose(page: Page, file: string): Promise<void> {
  await page.setInputFiles('#log-file', file);
  await verdict(page).waitFor();
}

async function chooseVehicle(page: Page, root: string, id: string): Promise<void> {
  await page.goto(`${root}vehicles/${id}.html`);
  await page.locator('ht-choose-vehicle button').click();
  await page.goto(`${root}road-test.html`);
  await page.locator('ht-vehicle summary', { hasText: 'Tarn' }).waitFor();
}

describe('a log', () => {
  test('on a phone: verdict first, the drawing, the same facts as a table, and on with the walk', async () => {
    const { page, close } = await openPage(browser, site.root, phone);
    await chooseVehicle(page, site.root, 'aldermoor-tarn-16');
    await choose(page, sample('opens-early'));
    expect(await verdict(page).textContent()).toMatch(
      /opens too early or stands open: warmed to 85\s°C, then sinks to 7[678]\s°C/,
    );
    expect(await page.locator('.chart svg').getAttribute('aria-labelledby')).toContain('trace-chart-title');
    expect(await page.locator('.trace-events tbody tr').count()).toBeGreaterThan(5);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      SIZES.phone.width,
    );
    await page.getByRole('link', { name: /Continue the walk/ }).click();
    await page.waitForURL(/reads-low-at-cruise\.html#/);
    expect(page.url()).toContain('cruise-trace=falls-at-speed');
    // The walk has taken it for answered: it is among what is known.
    await expect.poll(() => page.locator('ht-walk').textContent()).toContain('Falls at speed');
    await close();
  });

  test('a stop is said first, with what not to touch', async () => {
    const { page, close } = await openPage(browser, site.root, quiet);
    await page.goto(`${site.root}road-test.html`);
    await choose(page, sample('no-flow'));
    expect(await verdict(page).textContent()).toMatch(/^Stop\. /);
    expect(await page.locator('.result').textContent()).toContain('leave the cap alone');
    await close();
  });

  test('a sample on a phone: the verdict comes before the eyes, with nothing open around it', async () => {
    const { page, close } = await openPage(browser, site.root, phone);
    await page.goto(`${site.root}road-test.html`);
    await page.getByText('Samples, all invented').click();
    await page.locator('[data-sample="no-flow"] button').click();
    await verdict(page).waitFor();
    await expect.poll(() => verdict(page).evaluate((part) => part === document.activeElement)).toBe(true);
    // The page glides there: it is on the way until the verdict stands in the upper half.
    const top = () => verdict(page).evaluate((part) => part.getBoundingClientRect().top);
    await expect
      .poll(top, PATIENCE)
      .toSatisfy((at: number) => at >= 0 && at < SIZES.phone.height / 2, 'stands in the upper half');
    expect(await page.locator('.choose details[open]').count()).toBe(0);
    // The regulation's measure says nothing beside a stop, and what was understood stays folded where all was.
    expect(await page.locator('.result').textContent()).not.toContain('regulation');
    expect(await page.locator('.understood').evaluate((part: HTMLDetailsElement) => part.open)).toBe(false);
    await close();
  });

  test('columns that were not recognised are chosen by hand, one straight after the other', async () => {
    const text = await readFile(sample('opens-early'), 'utf8');
    const strange = text.replace(/Time \(s\).*/, 'a;b;c;d;e;f;g');
    const file = join(scratch, 'strange.csv');
    await writeFile(file, strange);
    const { page, close } = await openPage(browser, site.root, quiet);
    await chooseVehicle(page, site.root, 'aldermoor-tarn-16');
    await choose(page, file);
    expect(await verdict(page).textContent()).toContain('No column of coolant temperature was found');
    // The page reads the log again after each; none of the three may be lost on the way.
    await page.selectOption('#trace-column-coolant', '1');
    await page.selectOption('#trace-column-speed', '2');
    await page.selectOption('#trace-column-ambient', '5');
    await expect
      .poll(() => verdict(page).textContent(), PATIENCE)
      .toContain('opens too early or stands open');
    for (const [role, column] of [
      ['coolant', '1'],
      ['speed', '2'],
      ['ambient', '5'],
    ])
      await expect.poll(() => page.inputValue(`#trace-column-${role}`), PATIENCE).toBe(column);
    await close();
  });

  test('a car that is not on the shelf is judged by the stamp and the fan typed for it', async () => {
    const { page, close } = await openPage(browser, site.root, quiet);
    await page.goto(`${site.root}road-test.html`);
    await choose(page, sample('opens-early'));
    await page.locator('.understood').evaluate((part: HTMLDetailsElement) => {
      part.open = true;
    });
    await page.fill('#trace-stamp', '870');
    await page.locator('#trace-stamp').blur();
    expect(await page.locator('#trace-stamp-says').textContent()).toContain('Write one temperature');
    await page.fill('#trace-stamp', '87');
    await page.locator('#trace-stamp').blur();
    await expect
      .poll(() => verdict(page).textContent(), PATIENCE)
      .toMatch(/opens too early or stands open.*should start to open at 87\s°C/);
    await page.fill('#trace-fan-on', '97');
    await page.locator('#trace-fan-on').blur();
    // Both stand, and the proof run under the log goes by them.
    await expect.poll(() => page.locator('#trace-fan-on-says').textContent(), PATIENCE).toBe('as you say');
    expect(await page.inputValue('#trace-stamp')).toMatch(/^87/);
    await expect
      .poll(() => page.locator('ht-proof-run').textContent())
      .toContain('held against what you typed');
    expect(await page.locator('ht-proof-run').textContent()).toMatch(/84\s–\s91\s°C/);
    await close();
  });

  test('what is no log gets a message, and the next file is read', async () => {
    const file = join(scratch, 'letter.txt');
    await writeFile(file, 'Dear customer, your car is ready.');
    const { page, close } = await openPage(browser, site.root, quiet);
    await page.goto(`${site.root}road-test.html`);
    await choose(page, file);
    expect(await verdict(page).textContent()).toContain('No columns of figures were found');
    await page.setInputFiles('#log-file', sample('sound-run'));
    await expect.poll(() => verdict(page).textContent(), PATIENCE).toContain('The thermostat holds');
    await close();
  });

  test('samples are read from the page, pasted lines too', async () => {
    const { page, close } = await openPage(browser, site.root, quiet);
    await page.goto(`${site.root}road-test.html`);
    await page.getByText('Samples, all invented').click();
    await page.locator('[data-sample="sensor-jumps"] button').click();
    await expect.poll(() => verdict(page).textContent(), PATIENCE).toContain('the reading jumps');
    await page.getByText('Paste lines instead').click();
    await page.fill(
      '#log-lines',
      'min;°C;km/h\n0;15;0\n1;24;50\n2;33;50\n3;42;50\n4;52;50\n5;61;50\n6;70;50',
    );
    await page.getByRole('button', { name: 'Read these lines' }).click();
    await expect.poll(() => verdict(page).textContent(), PATIENCE).toContain('This log cannot tell');
    await close();
  });

  test('vehicle and units may change while it is shown', async () => {
    const { page, close } = await openPage(browser, site.root, quiet);
    await page.goto(`${site.root}road-test.html`);
    await choose(page, sample('sound-run'));
    expect(await verdict(page).textContent()).toContain('(general)');
    await page.getByRole('button', { name: 'US units' }).click();
    await expect.poll(() => verdict(page).textContent(), PATIENCE).toContain('°F');
    await close();
  });

  test('closer and back again by button', async () => {
    const { page, close } = await openPage(browser, site.root, quiet);
    await page.goto(`${site.root}road-test.html`);
    await choose(page, sample('sound-run'));
    const whole = await page.locator('.chart').innerHTML();
    await page.getByRole('button', { name: 'Zoom in' }).click();
    expect(await page.locator('.chart').innerHTML()).not.toBe(whole);
    await page.getByRole('button', { name: 'Whole log' }).click();
    expect(await page.locator('.chart').innerHTML()).toBe(whole);
    await close();
  });

  test('two hours at ten a second in twenty columns: read in the background', async () => {
    const file = join(scratch, 'long.csv');
    await writeFile(file, longLog());
    const { page, close } = await openPage(browser, site.root, quiet);
    await page.goto(`${site.root}road-test.html`);
    const worker = page.waitForEvent('worker');
    await choose(page, file);
    expect((await worker).url()).toContain('scripts/trace-worker.js');
    // It holds a figure; for which stamps that is right is said under it, as no vehicle is chosen.
    expect(await page.locator('.result').textContent()).toMatch(
      /It regulates at \d+\s°C: right for a stamp up to/,
    );
    // However long the log, the drawing stays small.
    expect((await page.locator('.chart').innerHTML()).length).toBeLessThan(120_000);
    await close();
  });
});

test('from a folder, where a browser may refuse workers, the page reads it itself', async () => {
  const folder = join(scratch, 'folder');
  await cp(builtSite(), folder, { recursive: true });
  const root = folderRoot(folder);
  const { page, close } = await openPage(browser, root);
  await page.goto(`${root}road-test.html`);
  await choose(page, sample('sound-run'));
  expect(await verdict(page).textContent()).toContain('°C at steady speed');
  await close();
});

describe('the proof run', () => {
  test('by hand and from the log, kept on the device, put on the job card', async () => {
    const { page, close } = await openPage(browser, site.root, phone);
    await chooseVehicle(page, site.root, 'aldermoor-tarn-16');
    await page.fill('#proof-vents', '40');
    await page.locator('#proof-vents').blur();
    const row = (id: string) => page.locator('li', { has: page.locator(`#proof-${id}`) }).locator('.passed');
    expect(await row('vents').textContent()).toBe('Fail');
    await page.fill('#proof-vents', '60');
    await page.locator('#proof-vents').blur();
    await page.selectOption('#proof-leaks', 'none');
    expect(await row('vents').textContent()).toBe('Pass');
    await choose(page, sample('sound-run'));
    await page.getByRole('button', { name: /^Use \d from the log$/ }).click();
    expect(await page.inputValue('#proof-fan-on')).toBe('96');
    // The log has a second temperature: 88 °C at 24.5 min, within 6 K of 94 °C.
    expect(await page.inputValue('#proof-hoses-equal')).toBe('94');
    expect(await row('fan-on').textContent()).toBe('Pass');
    // What was entered by hand stays.
    expect(await page.inputValue('#proof-vents')).toBe('60');
    await page.reload();
    await expect.poll(() => page.inputValue('#proof-fan-on')).toBe('96');
    // Pressed twice by mistake, it is on the card once.
    for (let press = 0; press < 2; press++) {
      await page
        .locator('ht-proof-run')
        .getByRole('button', { name: 'To the job card, after the repair' })
        .click();
      await page.locator('ht-proof-run .on-card a').waitFor();
    }
    await page.locator('ht-proof-run .on-card a').click();
    await page.waitForURL(/job\.html/);
    const runs = page.locator('ht-job-card .proofs li');
    // What is still to be done is on the card as well.
    await expect
      .poll(() => runs.allTextContents())
      .toEqual([
        expect.stringMatching(/^after the repair.*So far in order: \d of 10\. Still to do: .*gauge/),
      ]);
    const fan = page.locator('ht-job-card .proof-table tr', { hasText: 'fan starts' });
    expect(await fan.locator('td').allTextContents()).toEqual([
      '',
      '96\u00a0°C',
      expect.stringContaining('°C'),
    ]);
    await close();
  });

  test('what cannot be meant is not kept, and what was typed stays', async () => {
    const { page, close } = await openPage(browser, site.root, quiet);
    await page.goto(`${site.root}road-test.html`);
    await page.fill('#proof-holds', 'warm');
    await page.locator('#proof-holds').blur();
    expect(await page.locator('#proof-holds-says').textContent()).toBe(
      '“warm” is no temperature. Write one, such as 88.',
    );
    expect(await page.inputValue('#proof-holds')).toBe('warm');
    expect(await page.getAttribute('#proof-holds', 'aria-invalid')).toBe('true');
    await page.reload();
    await expect.poll(() => page.locator('ht-proof-run .answer-sentence').count()).toBe(1);
    expect(await page.inputValue('#proof-holds')).toBe('');
    await close();
  });
});

test('without scripts: the drive and the milestones can be read and printed', async () => {
  const { page, close } = await openPage(browser, site.root, { ...quiet, javaScriptEnabled: false });
  await page.goto(`${site.root}road-test.html`);
  expect(await page.locator('ht-proof-run li').count()).toBe(10);
  expect(await page.locator('noscript, .note-line').first().textContent()).toContain('needs scripts');
  await close();
});

test.each(['light', 'dark'] as const)('axe finds nothing on a judged log, %s', async (colorScheme) => {
  for (const size of [SIZES.phone, SIZES.desktop]) {
    const { page, close } = await openPage(browser, site.root, { ...quiet, viewport: size, colorScheme });
    await page.goto(`${site.root}road-test.html`);
    await choose(page, sample('opens-early'));
    expect(await axeViolations(page)).toEqual([]);
    await close();
  }
});
