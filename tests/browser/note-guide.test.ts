/** Somebody who has never used git can follow the guide: it is followed here as it stands. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { builtSite, openPage } from './browser.ts';
import { followGuide, PICTURE } from './follow-guide.ts';
import { openSite } from './open-site.ts';

const { browser, site } = await openSite();

test('every step of the guide can be done, in its order, and has its picture', async () => {
  const watched = await openPage(browser, site.root, { viewport: PICTURE, serviceWorkers: 'block' });
  const { page } = watched;
  await page.goto(`${site.root}contribute.html`);
  const pictures = await page
    .locator('.steps-with-pictures img')
    .evaluateAll((all) => all.map((each) => each.getAttribute('src') ?? ''));
  for (const picture of pictures) expect(existsSync(join(builtSite(), picture)), picture).toBe(true);
  // What the guide calls by name has to be there by that name.
  const named = await page.locator('.steps-with-pictures b').allTextContents();
  expect(named).toEqual(
    expect.arrayContaining(['Write a note', 'Open the host’s page for it', 'Save the file']),
  );
  const done: string[] = [];
  const met = new Set<string>();
  await followGuide(page, site.root, async (picture, about) => {
    expect(await about.isVisible()).toBe(true);
    done.push(`guide/${picture}.webp`);
    for (const name of named) if ((await page.getByText(name, { exact: true }).count()) > 0) met.add(name);
  });
  expect(done).toEqual(pictures);
  // The button of the job card is on another page.
  expect(named.filter((name) => !met.has(name))).toEqual(['Write a note from this card']);
  await watched.close();
});
