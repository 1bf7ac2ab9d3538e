/**
 * How long an answer takes to the next question with the processor slowed six times, on every complaint, walked by its
 * commonest cause. Prints figures and never fails: npx node tests/bench/walk-page.ts (a built site in HEADERTANK_SITE or dist/)
 */
import { cpus } from 'node:os';
import { readShelf } from '../../src/library/read-shelf.ts';
import { builtSite, launchBrowser, SIZES, serveSite } from '../browser/browser.ts';
import { usualAnswers } from '../browser/usual-answers.ts';

const SLOWED = 6;
const VEHICLE = 'aldermoor-tarn-16';

const { shelf } = await readShelf('content');
const browser = await launchBrowser();
const site = await serveSite(builtSite());
console.log(
  `${cpus()[0]?.model ?? 'unknown processor'} × ${cpus().length}, Chromium ${browser.version()}, processor slowed ${SLOWED} times`,
);

/** What an answer costs until the page can be painted, and what comes after that. */
interface Cost {
  next: number;
  after: number;
}

const costs: (Cost & { walk: string; key: string })[] = [];
for (const { id, data } of shelf.records.symptom.values()) {
  const causes = Object.keys(data.causes);
  const page = await (await browser.newContext({ viewport: SIZES.phone, serviceWorkers: 'block' })).newPage();
  await page.goto(`${site.root}symptoms/${id}.html`);
  await page.locator('ht-walk[data-live]').waitFor();
  // A finger is over an answer before it gives it, as here.
  await page.locator('.step[data-now] .answer').first().hover();
  await page.waitForTimeout(300);
  const slow = await page.context().newCDPSession(page);
  await slow.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
  for (const { key, value } of answersOf(id, causes)) {
    const row = page.locator(`.step[data-now] .answer[data-key="${key}"][data-value="${value}"]`).first();
    if ((await row.count()) === 0) break;
    const cost = await row.evaluate(async (answer: HTMLElement): Promise<Cost> => {
      const began = performance.now();
      answer.click();
      // Reading a size makes the browser lay the page out now, as it would before it paints.
      document.body.getBoundingClientRect();
      const next = performance.now() - began;
      let longest = 0;
      let last = performance.now();
      while (performance.now() - began < 400) {
        await new Promise((turn) => setTimeout(turn));
        longest = Math.max(longest, performance.now() - last);
        last = performance.now();
      }
      return { next, after: longest };
    });
    costs.push({ walk: id, key, ...cost });
  }
  await page.context().close();
}
await browser.close();
await site.stop();

for (const part of ['next', 'after'] as const) {
  const sorted = costs.map((cost) => cost[part]).sort((a, b) => a - b);
  const at = (share: number) => sorted[Math.floor(share * (sorted.length - 1))]?.toFixed(1);
  const worst = costs.find((cost) => cost[part] === sorted.at(-1));
  const what = {
    next: 'answer to the next question, script and layout',
    after: 'longest turn of the page within 0.4 s after it',
  }[part];
  console.log(
    `${what}: median ${at(0.5)} ms, nine in ten ${at(0.9)} ms, longest ${at(1)} ms (${worst?.walk}, ${worst?.key}), of ${sorted.length} answers`,
  );
}

function answersOf(symptom: string, causes: readonly string[]) {
  for (const cause of causes) {
    try {
      return usualAnswers(symptom, cause, VEHICLE).filter(({ key }) => !key.startsWith('layout.'));
    } catch {
      // That cause has no way through on this vehicle; the next one may.
    }
  }
  return [];
}
