/** What axe finds on one page, on a phone and on a desk, light and dark, with everything that folds open on the desk. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';
import { SIZES } from './browser.ts';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** What does not depend on the colours is looked for once a size; a run of all rules takes seconds on a long page. */
const ALL_RULES = 'axe.run(document)';
const CONTRAST = `axe.run(document, { runOnly: ['color-contrast'] })`;

/** @returns a line each: which rule, where on the page; also when the page is wider than the screen */
export async function axeFindings(page: Page, address: string): Promise<string[]> {
  await page.setViewportSize(SIZES.phone);
  await page.goto(address);
  await page.waitForLoadState('networkidle');
  await page.evaluate(AXE);
  const found: string[] = [];
  for (const size of ['phone', 'desktop'] as const) {
    await page.setViewportSize(SIZES[size]);
    if (size === 'desktop') await unfold(page);
    // Nothing may push the page wider than the screen.
    if (await page.evaluate(() => document.documentElement.scrollWidth > innerWidth))
      found.push(`wider than a ${size}`);
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      const results = await page.evaluate<AxeResults>(colorScheme === 'light' ? ALL_RULES : CONTRAST);
      for (const { id, nodes } of results.violations)
        for (const { target } of nodes) found.push(`${id}, ${size}, ${colorScheme}: ${target.join(' ')}`);
    }
  }
  return found;
}

async function unfold(page: Page): Promise<void> {
  const folded = await page.evaluate(() => {
    const all = document.querySelectorAll('details:not([open])');
    for (const each of all) each.setAttribute('open', '');
    return all.length;
  });
  // A calculator fetches its arithmetic when it is opened.
  if (folded > 0) await page.waitForLoadState('networkidle');
}
