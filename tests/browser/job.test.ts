/** The job card: what it collects, what becomes of it, and what it keeps. */
import { spawnSync } from 'node:child_process';
import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { jobCardsSchema } from '../../src/model/job.ts';
import { builtSite, openPage, SIZES } from './browser.ts';
import { fillStorage, forbidStorage } from './device-storage.ts';
import { giveAnswer } from './give-answer.ts';
import { openSite } from './open-site.ts';

const { browser, site } = await openSite();

const quiet = { serviceWorkers: 'block' as const };

async function openCard(page: Page, hash = ''): Promise<void> {
  await page.goto(`${site.root}job.html${hash}`);
  await page.locator('ht-job-card[data-live]').waitFor();
}

async function addReading(page: Page, what: string, value: string): Promise<void> {
  await page.getByLabel('What', { exact: true }).fill(what);
  await page.getByLabel('Reading', { exact: true }).fill(value);
  await page.getByRole('button', { name: 'Add reading' }).click();
}

async function download(page: Page, name: string): Promise<string> {
  const waiting = page.waitForEvent('download');
  await page.getByRole('button', { name, exact: true }).click();
  return (await waiting).path();
}

test('a walk with readings becomes a job card, a customer sheet and a note that is taken in and checked', async () => {
  const watched = await openPage(browser, site.root, { ...quiet, viewport: SIZES.phone });
  const { page } = watched;
  // The vehicle, the walk, a calculator.
  await page.goto(`${site.root}vehicles/aldermoor-tarn-16.html`);
  await page.getByRole('button', { name: 'Work on this vehicle' }).click();
  await page.getByText('It stays chosen').waitFor();
  await page.goto(`${site.root}symptoms/reads-low-at-cruise.html`);
  await page.locator('ht-walk[data-live]').waitFor();
  await page.locator('.top-vehicle summary').waitFor();
  // Two real answers, whatever the tree asks; then the proof, as the address of a walk carries it.
  const given: string[] = [];
  for (let at = 0; at < 2; at++) {
    const answer = page.locator('.step[data-now] .answers .answer').first();
    given.push((await answer.getAttribute('data-key')) ?? '');
    await giveAnswer(page, answer);
  }
  await page.evaluate(() => {
    location.hash +=
      '&hose-warm-up-outlet-side=warm-early&thermostat-inspection=gapes-cold&thermostat-bench-test=open-when-cold';
  });
  await page.getByRole('heading', { name: 'Proven: Thermostat stuck open' }).waitFor();
  await page.getByRole('button', { name: 'To the job card' }).click();
  await page.getByText('On the job card:').waitFor();
  await page.goto(`${site.root}calculators/fill-account.html`);
  // Until what was measured is typed the answer is an example, and no reading for a card.
  await page.getByLabel('Came out, measured', { exact: true }).fill('3');
  await page.getByLabel('Went back in so far', { exact: true }).fill('2.3');
  await page.getByRole('button', { name: 'To the job card' }).click();
  // The card.
  await page.getByRole('link', { name: /Tarn/ }).last().click();
  await page.locator('ht-job-card[data-live]').waitFor();
  await page.locator('.top-vehicle summary').waitFor();
  expect(await page.locator('.complaint').textContent()).toBe('Reads low at steady cruise');
  expect(await page.locator('.answers-given').textContent()).toMatch(/Proven: Thermostat stuck open/);
  expect(await page.locator('.answers-given li').count()).toBeGreaterThanOrEqual(given.length);
  await page.getByLabel('Job: number or name').fill('4711');
  await page.getByLabel('The customer says').fill('Temperature drops on the highway');
  await addReading(page, 'Coolant at steady cruise', '88 °C');
  // The calculator's litres are on the card; what ran and went in since comes to them.
  await page.getByLabel('Drained or filled').selectOption('drained');
  await page.getByLabel('Litres', { exact: true }).fill('0,4');
  await page.getByRole('button', { name: 'Add litres' }).click();
  await page.getByLabel('Drained or filled').selectOption('filled');
  await page.getByLabel('Litres', { exact: true }).fill('0.8');
  await page.getByLabel('Litres', { exact: true }).press('Enter');
  await expect
    .poll(() => page.locator('.litres-sum').textContent())
    .toBe('Drained 3.4 l, filled 3.1 l: 0.3 l less than came out.');
  await page.getByLabel(/Thermostat or water-outlet housing/).check();
  await page.getByLabel('What we found').fill('The thermostat stood open.');
  await page.getByLabel('What we did').fill('New thermostat and seal, filled and bled.');
  await page.getByLabel('What to watch').fill('Look at the level, engine cold, in a week.');
  // The customer sheet.
  await page.getByRole('link', { name: 'Customer sheet' }).click();
  const paper = page.locator('.paper');
  await expect.poll(() => paper.textContent()).toContain('What we found, did and measured');
  for (const words of [
    'Temperature drops on the highway',
    'The thermostat stood open.',
    '88 °C',
    'Refilled with 3.1 l.',
    'Look at the level',
  ])
    expect(await paper.textContent()).toContain(words);
  expect(await paper.textContent()).not.toMatch(/\bis safe\b/);
  await page.goBack();
  await page.getByRole('link', { name: 'Job card to print' }).click();
  await expect
    .poll(() => paper.textContent())
    .toMatch(/Thermostat or water-outlet housing\s*10\sN·m, ticked/);
  await page.goBack();
  // The note.
  await page.getByRole('button', { name: 'Write a note from this card' }).click();
  await page.locator('ht-note-form[data-live]').waitFor();
  expect(await page.getByLabel('Cause', { exact: true }).inputValue()).toBe('thermostat-stuck-open');
  expect(await page.getByLabel('The note', { exact: true }).inputValue()).toContain(
    'Coolant at steady cruise: 88 °C',
  );
  await page
    .getByLabel('What it is about, in one line')
    .fill('Tarn 1.6 runs at 88 again with the right thermostat');
  await page.getByLabel('Your initials').fill('JR');
  await page.getByText('Ready').waitFor();
  const note = await readFile(await download(page, 'Save the file'), 'utf8');
  await watched.close();
  await takenInAndChecked(note, 'tarn-1-6-runs-at-88-again-with-the-right-thermostat');
});

const REMEMBERED = 'node_modules/.cache/headertank';

/** The saved note on a copy of the shelf, by the commands a keeper of the shelf uses. */
async function takenInAndChecked(note: string, id: string): Promise<void> {
  const home = await mkdtemp(join(tmpdir(), 'shelf-'));
  await cp('content', join(home, 'content'), { recursive: true });
  // What the check remembers of the shelf goes with it: it judges what has changed, as a keeper's second check does.
  await cp(REMEMBERED, join(home, REMEMBERED), {
    recursive: true,
    filter: (path) => !path.endsWith('compiled'),
  });
  await writeFile(join(home, `${id}.yaml`), note);
  const run = (command: string, ...words: string[]) =>
    spawnSync(process.execPath, [resolve(command), ...words], { cwd: home, encoding: 'utf8' });
  const taken = run('src/cli/take-in.ts', `${id}.yaml`, '--no-branch');
  expect(taken.stderr).toBe('');
  expect(taken.stdout).toContain(`content/notes/${new Date().getFullYear()}/${id}.yaml`);
  expect(run('src/cli/check.ts').status).toBe(0);
  await rm(home, { recursive: true });
}

test('a note that was taken in and that nobody has reviewed stands on its page, its vehicle and About', async () => {
  const built = (page: string) => readFile(join(builtSite(), page), 'utf8');
  const page = await built('notes/mere-stamp-read.html');
  expect(page).toContain('Had it in my hand on the only one we have had in.');
  expect(page).toContain('Proposed: nobody has reviewed it yet.');
  expect(await built('vehicles/lindqual-mere-12.html')).toContain('notes/mere-stamp-read.html');
  expect(await built('about.html')).toContain('notes/mere-stamp-read.html');
});

describe('what it keeps', () => {
  test('everything over a reload; several cards, each by itself', async () => {
    const watched = await openPage(browser, site.root, quiet);
    const { page } = watched;
    await openCard(page);
    await page.getByLabel('Job: number or name').fill('First');
    await addReading(page, 'Fan in at', '97 °C');
    await page.reload();
    await page.locator('ht-job-card[data-live]').waitFor();
    expect(await page.getByLabel('Job: number or name').inputValue()).toBe('First');
    await expect.poll(() => page.locator('.readings').textContent()).toContain('97 °C');
    await page.getByRole('button', { name: 'New card' }).click();
    expect(await page.locator('.readings li').count()).toBe(0);
    await page.getByLabel('Job: number or name').fill('Second');
    await expect.poll(() => page.locator('.cards li').count()).toBe(2);
    await page.getByRole('link', { name: /^First/ }).click();
    await expect.poll(() => page.locator('.readings').textContent()).toContain('97 °C');
    await watched.close();
  });

  test('two windows write on one card at once, and nothing of either is lost', async () => {
    const watched = await openPage(browser, site.root, quiet);
    const { page } = watched;
    await openCard(page);
    await page.getByLabel('Job: number or name').fill('Shared');
    const other = await page.context().newPage();
    await other.goto(page.url());
    await other.locator('ht-job-card[data-live]').waitFor();
    await addReading(page, 'One', '1 °C');
    await addReading(other, 'Two', '2 °C');
    await addReading(page, 'Three', '3 °C');
    await expect.poll(() => other.locator('.readings li').count()).toBe(3);
    await page.getByLabel('What we did').focus();
    await other.getByLabel('What we did').fill('written there');
    await page.keyboard.type('written here');
    await page.reload();
    await page.locator('ht-job-card[data-live]').waitFor();
    const all = await page
      .locator('ht-job-card')
      .evaluate(
        (card) => `${card.textContent} ${(card.querySelector('[name=did]') as HTMLTextAreaElement).value}`,
      );
    expect(all).toContain('written');
    expect(all).toContain('here');
    expect(all).toContain('there');
    await watched.close();
  });

  test('a full device: it says so, nothing is lost on the page, and leaving asks first', async () => {
    const watched = await openPage(browser, site.root, quiet);
    const { page } = watched;
    await openCard(page);
    await page.getByLabel('Job: number or name').fill('Kept before');
    await fillStorage(page);
    await addReading(page, 'Fan in at', '97 °C');
    await page.getByText('This device keeps nothing here.').waitFor();
    await expect.poll(() => page.locator('.readings').textContent()).toContain('97 °C');
    const text = await readFile(await download(page, 'Export it now'), 'utf8');
    expect(jobCardsSchema.parse(JSON.parse(text)).jobs[0]?.readings[0]?.value).toBe('97 °C');
    let asked = false;
    page.once('dialog', async (dialog) => {
      asked = dialog.type() === 'beforeunload';
      await dialog.accept();
    });
    await page.reload();
    expect(asked).toBe(true);
    await watched.close();
  });

  test('blocked storage: it says so at once and works on', async () => {
    const watched = await openPage(browser, site.root, quiet);
    const { page } = watched;
    await forbidStorage(page);
    await openCard(page);
    await page.getByText('This device keeps nothing here.').waitFor();
    await addReading(page, 'Fan in at', '97 °C');
    await expect.poll(() => page.locator('.readings').textContent()).toContain('97 °C');
    await watched.close();
  });
});

describe('what becomes of it', () => {
  test('exported and imported on another device it is the same; a broken file changes nothing', async () => {
    const watched = await openPage(browser, site.root, quiet);
    const { page } = watched;
    await openCard(page);
    await page.getByLabel('Job: number or name').fill('To carry');
    await addReading(page, 'Fan in at', '97 °C');
    const file = await download(page, 'Export this card');
    const cards = jobCardsSchema.parse(JSON.parse(await readFile(file, 'utf8')));
    expect(cards.jobs).toHaveLength(1);
    const other = await openPage(browser, site.root, quiet);
    await openCard(other.page);
    const give = async (content: string) =>
      other.page
        .locator('.import')
        .setInputFiles({ name: 'cards.json', mimeType: 'application/json', buffer: Buffer.from(content) });
    await give('{"form": "headertank job');
    await expect.poll(() => other.page.locator('.told').textContent()).toContain('cut short');
    await give(
      JSON.stringify({ ...cards, jobs: [{ ...cards.jobs[0], readings: 'none', __proto__: { x: 1 } }] }),
    );
    await expect.poll(() => other.page.locator('.told').textContent()).toContain('jobs 0 readings');
    expect(await other.page.locator('.cards li').count()).toBe(0);
    await give(JSON.stringify(cards));
    await expect.poll(() => other.page.locator('.told').textContent()).toBe('One card taken in.');
    expect(await other.page.getByLabel('Job: number or name').inputValue()).toBe('To carry');
    await give(JSON.stringify(cards));
    await expect.poll(() => other.page.locator('.told').textContent()).toContain('is here already');
    // A stick that is pulled out while the file is read.
    await other.page.evaluate(() => {
      Blob.prototype.text = () => Promise.reject(new DOMException('gone', 'NotReadableError'));
    });
    await give(JSON.stringify(cards));
    await expect.poll(() => other.page.locator('.told').textContent()).toContain('cannot be read');
    await other.close();
    await watched.close();
  });

  test('clearing all asks first', async () => {
    const watched = await openPage(browser, site.root, quiet);
    const { page } = watched;
    await openCard(page);
    await page.getByLabel('Job: number or name').fill('One');
    await page.getByRole('button', { name: 'New card' }).click();
    await page.getByLabel('Job: number or name').fill('Two');
    await page.getByRole('button', { name: 'Remove all cards' }).click();
    expect(await page.locator('.question').textContent()).toContain('Remove all 2 cards from this device?');
    await page.getByRole('button', { name: 'Keep', exact: true }).click();
    await expect.poll(() => page.locator('.cards li').count()).toBe(2);
    await page.getByRole('button', { name: 'Remove all cards' }).click();
    await page.getByRole('button', { name: 'Remove all', exact: true }).click();
    await expect.poll(() => page.locator('.cards li').count()).toBe(0);
    await page.reload();
    await page.locator('ht-job-card[data-live]').waitFor();
    expect(await page.locator('.cards li').count()).toBe(0);
    await watched.close();
  });

  test('hostile words on a card stay words on its sheets', async () => {
    const watched = await openPage(browser, site.root, quiet);
    const { page } = watched;
    await openCard(page);
    const hostile = '<img src=x onerror="document.title=\'broken\'"><script>document.title="broken"</script>';
    await page.getByLabel('Job: number or name').fill(hostile);
    await page.getByLabel('What we did').fill(hostile);
    await addReading(page, hostile.slice(0, 100), hostile.slice(0, 100));
    await page.getByRole('link', { name: 'Customer sheet' }).click();
    await expect.poll(() => page.locator('.paper').textContent()).toContain('<script>');
    expect(await page.locator('.paper :is(img, script)').count()).toBe(0);
    expect(await page.title()).not.toBe('broken');
    await watched.close();
  });
});

describe('on paper', () => {
  const sheets = {
    // The one with the most questions.
    'sheets/take-in/no-cabin-heat.html': 1,
    'sheets/take-in/pump-or-belt-noise.html': 1,
    // With access, bleeding and gauge it is front and back of one sheet.
    'sheets/specs/aldermoor-tarn-16.html': 2,
    'trees/cooling-code-alone.html': 1,
    'trees/hose-sucked-flat.html': 1,
  };
  const papers = { A4: [794, 1123], Letter: [816, 1056] } as const;
  for (const format of ['A4', 'Letter'] as const) {
    test.each(Object.entries(sheets))(`%s is clean on ${format}, at most %i pages`, async (address, most) => {
      const watched = await openPage(browser, site.root, quiet);
      const { page } = watched;
      await page.goto(site.root + address);
      await expectClean(page, format, most);
      await watched.close();
    });

    test(`job card and customer sheet are clean on ${format}`, async () => {
      const watched = await openPage(browser, site.root, quiet);
      const { page } = watched;
      await openCard(page);
      await page
        .getByLabel('Job: number or name')
        .fill('A job with a long name, of a customer with one, on a van with a roof rack');
      await page.getByLabel('What we did').fill('New thermostat and seal, filled and bled. '.repeat(12));
      for (let at = 1; at <= 8; at++)
        await addReading(page, `Reading number ${at} of the proof run`, `${80 + at} °C`);
      for (const name of ['Customer sheet', 'Job card to print']) {
        await page.getByRole('link', { name }).click();
        await page.locator('.paper h2').waitFor();
        await expectClean(page, format, 1);
        await page.getByRole('link', { name: 'Back to the card' }).click();
      }
      await watched.close();
    });
  }

  test('a record says whose figures stand on it, on which day, for which job', async () => {
    const watched = await openPage(browser, site.root, quiet);
    const { page } = watched;
    const line = async () => {
      await page.emulateMedia({ media: 'print' });
      await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
      const text = await page.locator('.paper-line:visible b').textContent();
      await page.emulateMedia({ media: 'screen' });
      return text;
    };
    await page.goto(`${site.root}procedures/thermostat-replace.html`);
    await expect.poll(line).toMatch(/^General figures, no vehicle chosen, printed \d{4}-\d\d-\d\d$/);
    await page.goto(`${site.root}vehicles/aldermoor-tarn-16.html`);
    await page.getByRole('button', { name: 'Work on this vehicle' }).click();
    await page.locator('.top-vehicle summary', { hasText: 'Tarn' }).waitFor();
    await openCard(page);
    await page.locator('.top-vehicle summary', { hasText: 'Tarn' }).waitFor();
    await page.getByLabel('Job: number or name').fill('4711');
    await page.goto(`${site.root}procedures/thermostat-replace.html`);
    await page.locator('.top-vehicle summary', { hasText: 'Tarn' }).waitFor();
    await expect
      .poll(line)
      .toMatch(/^Figures of: Aldermoor Tarn 1\.6 petrol, 2006-2012, printed \d{4}-\d\d-\d\d, job 4711$/);
    // Another vehicle's page has that vehicle's figures, and is not of this job.
    await page.goto(`${site.root}vehicles/lindqual-mere-12.html`);
    await expect.poll(line).toMatch(/^Figures of: Lindqual Mere 1\.2 petrol, 2012-2017, printed [\d-]+$/);
    await watched.close();
  });

  test('printed from the form, the card comes out and not its boxes', async () => {
    const watched = await openPage(browser, site.root, quiet);
    const { page } = watched;
    await openCard(page);
    await page.getByLabel('Job: number or name').fill('4711');
    // The sheets are fetched once the card stands.
    await page.waitForFunction(() => window.headertank.layOutSheet !== undefined);
    await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.card-form').isVisible()).toBe(false);
    expect(await page.locator('.paper').textContent()).toContain('4711');
    await watched.close();
  });

  /** Nothing that is only for the screen, nothing cut off at the edge, no more pages than that. */
  async function expectClean(page: Page, format: 'A4' | 'Letter', most: number): Promise<void> {
    const margin = 45; // 12 mm, as the style sheet sets it
    await page.emulateMedia({ media: 'print' });
    await page.setViewportSize({ width: papers[format][0] - 2 * margin, height: papers[format][1] });
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    );
    expect(await page.locator('button:visible, .top nav:visible, .no-print:visible').count()).toBe(0);
    const pdf = (await page.pdf({ format, preferCSSPageSize: true })).toString('latin1');
    expect(pdf.match(/\/Type\s*\/Page\b/g)?.length).toBeLessThanOrEqual(most);
    await page.emulateMedia({ media: 'screen' });
  }
});

test('on a phone what came in stands first, empty parts are a line each, and the sheets are at hand', async () => {
  const watched = await openPage(browser, site.root, { ...quiet, viewport: SIZES.phone });
  const { page } = watched;
  await openCard(page);
  const top = async (label: string) => (await page.getByLabel(label).boundingBox())?.y ?? 0;
  expect(await top('The customer says')).toBeLessThan(await top('Job: number or name'));
  const sheets = page.locator('.to-sheets a:visible');
  expect(await sheets.allTextContents()).toEqual(['customer', 'card', 'take-in']);
  expect((await sheets.first().boundingBox())?.y).toBeLessThan(SIZES.phone.height / 2);
  const open = () => page.locator('details.part[open] > summary').allTextContents();
  expect(await open()).toEqual([]);
  // Between what came in and the words for the customer lies less than a screen.
  expect((await top('What we found')) - (await top('Job: number or name'))).toBeLessThan(SIZES.phone.height);
  await page.locator('summary', { hasText: 'Remarks' }).click();
  await page.getByLabel('Remark', { exact: true }).fill('Cap is new');
  await page.getByRole('button', { name: 'Add remark' }).click();
  await expect.poll(open).toEqual(['Remarks']);
  // A part with something in it is read without being opened; one that somebody closes stays closed.
  await page.reload();
  await page.locator('ht-job-card[data-live]').waitFor();
  expect(await open()).toEqual(['Remarks']);
  await page.locator('summary', { hasText: 'Remarks' }).click();
  await page.getByLabel('Plate').fill('HB TM 412');
  expect(await open()).toEqual([]);
  await sheets.first().click();
  await page.getByRole('heading', { name: 'What we found, did and measured' }).waitFor();
  await watched.close();
});

test('a long text for the customer is read whole in its field', async () => {
  const watched = await openPage(browser, site.root, { ...quiet, viewport: { width: 390, height: 844 } });
  const { page } = watched;
  await openCard(page);
  const field = page.getByLabel('What we found');
  const before = (await field.boundingBox())?.height ?? 0;
  expect(before).toBeGreaterThanOrEqual(44);
  await field.fill('The valve plate no longer comes back to its seat. '.repeat(12));
  const { tall, hidden } = await field.evaluate((each) => ({
    tall: each.clientHeight,
    hidden: each.scrollHeight - each.clientHeight,
  }));
  expect(tall).toBeGreaterThan(before);
  expect(hidden).toBeLessThanOrEqual(1);
  await watched.close();
});

test('without scripts the card is a form to print and fill by hand', async () => {
  const watched = await openPage(browser, site.root, { ...quiet, javaScriptEnabled: false });
  await watched.page.goto(`${site.root}job.html`);
  await watched.page.emulateMedia({ media: 'print' });
  expect(await watched.page.locator('.card-form').isVisible()).toBe(true);
  expect(await readFile(join(builtSite(), 'job.html'), 'utf8')).toMatch(
    /<noscript>.*Keeping a card needs scripts/,
  );
  await watched.close();
});

test('a wide screen shows the card in two columns, a narrow one and paper in one', async () => {
  const watched = await openPage(browser, site.root, { ...quiet, viewport: { width: 1440, height: 900 } });
  const { page } = watched;
  await openCard(page);
  const column = (width: number) =>
    page
      .setViewportSize({ width, height: 900 })
      .then(() =>
        Promise.all([
          page.getByLabel('The customer says').boundingBox(),
          page.getByLabel('What we found').boundingBox(),
          page.getByLabel('What', { exact: true }).boundingBox(),
        ]),
      );
  const [said, found, what] = await column(1440);
  expect(found?.x).toBeGreaterThan((said?.x ?? 0) + (said?.width ?? 0));
  expect(Math.abs((what?.y ?? 0) - (said?.y ?? 0))).toBeLessThan(60);
  for (const width of [320, 390, 820]) {
    const [above, below] = await column(width);
    expect(below?.x).toBe(above?.x);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    );
  }
  await watched.close();
  const blank = await openPage(browser, site.root, { ...quiet, javaScriptEnabled: false });
  await blank.page.setViewportSize({ width: 1440, height: 900 });
  await blank.page.goto(`${site.root}job.html`);
  await blank.page.emulateMedia({ media: 'print' });
  const [above, below] = await Promise.all([
    blank.page.locator('#job-said').boundingBox(),
    blank.page.locator('#job-found').boundingBox(),
  ]);
  expect(below?.x).toBe(above?.x);
  await blank.close();
});
