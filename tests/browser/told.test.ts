/** The counter's questions: an answer is a tap, moves the causes, stays after a reload and goes onto the job card. */
import { expect, test } from 'vitest';
import { openPage } from './browser.ts';
import { openSite } from './open-site.ts';

const { browser, site } = await openSite();

test('what the customer answers changes the ranking, now and after a reload, and stands on the card', async () => {
  const opened = await openPage(browser, site.root, { serviceWorkers: 'block' });
  const { page } = opened;
  const shares = () => page.locator('[data-start-ranking] li').allTextContents();
  await page.goto(`${site.root}symptoms/hot-in-traffic.html`);
  const before = await shares();
  await page.getByRole('button', { name: 'Note the answers' }).click();
  await page.getByRole('button', { name: 'No fan at all' }).click();
  await page
    .getByText(/^Likeliest: /)
    .first()
    .waitFor();
  await expect.poll(shares).not.toEqual(before);
  const after = await shares();
  await page.reload();
  await page.locator('.told [aria-pressed="true"]').waitFor();
  await expect.poll(shares).toEqual(after);
  // Taken back it says nothing any more.
  const pressed = page.getByRole('button', { name: 'No fan at all' });
  await pressed.click();
  await expect.poll(shares).toEqual(before);
  await pressed.click();
  await expect.poll(shares).toEqual(after);
  await page.getByRole('link', { name: 'Open a job card for this call' }).click();
  await page.locator('.told-answers input').first().waitFor();
  expect(await page.locator('.told-answers input').first().inputValue()).toBe('No fan at all');
  expect(page.url()).not.toContain('told');
  await opened.close();
});
