/** What axe finds on one page, on a phone and on a desk, light and dark, with everything that folds open on the desk. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { RunOptions } from 'axe-core';
import type { Page } from 'playwright-core';
import { SIZES, settled } from './browser.ts';

declare global {
  interface Window {
    axe: Pick<typeof import('axe-core'), 'run'>;
  }
}

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** What does not depend on the colours is looked for once a size. */
const ALL_RULES: RunOptions = {};
const CONTRAST: RunOptions = { runOnly: ['color-contrast'] };

/** @returns a line each: which rule, where on the page; also when the page is wider than the screen */
export async function axeFindings(page: Page, address: string): Promise<string[]> {
  await page.setViewportSize(SIZES.phone);
  await page.goto(address);
  await settled(page);
  const found: string[] = [];
  for (const size of ['phone', 'desktop'] as const) {
    await page.setViewportSize(SIZES[size]);
    if (size === 'desktop') await unfold(page);
    // Nothing may push the page wider than the screen.
    if (await page.evaluate(() => document.documentElement.scrollWidth > innerWidth))
      found.push(`wider than a ${size}`);
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      for (const line of await axeViolations(page, colorScheme === 'light' ? ALL_RULES : CONTRAST))
        found.push(`${size}, ${colorScheme}, ${line}`);
    }
  }
  return found;
}

/** Runs axe in the page as it is shown. Of what is in order it is to describe nothing: on a long page that takes most of its time. */
export async function axeViolations(page: Page, options: RunOptions = ALL_RULES): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await bringAxe(page);
  return page.evaluate(async (wanted) => {
    const { violations: broken } = await window.axe.run(document, { ...wanted, resultTypes: ['violations'] });
    return broken.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(' ')}`));
  }, options);
}

/** By the browser's own protocol: given to page.evaluate, half a megabyte is read twice. */
async function bringAxe(page: Page): Promise<void> {
  const session = await page.context().newCDPSession(page);
  await session.send('Runtime.evaluate', { expression: AXE });
  await session.detach();
}

async function unfold(page: Page): Promise<void> {
  const folded = await page.evaluate(() => {
    const all = document.querySelectorAll('details:not([open])');
    for (const each of all) each.setAttribute('open', '');
    return all.length;
  });
  // A calculator fetches its arithmetic when it is opened.
  if (folded > 0) await settled(page);
}
