/** One job on two devices: the call, the code from screen to camera, litres, proof before and after, the customer's page, the end. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openPage, SIZES } from './browser.ts';
import { openSite } from './open-site.ts';

const { browser, site } = await openSite();
const quiet = { serviceWorkers: 'block' as const };

async function openCard(page: Page): Promise<void> {
  await page.goto(`${site.root}job.html`);
  await page.locator('ht-job-card[data-live]').waitFor();
}

/** The codes that a card shows, as pictures. */
async function codes(page: Page): Promise<Buffer[]> {
  await page.getByRole('button', { name: 'Show as a code' }).click();
  const line = page.locator('.desk p[role="status"]');
  await line.waitFor();
  const count = Number(/of (\d+)/.exec((await line.textContent()) ?? '')?.[1] ?? 1);
  const pause = page.getByRole('button', { name: 'Pause' });
  if (count > 1) await pause.click();
  const pictures: Buffer[] = [];
  for (let at = 0; at < count; at++) {
    const data = await page
      .locator('.code canvas')
      .evaluate((canvas: HTMLCanvasElement) => canvas.toDataURL());
    pictures.push(Buffer.from(data.split(',')[1] ?? '', 'base64'));
    if (count > 1) await page.getByRole('button', { name: 'Next' }).click();
  }
  await page.locator('.desk').getByRole('button', { name: 'Close' }).click();
  return pictures;
}

async function readCodes(page: Page, pictures: readonly Buffer[]): Promise<void> {
  await page.getByRole('button', { name: 'Read a code' }).click();
  await page
    .getByLabel('Pictures of the codes')
    .setInputFiles(pictures.map((buffer, at) => ({ name: `${at}.png`, mimeType: 'image/png', buffer })));
}

test('from the call to the customer’s page, over two devices and back', { timeout: 240_000 }, async () => {
  const counter = await openPage(browser, site.root, quiet);
  const bay = await openPage(browser, site.root, { ...quiet, viewport: SIZES.phone });
  // The call: the customer's words come from the search, and stand in no address.
  const desk = counter.page;
  await desk.goto(`${site.root}index.html`);
  await desk.getByRole('searchbox').fill('gauge drops on the highway');
  await desk.goto(`${site.root}symptoms/reads-low-at-cruise.html`);
  await desk.getByRole('link', { name: 'Open a job card for this call' }).click();
  await desk.locator('ht-job-card[data-live]').waitFor();
  expect(await desk.getByLabel('The customer says').inputValue()).toBe('gauge drops on the highway');
  expect(await desk.locator('.complaint').textContent()).toBe('Reads low at steady cruise');
  for (const [label, text] of [
    ['Customer', 'Rowan Ashby'],
    ['Telephone', '0155 2290'],
    ['Plate', 'SL 44 KTR'],
    ['Wanted back', 'Friday noon'],
    ['Without a call no more than', '350 EUR'],
  ] as const)
    await desk.getByLabel(label, { exact: true }).fill(text);
  await desk.locator('.told-answers input').first().fill('yes, on the open road');
  expect(desk.url()).not.toMatch(/Ashby|2290|KTR|gauge/i);
  await expect.poll(() => desk.locator('.cards').textContent()).toContain('SL 44 KTR');
  // To the bay by the codes.
  await openCard(bay.page);
  await readCodes(bay.page, await codes(desk));
  await expect.poll(() => bay.page.locator('.told').textContent()).toContain('One card taken in.');
  const card = bay.page;
  expect(await card.getByLabel('Customer', { exact: true }).inputValue()).toBe('Rowan Ashby');
  await expect
    .poll(() => card.locator('.told-answers input').first().inputValue())
    .toBe('yes, on the open road');
  await expect.poll(() => card.locator('ht-open-job b').textContent()).toBe('SL 44 KTR');
  // Proof before, litres by the fill account, proof after.
  const proof = async (degrees: string, when: 'before' | 'after') => {
    await card.goto(`${site.root}road-test.html`);
    const field = card.getByLabel('Holds at steady speed');
    await field.fill(degrees);
    await field.press('Tab');
    await card.getByRole('button', { name: `To the job card, ${when} the repair` }).click();
    await card.getByText('On the job card:').last().waitFor();
  };
  await proof('61', 'before');
  await card.goto(`${site.root}calculators/fill-account.html`);
  await card.getByLabel('Came out, measured', { exact: true }).fill('3.6');
  await card.getByLabel('Went back in so far', { exact: true }).fill('2.2');
  await card.getByRole('button', { name: 'To the job card' }).click();
  await card.getByText('On the job card:').waitFor();
  // An address of a calculator brings its own figures; without one the card's stand there.
  await card.goto(`${site.root}about.html`);
  await card.goto(`${site.root}calculators/fill-account.html`);
  // The jug's figures come from the card, and no catalogue stands in their place.
  await card.getByText('From the job card.').first().waitFor();
  const back = card.getByLabel('Went back in so far', { exact: true });
  await expect.poll(() => back.inputValue()).toBe('2.2');
  await back.fill('3.5');
  await card.getByRole('button', { name: 'To the job card' }).click();
  await card.getByText('On the job card:').waitFor();
  await proof('88', 'after');
  // Meanwhile the counter agrees on a price; the codes bring both together and write over nothing.
  await desk.getByLabel('Agreed with the customer').fill('291 EUR');
  await openCard(card);
  await expect.poll(() => card.locator('.litres-sum').textContent()).toContain('Drained 3.6 l, filled 3.5 l');
  await readCodes(desk, await codes(card));
  await expect.poll(() => desk.locator('.told').textContent()).toContain('nothing was written over');
  expect(await desk.getByLabel('Agreed with the customer').inputValue()).toBe('291 EUR');
  // The customer's page: values, before and after, the price; no command of the bay. One page.
  await desk.getByLabel('What we did').fill('New thermostat and seal.');
  await desk.getByRole('link', { name: 'Customer sheet' }).click();
  const paper = desk.locator('.paper');
  await expect.poll(() => paper.textContent()).toContain('Before and after');
  const text = (await paper.textContent()) ?? '';
  for (const words of [
    '61',
    '88',
    'New thermostat',
    'Agreed: 291 EUR.',
    'Refilled with 3.5 l',
    'Rowan Ashby',
  ])
    expect(text).toContain(words);
  expect(text).not.toMatch(/still inside|Do not start|Bleed it|Book \d/);
  await desk.emulateMedia({ media: 'print' });
  const pdf = (await desk.pdf({ format: 'A4', preferCSSPageSize: true })).toString('latin1');
  expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
  await desk.emulateMedia({ media: 'screen' });
  // Finished: nothing goes onto it any more, and it can be taken back.
  await desk.getByRole('link', { name: 'Back to the card' }).click();
  await desk.getByRole('button', { name: 'Finish this job' }).click();
  await desk.locator('.finished', { hasText: 'Finished' }).waitFor();
  await expect.poll(() => desk.locator('ht-open-job b').textContent()).toBe('');
  await desk.locator('.told').getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => desk.locator('ht-open-job b').textContent()).toBe('SL 44 KTR');
  await counter.close();
  await bay.close();
});

test('a picture is made smaller, kept on the card and on its paper; what is removed comes back', async () => {
  const { page, close } = await openPage(browser, site.root, { ...quiet, viewport: SIZES.phone });
  await openCard(page);
  const large = await page.evaluate(async () => {
    const canvas = document.createElement('canvas');
    canvas.width = 2400;
    canvas.height = 1800;
    canvas.getContext('2d')?.fillRect(0, 0, 1200, 900);
    return canvas.toDataURL('image/png').split(',')[1] ?? '';
  });
  await page.locator('summary', { hasText: 'Pictures' }).click();
  await page.getByLabel('What it shows').fill('The pin at twelve o’clock');
  await page
    .locator('.picture-file')
    .setInputFiles({ name: 'pin.png', mimeType: 'image/png', buffer: Buffer.from(large, 'base64') });
  const picture = page.locator('.pictures img');
  await picture.waitFor();
  expect(await picture.evaluate((img: HTMLImageElement) => [img.naturalWidth, img.naturalHeight])).toEqual([
    1280, 960,
  ]);
  await page.reload();
  await page.locator('ht-job-card[data-live]').waitFor();
  await picture.waitFor();
  await page.getByRole('button', { name: /^Remove: The pin/ }).click();
  await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe('Undo');
  await page.keyboard.press('Enter');
  await picture.waitFor();
  await page.getByLabel(/^For the customer: The pin/).check();
  await page.getByRole('link', { name: 'Customer sheet' }).click();
  await page.locator('.paper img').waitFor();
  // A card that is removed comes back with its picture.
  await page.getByRole('link', { name: 'Back to the card' }).click();
  await page.getByRole('button', { name: 'Remove this card' }).click();
  await page.getByRole('button', { name: 'Remove it' }).click();
  await page.locator('.told').getByRole('button', { name: 'Undo' }).click();
  await picture.waitFor();
  await close();
});
