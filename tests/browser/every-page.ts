/**
 * axe and the console on every page of the built site, some minutes long: `npm run every-page`.
 * Names of pages behind it run those alone. Ends with 1 when anything is found.
 */
import { readdirSync } from 'node:fs';
import { axeFindings } from './axe-page.ts';
import { builtSite, launchBrowser, openPage, serveSite } from './browser.ts';

const AT_ONCE = 2;

const named = process.argv.slice(2);
const pages = readdirSync(builtSite(), { recursive: true, encoding: 'utf8' })
  .map((name) => name.replaceAll('\\', '/'))
  .filter((name) => name.endsWith('.html') && (named.length === 0 || named.includes(name)))
  .sort();
const browser = await launchBrowser();
const site = await serveSite(builtSite());
const began = performance.now();
let faulty = 0;
const queue = [...pages];

async function lane(): Promise<void> {
  for (let name = queue.shift(); name !== undefined; name = queue.shift()) {
    const { page, problems } = await openPage(browser, site.root, {
      serviceWorkers: 'block',
      reducedMotion: 'reduce',
    });
    const found = await axeFindings(page, site.root + name).catch((error: unknown) => [String(error)]);
    await page.context().close();
    const lines = [...found, ...problems];
    if (lines.length === 0) continue;
    faulty += 1;
    process.stdout.write(`${name}\n${lines.map((line) => `  ${line}\n`).join('')}`);
  }
}

await Promise.all(Array.from({ length: AT_ONCE }, lane));
await site.stop();
await browser.close();
const minutes = ((performance.now() - began) / 60_000).toFixed(1);
process.stdout.write(
  `${pages.length} pages, each on a phone and a desk, light and dark: ${faulty} with findings. ${minutes} min\n`,
);
process.exitCode = faulty === 0 && pages.length > 0 ? 0 : 1;
