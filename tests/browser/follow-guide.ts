/**
 * The contributor's guide followed as a new user would, step by step. Run as a program it also makes the guide's
 * pictures from the built site: `npx node tests/browser/follow-guide.ts`
 */
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { builtSite, launchBrowser, openPage, serveSite } from './browser.ts';

/** Size of a picture; the page names the same. */
export const PICTURE = { width: 640, height: 440 };

/**
 * @param show called at each step with the name of its picture and what stands in its middle
 */
export async function followGuide(
  page: Page,
  root: string,
  show: (picture: string, about: Locator) => Promise<void>,
): Promise<void> {
  await page.goto(`${root}index.html`);
  await page.getByRole('contentinfo').getByRole('link', { name: 'Shop notes' }).click();
  const write = page.getByRole('link', { name: 'Write a note' });
  await write.waitFor();
  await show('1-notes', write);
  await write.click();
  const form = page.locator('ht-note-form[data-live]');
  await form.waitFor();
  // A workshop with a host: the demonstration has none.
  await form.evaluate((element) => {
    element.dataset.repository = 'https://git.example.org/saltmarsh-lane/shelf';
    element.dataset.host = 'forgejo';
  });
  await page
    .getByLabel('What it is about, in one line')
    .fill('Tarn 1.6 bleed screw is brass, 6 N·m and no more');
  await page.getByLabel('Your initials').fill('AW');
  await page.getByLabel('Day').fill('2026-11-25');
  await page.getByLabel('Vehicle', { exact: true }).selectOption('aldermoor-tarn-16');
  await show('2-hangs-on', page.getByLabel('Your initials'));
  await page
    .getByLabel('The note', { exact: true })
    .fill('The head shears at 9. Two of four we had open were already rounded; have one in the drawer.');
  await show('3-found', page.getByLabel('The note', { exact: true }));
  await show('4-to-mend', page.getByText('Still to fix'));
  await page.getByRole('link', { name: 'On what, when; or book and page' }).click();
  await page.keyboard.type('Four cars, 2026');
  const right = page.getByRole('heading', { name: 'Ready' });
  await right.waitFor();
  await page.getByRole('link', { name: 'Open the host’s page for it' }).waitFor();
  await show('5-right', page.getByRole('button', { name: 'Save the file' }));
  const saved = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the file' }).click();
  await saved;
  await show('6-kept', page.getByRole('heading', { name: 'Notes on this device' }));
}

if (import.meta.main) {
  const site = await serveSite(builtSite());
  const browser = await launchBrowser();
  const { page } = await openPage(browser, site.root, {
    viewport: PICTURE,
    serviceWorkers: 'block',
    colorScheme: 'light',
    reducedMotion: 'reduce',
  });
  const session = await page.context().newCDPSession(page);
  await mkdir('public/guide', { recursive: true });
  await followGuide(page, site.root, async (picture, about) => {
    await about.evaluate((element) => element.scrollIntoView({ block: 'center' }));
    // The caret blinks: without it the same page gives the same picture.
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    const { data } = await session.send('Page.captureScreenshot', { format: 'webp', quality: 55 });
    await writeFile(join('public/guide', `${picture}.webp`), Buffer.from(data, 'base64'));
    process.stdout.write(`public/guide/${picture}.webp\n`);
  });
  await browser.close();
  await site.stop();
}
