/**
 * How long the page stands still while two hours at ten readings a second in twenty columns are read, judged and
 * drawn. Prints figures and never fails: npx node tests/bench/trace-page.ts (a built site in HEADERTANK_SITE or dist/)
 */
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { cpus, tmpdir } from 'node:os';
import { join } from 'node:path';
import { builtSite, folderRoot, launchBrowser, serveSite } from '../browser/browser.ts';
import { longLog } from '../trace/long-log.ts';

const browser = await launchBrowser();
const site = await serveSite(builtSite());
const scratch = await mkdtemp(join(tmpdir(), 'trace-page-'));
const file = join(scratch, 'long.csv');
await writeFile(file, longLog());
console.log(`${cpus()[0]?.model ?? 'unknown processor'} × ${cpus().length}, Chromium ${browser.version()}`);
for (const [name, root] of [
  ['served, in a worker', site.root],
  ['opened from a folder', folderRoot(builtSite())],
] as const) {
  const page = await (await browser.newContext({ serviceWorkers: 'block' })).newPage();
  await page.goto(`${root}road-test.html`);
  await page.evaluate(() => {
    const state = { longest: 0, tasks: 0, last: performance.now() };
    Object.assign(window, { benchState: state });
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) state.tasks = Math.max(state.tasks, duration);
    }).observe({ type: 'longtask' });
    const frame = (now: number) => {
      state.longest = Math.max(state.longest, now - state.last);
      state.last = now;
      requestAnimationFrame(frame);
    };
    requestAnimationFrame(frame);
  });
  const start = performance.now();
  await page.setInputFiles('#log-file', file);
  await page.locator('.chart svg').waitFor();
  await page.waitForTimeout(300);
  const ms = performance.now() - start - 300;
  const { longest, tasks } = await page.evaluate(
    () => (window as unknown as { benchState: { longest: number; tasks: number } }).benchState,
  );
  console.log(
    `${name}: verdict and drawing after ${ms.toFixed(0)} ms; longest between two frames ${longest.toFixed(0)} ms, longest task on the page ${tasks === 0 ? 'under 50' : tasks.toFixed(0)} ms`,
  );
  await page.context().close();
}
await browser.close();
await site.stop();
await rm(scratch, { recursive: true });
