/**
 * From the first key to the answer on the page, in Chromium on the built site. Prints figures and never fails:
 * HEADERTANK_SITE=dist npx node tests/bench/calculators.ts
 */
import { cpus, loadavg } from 'node:os';
import { CALCULATORS } from '../../src/calculators/catalogue.ts';
import { builtSite, launchBrowser, openPage, serveSite } from '../browser/browser.ts';

/** Keys pressed on each calculator. */
const KEYS = 60;
/** One frame of a screen of 60 a second, ms. */
const FRAME = 1000 / 60;

interface Timing {
  /** First key after the page came: code not warmed up yet. */
  first: number;
  /** Work of a later key: middle, and nine in ten. */
  middle: number;
  nine: number;
}

/** Types into the first number of a page from inside it, so that only the page's own work is timed. */
async function time(root: string, id: string): Promise<Timing> {
  const { page, close } = await openPage(browser, root);
  await page.goto(`${root}calculators/${id}.html`);
  await page.locator('fieldset:not([disabled])').waitFor();
  const times = await page.evaluate((count) => {
    const field = document.querySelector<HTMLInputElement>('.calculator .entry input');
    if (!field) throw new Error('No field to type in');
    const first = field.value;
    return Array.from({ length: count }, (_, key) => {
      field.value = key % 2 === 0 ? `${first}1` : first;
      const began = performance.now();
      field.dispatchEvent(new Event('input', { bubbles: true }));
      // Reading a size makes the browser lay the answer out, as it must before it paints.
      document.body.getBoundingClientRect();
      return performance.now() - began;
    });
  }, KEYS);
  await close();
  const sorted = times.slice(1).toSorted((a, b) => a - b);
  return {
    first: times[0] ?? Number.NaN,
    middle: sorted[Math.floor(sorted.length / 2)] ?? Number.NaN,
    nine: sorted[Math.floor(sorted.length * 0.9)] ?? Number.NaN,
  };
}

const browser = await launchBrowser();
const site = await serveSite(builtSite());
const ms = (value: number) => `${value.toFixed(1).padStart(6)} ms`;
console.log(
  `${cpus()[0]?.model}, ${cpus().length} cores, Chromium ${browser.version()}, Node ${process.version}`,
);
console.log(
  `Load of the last minute before: ${loadavg()[0]?.toFixed(1)}. Above the number of cores the figures are of a busy machine.`,
);
console.log(`Key to answer laid out; a frame is ${FRAME.toFixed(1)} ms.`);
console.log('first key      middle      9 in 10   calculator');
for (const { id } of CALCULATORS) {
  const { first, middle, nine } = await time(site.root, id);
  console.log(`${ms(first)}   ${ms(middle)}   ${ms(nine)}   ${id}`);
}
await browser.close();
await site.stop();
