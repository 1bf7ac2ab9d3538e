/** The pictures of the README, taken from the built site: `npm run pictures`. */
import { mkdir } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { builtSite, launchBrowser, openPage, SIZES, serveSite } from './browser.ts';
import { answerRow, giveAnswer } from './give-answer.ts';
import { usualAnswers } from './usual-answers.ts';

const FOLDER = '.github/pictures';
const VEHICLE = 'aldermoor-tarn-16';

const browser = await launchBrowser();
const site = await serveSite(builtSite());
await mkdir(FOLDER, { recursive: true });

async function onVehicle(size: keyof typeof SIZES, take: (page: Page) => Promise<void>): Promise<void> {
  const watched = await openPage(browser, site.root, {
    viewport: SIZES[size],
    serviceWorkers: 'block',
    reducedMotion: 'reduce',
  });
  await watched.page.goto(`${site.root}vehicles/${VEHICLE}.html`);
  await watched.page.getByRole('button', { name: 'Work on this vehicle' }).click();
  await take(watched.page);
  await watched.close();
}

await onVehicle('phone', async (page) => {
  await page.goto(`${site.root}symptoms/reads-low-at-cruise.html`);
  await page.locator('.top-vehicle summary').waitFor();
  const [first] = usualAnswers('reads-low-at-cruise', 'thermostat-stuck-open', VEHICLE);
  if (first) await giveAnswer(page, answerRow(page, first));
  await page.locator('.walk-title').scrollIntoViewIfNeeded();
  await page.screenshot({ path: `${FOLDER}/walk-phone.png` });
});
await onVehicle('desktop', async (page) => {
  await page.screenshot({ path: `${FOLDER}/vehicle.png` });
});

await site.stop();
await browser.close();
