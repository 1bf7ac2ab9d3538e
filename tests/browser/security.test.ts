/** What gets into a page against all care does nothing there; and a lost address finds the way home. */
import { cp, mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import {
  type KeptName,
  NAME_STARTS,
  type NameStart,
  SINGLE_NAMES,
} from '../../src/site/browser/storage-names.ts';
import { builtSite, folderRoot, launchBrowser, openPage, serveSite, settled, stopServer } from './browser.ts';

let browser: Browser;
let folder: string;
/** Another's server: what reaches it, got out. */
let elsewhere: Server;
let elsewhereRoot: string;
let reached: string[] = [];

const PAGE = 'causes/thermostat-stuck-open.html';

beforeAll(async () => {
  browser = await launchBrowser();
  elsewhere = createServer((request, response) => {
    reached.push(request.url ?? '');
    response.writeHead(200, { 'access-control-allow-origin': '*', 'content-type': 'text/javascript' });
    response.end('window.hurt = "script from elsewhere"');
  });
  await new Promise<void>((listening) => elsewhere.listen(0, '127.0.0.1', listening));
  elsewhereRoot = `http://127.0.0.1:${(elsewhere.address() as AddressInfo).port}/`;
  folder = await mkdtemp(join(tmpdir(), 'headertank hurt '));
  for (const part of ['scripts', 'styles', 'data', 'icon.svg'])
    await cp(join(builtSite(), part), join(folder, part), { recursive: true });
  await mkdir(join(folder, 'causes'));
  // What a page's own script might be talked into: a text run as a program.
  const own = `window.own = true; try { new Function("window.hurt = 'a text'")() } catch {}`;
  await writeFile(join(folder, 'own.js'), own);
  const whole = await readFile(join(builtSite(), PAGE), 'utf8');
  await writeFile(
    join(folder, PAGE),
    whole.replace('<h1', () => `${injected()}<h1`),
  );
});
afterAll(async () => {
  await browser.close();
  await stopServer(elsewhere);
  await rm(folder, { recursive: true });
});

/** Every way a text could turn into something that runs, shows or sends, had it become markup. */
function injected(): string {
  return `<script>window.hurt = 'inline'</script>
<script src="${elsewhereRoot}a.js"></script>
<script type="module">window.hurt = 'module'</script>
<script src="data:text/javascript,window.hurt='data'"></script>
<img src="nothing.png" onerror="window.hurt = 'onerror'">
<img src="${elsewhereRoot}a.png">
<svg onload="window.hurt = 'svg'"><use href="${elsewhereRoot}a.svg#x"/></svg>
<iframe srcdoc="<script>parent.hurt = 'frame'</script>"></iframe>
<iframe src="${elsewhereRoot}frame"></iframe>
<object data="${elsewhereRoot}object"></object><embed src="${elsewhereRoot}embed">
<link rel="stylesheet" href="${elsewhereRoot}a.css">
<style>h1 { position: fixed; background: url(${elsewhereRoot}b.png) }</style>
<p id="styled" style="position: fixed">x</p>
<a id="pressed" href="javascript:window.hurt='address'">x</a>
<button id="handler" onclick="window.hurt = 'onclick'">x</button>
<form id="sent" action="${elsewhereRoot}form"><input name="a"><button>x</button></form>
<base href="${elsewhereRoot}">
<script src="../own.js"></script>`;
}

interface Hurt {
  hurt?: string;
  own?: boolean;
}

async function tryEverything(page: Page): Promise<void> {
  await page.locator('#pressed').click();
  await page.locator('#handler').click();
  await page.evaluate(async (root) => {
    await fetch(`${root}fetched`).catch(() => undefined);
    navigator.sendBeacon?.(`${root}beacon`);
    new Image().src = `${root}image`;
  }, elsewhereRoot);
}

describe.each(['a server', 'a folder'] as const)('injected into a page opened from %s', (from) => {
  test('nothing runs, nothing is styled, nothing goes out; the page’s own scripts go on', async () => {
    reached = [];
    const site = from === 'a server' ? await serveSite(folder) : undefined;
    const root = site?.root ?? folderRoot(folder);
    const { page, problems } = await openPage(browser, root, { serviceWorkers: 'block' });
    await page.goto(root + PAGE);
    await tryEverything(page);
    expect(await page.evaluate(() => (window as Hurt).hurt)).toBeUndefined();
    expect(await page.locator('#styled').evaluate((part) => getComputedStyle(part).position)).toBe('static');
    expect(await page.locator('h1').evaluate((part) => getComputedStyle(part).position)).not.toBe('fixed');
    // So it was the policy that stopped them, and not a page on which nothing runs.
    expect(await page.evaluate(() => (window as Hurt).own)).toBe(true);
    expect(await page.evaluate(() => window.headertank.root.href)).toBe(root);
    // Last, since another page would end this one. It goes on when the browser has said that it sends no form.
    const stopped = await page.evaluate(
      () =>
        new Promise<string>((told) => {
          document.addEventListener('securitypolicyviolation', ({ effectiveDirective }) => {
            if (effectiveDirective === 'form-action') told(effectiveDirective);
          });
          document.querySelector<HTMLFormElement>('#sent')?.requestSubmit();
        }),
    );
    expect(stopped).toBe('form-action');
    expect(page.url()).toBe(root + PAGE);
    // What had got out before this one would have come before it.
    await fetch(`${elsewhereRoot}last`);
    expect(reached).toEqual(['/last']);
    expect(problems.join('\n')).toMatch(/Content Security Policy/);
    await page.context().close();
    await site?.stop();
  });
});

/** The last part of each kept name, one that the pages below look for. */
const KEPT_ENDS: Record<NameStart, string> = {
  'walk.': 'reads-low-at-cruise',
  'seen.': 'reads-low-at-cruise',
  'own.': 'own-vehicle-abcdefgh',
  'job.': 'job-abcdefgh',
  'note.': 'note-abcdefgh',
  'proof.': 'aldermoor-tarn-16',
};
/** Everything the site keeps on a device: each is left here as something else has written it. */
const KEPT_NAMES: readonly KeptName[] = [
  ...SINGLE_NAMES,
  ...NAME_STARTS.map((start) => `${start}${KEPT_ENDS[start]}` as const),
];
/** What says under which name the rest is looked for; sound where the rest is to be found. */
const SOUND = { vehicle: KEPT_ENDS['proof.'], 'job-open': KEPT_ENDS['job.'] };

const LEFT = [
  'null',
  '{"answers":[null,["constructor","name"],"x"],"at":"never"}',
  '{"answers":[["constructor","name"],["__proto__","skipped"],["level-cold","<img src=x onerror=hurt()>"]],"at":"2026-11-25"}',
  '"<img src=x onerror=\\"window.hurt=1\\">"',
  '[[],{},null,"<script>window.hurt=1</script>"]',
  // Of the form that is kept for the place the reader came from, and for a proof run.
  '["javascript:window.hurt=1//#","<img src=x onerror=window.hurt=1>"]',
  '{"vents":null,"opens":{"value":null,"from":"log"},"constructor":{"value":"<img src=x onerror=window.hurt=1>"}}',
  '{"cut off',
];

type Reads = Window & { keptRead?: string[] };

test.each(LEFT)('what lies on the device damaged or hostile breaks no page: %s', async (text) => {
  const site = await serveSite(builtSite());
  const read = new Set<string>();
  const lookAt = async (left: Record<string, string>, pages: string[]) => {
    const { page, close } = await openPage(browser, site.root, {
      serviceWorkers: 'block',
      // A vehicle that is not on the shelf is asked for and said to be gone.
      expected: /status of 404/,
    });
    await page.addInitScript((all) => {
      for (const [name, value] of Object.entries(all)) localStorage.setItem(`headertank.${name}`, value);
      const asked: string[] = [];
      (window as Reads).keptRead = asked;
      const getItem = Storage.prototype.getItem;
      Storage.prototype.getItem = function (name: string) {
        asked.push(name);
        return getItem.call(this, name);
      };
    }, left);
    for (const address of pages) {
      await page.goto(site.root + address);
      await settled(page);
      const goOn = page.getByRole('button', { name: 'Go on from there' });
      if ((await goOn.count()) > 0) await goOn.click();
      expect(await page.evaluate(() => (window as Hurt).hurt)).toBeUndefined();
      expect(await page.locator('main').textContent()).not.toMatch(
        /\bundefined\b|\bNaN\b|\[object|Invalid Date/,
      );
      expect(await page.locator('main a[href^="javascript:" i]').count()).toBe(0);
      for (const name of await page.evaluate(() => (window as Reads).keptRead ?? [])) read.add(name);
    }
    await close();
  };
  const all = Object.fromEntries(KEPT_NAMES.map((name) => [name, text]));
  await lookAt(all, [
    'symptoms/reads-low-at-cruise.html#constructor=name&toString=skipped',
    // Something else was seen: its words are looked for.
    'symptoms/reads-low-at-cruise.html?again#level-cold=something-else-seen',
    'index.html',
    'job.html',
    'note.html',
    'road-test.html',
    'calculators/mixture.html#percent=<b>x</b>&constructor=1',
    'search.html?q=constructor&kind=__proto__',
    'practice.html#case=constructor&list=<b>x</b>',
    'practice.html?y',
    'own-vehicle.html#own-vehicle-abcdefgh',
  ]);
  const found = Object.fromEntries(Object.entries(SOUND).map(([name, id]) => [name, JSON.stringify(id)]));
  await lookAt({ ...all, ...found }, ['job.html', 'road-test.html']);
  // A name that no page asks for would have tried nothing.
  for (const name of KEPT_NAMES) expect(read, name).toContain(`headertank.${name}`);
  await site.stop();
});

test('without the policy the same page is hurt, so the injection is one', async () => {
  const whole = await readFile(join(folder, PAGE), 'utf8');
  const bare = 'causes/bare.html';
  await writeFile(join(folder, bare), whole.replace(/<meta http-equiv="content-security-policy"[^>]*>/, ''));
  const site = await serveSite(folder);
  const { page } = await openPage(browser, site.root, { serviceWorkers: 'block' });
  await page.goto(site.root + bare);
  expect(await page.evaluate(() => (window as Hurt).hurt)).toBeDefined();
  await page.context().close();
  await site.stop();
});

describe('an address nobody knows, on a host that answers 404.html there', () => {
  test.each(['', 'shop/'])(
    'leads to the page that says so, in its clothes, with the site in "%s"',
    async (under) => {
      const host = await mkdtemp(join(tmpdir(), 'headertank host '));
      if (under !== '') {
        await cp(builtSite(), join(host, 'shop'), { recursive: true });
        await cp(join(builtSite(), '404.html'), join(host, '404.html'));
      }
      const site = await serveSite(under === '' ? builtSite() : host);
      for (const lost of ['nothing.html', 'symptoms/nothing', 'sheets/a/b/c/nothing.html?x=1#y']) {
        const { page, close } = await openPage(browser, site.root, {
          serviceWorkers: 'block',
          // The page of the top folder, shown deeper, first asks for its scripts beside itself.
          expected: /status of 404|MIME type/,
        });
        const answer = await page.goto(site.root + under + lost);
        expect(answer?.status()).toBe(404);
        await page.waitForURL(`${site.root}${under}404.html`);
        await page.locator('ht-search input').waitFor();
        await page.getByRole('link', { name: 'Vehicles' }).first().click();
        await page.waitForURL(`${site.root}${under}vehicles/index.html`);
        await close();
      }
      await site.stop();
      await rm(host, { recursive: true });
    },
  );

  test('and stays where it is when the top of the site cannot be found', async () => {
    const host = await mkdtemp(join(tmpdir(), 'headertank host '));
    await cp(join(builtSite(), '404.html'), join(host, '404.html'));
    const site = await serveSite(host);
    const { page, close } = await openPage(browser, site.root, {
      serviceWorkers: 'block',
      expected: /status of 404|MIME type/,
    });
    await page.goto(`${site.root}a/b.html`);
    await settled(page);
    expect(page.url()).toBe(`${site.root}a/b.html`);
    expect(await page.locator('h1').textContent()).toBe('No page has this address');
    await close();
    await site.stop();
    await rm(host, { recursive: true });
  });
});
