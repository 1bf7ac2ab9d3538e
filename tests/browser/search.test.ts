/** Search on the real shelf, in the order people see. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { builtSite, openPage, type WatchedPage } from './browser.ts';
import { openSite } from './open-site.ts';

const { browser, site } = await openSite();
let opened: WatchedPage;

beforeAll(async () => {
  opened = await openPage(browser, site.root, { serviceWorkers: 'block' });
  await opened.page.goto(`${site.root}search.html`);
});
afterAll(async () => {
  await opened.close();
});

interface Shown {
  kind: string;
  page: string;
  text: string;
}

async function search(query: string): Promise<{ state: string; results: Shown[] }> {
  const { page } = opened;
  await page.locator('ht-search input').fill(query);
  await page.locator('ht-search input').press('Enter');
  await page.locator('ht-search:not([aria-busy])').waitFor();
  // Fetched with the first words; from then on its answer is there before any other.
  await page.waitForFunction(() => 'headertankFinder' in globalThis && 'headertankComplaints' in globalThis);
  const results = await page.locator('.search-results > li:visible').evaluateAll((items) =>
    items.map((item) => ({
      kind: item.querySelector('.kind')?.textContent ?? '',
      page: item.querySelector('a')?.href.replace(/^.*\/([^/]+\/[^/]+)\.html$/, '$1') ?? '',
      text: item.textContent ?? '',
    })),
  );
  return { state: (await page.locator('.search-state').textContent()) ?? '', results };
}

/** From the issue that asks for this search: first or second result. */
test.each([
  ['heater blows cold', 'symptoms/no-cabin-heat'],
  ['temp drops on the highway', 'symptoms/reads-low-at-cruise'],
  ['P0128', 'symptoms/reads-low-at-cruise'],
  ['coolant wont go down', 'symptoms/wont-go-down-while-filling'],
])('“%s” finds %s first or second', async (query, wanted) => {
  const { results } = await search(query);
  expect(results.slice(0, 2).map(({ page }) => page)).toContain(wanted);
});

describe('one thing written in several ways gives one answer', () => {
  test.each([
    ['P0128', 'p0128', 'P 0128', 'p-0128', 'P01 28', 'p128'],
    ['1.4 bar', '1.4bar', '1,4 bar', '1.4  Bar'],
    ['88 °C', '88°C', '88c', '88 degrees C'],
    ['by-pass', 'BY-PASS'],
    ["won't go down", 'wont go down', 'won’t go down'],
  ])('%s', async (first, ...others) => {
    const { results } = await search(first);
    expect(results.length).toBeGreaterThan(0);
    // What is quoted is quoted as it was typed.
    const pages = results.map(({ page }) => page);
    for (const other of others)
      expect(
        (await search(other)).results.map(({ page }) => page),
        other,
      ).toEqual(pages);
  });

  test('a figure keeps its decimal point: 1.4 is not 14', async () => {
    const { results } = await search('0.5 bar');
    expect(results.some(({ text }) => text.includes('0.5'))).toBe(true);
    const found = await search('05 bar');
    expect(found.results.map(({ page }) => page)).not.toEqual(results.map(({ page }) => page));
  });
});

describe('slips of the pen', () => {
  test.each([
    ['termostat', 'thermostat'],
    ['refractomter', 'refractometer'],
    ['radaitor', 'radiator'],
  ])('“%s” is read as “%s”, and says so', async (slip, right) => {
    const { state, results } = await search(slip);
    expect(state).toContain(`Read “${slip}” as “${right}”.`);
    expect(results[0]?.text.toLowerCase()).toContain(right);
  });

  test('a word nobody knows is named and the rest is looked for', async () => {
    const { state, results } = await search('qwxyz heater');
    expect(state).toContain('No page has “qwxyz”; looked for the rest.');
    expect(results.length).toBeGreaterThan(0);
  });

  test('nothing at all is said in words', async () => {
    const { state, results } = await search('qwxyz');
    expect(state).toMatch(/^Nothing found\./);
    expect(results).toEqual([]);
  });
});

test('“temp gauge in the red” is a car that may be boiling, before a gauge that lies', async () => {
  for (const words of ['temp gauge in the red', 'needle in the red']) {
    const { results } = await search(words);
    expect(results[0]?.text).toMatch(/^Symptom\s*Hot /);
  }
});

test('a code that no page has is said to be one, with the way to those there are', async () => {
  const { state } = await search('P1234');
  expect(state).toContain('P1234 is not on this shelf');
  await opened.page.getByRole('link', { name: 'The codes on this shelf' }).waitFor();
});

test('one letter finds nothing yet, and the list under the field comes back with an empty field', async () => {
  const { page } = opened;
  const list = page.getByRole('heading', { name: 'What customers say' });
  await page.goto(`${site.root}search.html?q=thermostat`);
  await list.waitFor({ state: 'hidden' });
  await page.getByRole('searchbox').fill('t');
  await page.getByText('Type at least two letters or digits.').waitFor();
  expect(await page.locator('.search-results > li').count()).toBe(0);
  await page.getByRole('searchbox').fill('');
  await list.waitFor();
});

test('a result says its kind, and because of which words or which other name', async () => {
  const { results } = await search('belt squeals in the morning');
  expect(results[0]?.kind).toBe('Symptom');
  expect(results[0]?.text).toContain('because of “belt”, “squeals”');
  expect(results.some(({ kind, text }) => kind === 'Cause' && text.includes('customers say “'))).toBe(true);
});

describe('what a customer says leads to the complaint at once', () => {
  const first = () => opened.page.locator('.recognised');

  test('a sure one alone, with what a caller waits for', async () => {
    await search('my temp gauge drops on the highway and heater is lukewarm');
    const sure = first().locator('.complaints.sure > li');
    expect(await sure.count()).toBe(1);
    expect(await sure.textContent()).toMatch(
      /Reads low at steady cruise.*May it be driven\? Yes.*Book \d+ min/,
    );
    // The same page is not found once more below.
    expect(
      await opened.page
        .locator('.search-results > li:visible a', { hasText: 'Reads low at steady cruise' })
        .count(),
    ).toBe(1);
  });

  test('three alike with the question that parts them; its answer puts one first', async () => {
    const { page } = opened;
    await search('car overheats');
    expect(await first().locator('.complaints > li').count()).toBe(3);
    const question = first().locator('.parting');
    const asked = await question.locator('b').textContent();
    const before = await first().locator('.complaints > li a').allTextContents();
    await question.getByRole('button').last().click();
    const after = await first().locator('.complaints > li a').allTextContents();
    expect(after[0]).not.toBe(before[0]);
    expect(before).toContain(after[0]);
    expect(await first().locator('.parting b').allTextContents()).not.toContain(asked);
    // Other words are another complaint: the answer goes with the old ones.
    await search('the car overheats');
    expect(await first().locator('.complaints > li a').allTextContents()).toEqual(before);
    expect(await page.evaluate(() => document.querySelectorAll('.recognised').length)).toBe(1);
  });

  test('what is no cooling complaint is said to be none, and hides nothing', async () => {
    const { results } = await search('my brakes squeal');
    await first().getByText('This does not sound like cooling.').waitFor();
    // The verdict of a belt's noise is none on brakes.
    expect(await first().getByText('May it be driven?').count()).toBe(0);
    expect(results.length).toBeGreaterThan(3);
  });

  test.each([
    ['boiling now', 'guides/boiling-now'],
    ['steam from hood', 'guides/boiling-now'],
    ['0128', 'codes/p0128'],
    ['P0128', 'codes/p0128'],
    ['pressure test', 'procedures/pressure-test'],
    ['refractometer', 'tools/refractometer'],
  ])('“%s” leads to %s before any complaint', async (query, wanted) => {
    expect((await search(query)).results[0]?.page).toBe(wanted);
  });

  test.each([['1.4 bar'], ['88 °C'], ['qwxyz']])('“%s” is no complaint', async (query) => {
    await search(query);
    expect(await first().locator('.complaints').count()).toBe(0);
  });

  test('in the same frame as the key', async () => {
    await search('heater');
    const shown = await opened.page.evaluate(() => {
      const field = document.querySelector<HTMLInputElement>('ht-search input');
      if (!field) return '';
      field.value = 'fan never stops';
      field.dispatchEvent(new Event('input', { bubbles: true }));
      return document.querySelector('.complaints a')?.textContent;
    });
    expect(shown).toBe('Radiator fan never stops');
  });

  test('without the full text too: what cannot be fetched holds nothing up', async () => {
    const half = await openPage(browser, site.root, { serviceWorkers: 'block' });
    await half.page.route(/search-start/, (route) => route.fulfill({ body: '' }));
    await half.page.goto(`${site.root}search.html`);
    await half.page.locator('ht-search input').fill('no warm air from the heater');
    await half.page.locator('.complaints a').first().waitFor();
    expect(await half.page.locator('.complaints a').first().textContent()).toBe('No cabin heat at all');
    await half.page.close();
  });

  test('with another kind chosen the complaints stand back', async () => {
    await search('thermostat');
    await opened.page.getByLabel('Show').selectOption('cause');
    await first().locator('.complaints').waitFor({ state: 'detached' });
    await opened.page.getByLabel('Show').selectOption('');
  });
});

test('“/” goes to the search from anywhere, and is a letter in a field', async () => {
  const { page } = opened;
  await page.goto(`${site.root}causes/thermostat-stuck-open.html`);
  await page.keyboard.press('/');
  await page.waitForURL('**/search.html#q');
  const field = page.locator('ht-search input');
  await expect.poll(() => field.evaluate((input) => input === document.activeElement)).toBe(true);
  await page.keyboard.type('km/h');
  expect(await field.inputValue()).toBe('km/h');
  await field.blur();
  await page.keyboard.press('/');
  expect(await field.evaluate((input) => input === document.activeElement)).toBe(true);
});

test('the same words give the same order each time', async () => {
  const query = 'gauge drops when the heater is on';
  expect((await search(query)).results).toEqual((await search(query)).results);
});

test('a query in the address is answered when the page opens', async () => {
  const { page } = opened;
  await page.goto(`${site.root}search.html?q=P0128`);
  await page.locator('.search-results a[href$="codes/p0128.html"]').first().waitFor();
  expect(await page.locator('ht-search input').inputValue()).toBe('P0128');
});

test('a kind can be chosen and stays in the address', async () => {
  const { page } = opened;
  await search('thermostat');
  await page.getByLabel('Show').selectOption('cause');
  await expect
    .poll(() => page.locator('.search-results .kind').allTextContents())
    .toSatisfy((kinds: string[]) => kinds.length > 0 && kinds.every((kind) => kind === 'Cause'));
  expect(page.url()).toContain('kind=cause');
  await page.reload();
  await page.locator('.search-results li').first().waitFor();
  expect(await page.getByLabel('Show').inputValue()).toBe('cause');
  expect(new Set(await page.locator('.search-results .kind').allTextContents())).toEqual(new Set(['Cause']));
});

test('after the form of the front page was sent, arrow keys lead into the results; a phone shows no keyboard', async () => {
  const { page } = opened;
  await page.goto(`${site.root}search.html?q=no+cabin+heat`);
  await page.locator('.search-results a').first().waitFor();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await page.waitForURL('**/symptoms/no-cabin-heat.html');
  const touch = await openPage(browser, site.root, {
    isMobile: true,
    hasTouch: true,
    serviceWorkers: 'block',
  });
  await touch.page.goto(`${site.root}search.html?q=no+cabin+heat`);
  await touch.page.locator('.search-results a').first().waitFor();
  expect(await touch.page.evaluate(() => document.activeElement?.tagName)).toBe('BODY');
  await touch.close();
});

test('arrow keys walk through the results, Enter opens, Escape goes back to the field', async () => {
  const { page } = opened;
  await page.goto(`${site.root}index.html`);
  const focused = () => page.evaluate(() => document.activeElement?.tagName);
  await page.locator('ht-search input').pressSequentially('no cabin heat', { delay: 5 });
  await page.locator('.search-results a').first().waitFor();
  // Not sure enough to stand alone: the list comes by itself, without what stands above it.
  await page.locator('.search-results > li:not([hidden])').nth(2).waitFor();
  await page.locator('ht-search input').focus();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  expect(await focused()).toBe('A');
  await page.keyboard.press('Escape');
  expect(await focused()).toBe('INPUT');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('Enter');
  await page.waitForURL(/symptoms\/no-cabin-heat\.html$/);
});

test('a first search that is settled asks for the complaints alone; who wants more fetches the full text', async () => {
  const fresh = await openPage(browser, site.root, { serviceWorkers: 'block' });
  const asked: string[] = [];
  fresh.page.on('request', (request) => asked.push(request.url().slice(site.root.length)));
  await fresh.page.goto(`${site.root}search.html`);
  const before = asked.length;
  const field = fresh.page.locator('ht-search input');
  await field.fill('P0128');
  const others = fresh.page.getByRole('button', { name: 'Other pages with these words' });
  await others.waitFor();
  const settled = asked
    .slice(before)
    .filter((address) => /pagefind|search-|recognise|complaints/.test(address));
  expect(settled.sort()).toEqual(['data/complaints.js', 'scripts/recognise.js', 'styles/complaints.css']);
  const packed = settled.map(
    (address) => gzipSync(readFileSync(join(builtSite(), address)), { level: 9 }).length,
  );
  expect(packed.reduce((sum, bytes) => sum + bytes, 0)).toBeLessThan(68_000);
  await others.click();
  await fresh.page.getByText(/^\d+ (of \d+ )?results\b/).waitFor();
  const more = asked.slice(before).filter((address) => !settled.includes(address));
  expect(more.filter((address) => address.startsWith('scripts/'))).toEqual(['scripts/search-start.js']);
  expect(more.filter((address) => address.includes('/index/'))).toHaveLength(1);
  await fresh.close();
});
