/** The drawing of the front page leads to every complaint in two presses: a place, then the complaint. */
import { readdirSync } from 'node:fs';
import { expect, test } from 'vitest';
import { openPage, SIZES } from './browser.ts';
import { openSite } from './open-site.ts';

const { browser, site } = await openSite();

test('without scripts, by keyboard: a place opens its complaints with their verdict, and together they are all', async () => {
  const watched = await openPage(browser, site.root, { javaScriptEnabled: false, viewport: SIZES.phone });
  const { page } = watched;
  await page.goto(`${site.root}index.html`);
  const places = page.locator('.places nav a');
  const lists = page.locator('.place:visible');
  expect(await lists.count()).toBe(0);
  const reached = new Set<string>();
  for (const place of await places.all()) {
    await place.focus();
    await page.keyboard.press('Enter');
    const name = (await place.textContent()) ?? '';
    await page.locator('.place:visible', { hasText: name }).waitFor();
    expect(await lists.count(), name).toBe(1);
    for (const line of await lists.locator('li').all()) {
      expect(await line.locator('small').textContent(), name).toMatch(
        /^(may be driven|short and watched|no, stop)$/,
      );
      reached.add((await line.locator('a').getAttribute('href')) ?? '');
    }
  }
  const onShelf = readdirSync('content/symptoms').map((file) => file.replace(/yaml$/, 'html'));
  expect([...reached].sort()).toEqual(onShelf.map((file) => `symptoms/${file}`).sort());
  await page.emulateMedia({ media: 'print' });
  expect(await lists.count()).toBe(await places.count());
  await watched.close();
});
