/** Kept on a device, or copied to a stick: the whole site works with no server. */
import { createHash } from 'node:crypto';
import { cp, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import type { IncomingMessage, Server } from 'node:http';
import { tmpdir } from 'node:os';
import { dirname, join, relative } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { writeOffline } from '../../src/site/after-build/offline.ts';
import { readOutput, writePages } from '../../src/site/after-build/output.ts';
import type { FileList } from '../../src/site/worker/file-list.ts';
import {
  builtSite,
  folderRoot,
  launchBrowser,
  openPage,
  type ServedSite,
  SIZES,
  serveSite,
  type WatchedPage,
} from './browser.ts';

const KEPT = 'Kept on this device; works without a network.';
/** What the browser writes when the server it asks is gone, or answers wrongly because a test makes it. */
const SERVER_GONE =
  /ERR_CONNECTION_REFUSED|ERR_CONNECTION_RESET|ERR_EMPTY_RESPONSE|Failed to fetch|fetching the script|status of 404/;

let browser: Browser;
let folder: string;

beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser.close();
});

/** A copy that a test may change. @param isWanted of a file or folder, by its address from the root; the root is '' */
async function copySite(isWanted: (name: string) => boolean = () => true): Promise<string> {
  const copy = await mkdtemp(join(tmpdir(), 'headertank stick ü '));
  const built = builtSite();
  await cp(built, copy, { recursive: true, filter: (from) => isWanted(relative(built, from)) });
  return copy;
}

/** Kinds of record that no test of a new version opens: a device keeps a small site sooner. */
const LEFT_OUT = /^(?:walks|trees|tests|causes|procedures|codes|sheets|pagefind|data|shelf\.json)(?:\/|$)/;

async function pagesOf(site: string): Promise<string[]> {
  const names = await readdir(site, { recursive: true });
  return names
    .map((name) => name.replaceAll('\\', '/'))
    .filter((name) => name.endsWith('.html'))
    .sort();
}

/** Pages that the browser does not get as they were built. Compared by hash: all pages together are tens of megabytes. */
async function differing(page: Page, names: readonly string[]): Promise<string[]> {
  const got = await page.evaluate(
    (wanted) =>
      Promise.all(
        wanted.map(async (name) => {
          const response = await fetch(new URL(name, window.headertank.root)).catch(() => undefined);
          if (!response?.ok) return undefined;
          const hash = await crypto.subtle.digest('SHA-256', await response.arrayBuffer());
          return Array.from(new Uint8Array(hash), (byte) => byte.toString(16).padStart(2, '0')).join('');
        }),
      ),
    names,
  );
  const built = await Promise.all(
    names.map(async (name) =>
      createHash('sha256')
        .update(await readFile(join(builtSite(), name)))
        .digest('hex'),
    ),
  );
  return names.filter((_, at) => got[at] !== built[at]);
}

function oneOfEachFolder(names: readonly string[]): string[] {
  const folders = new Map(names.map((name) => [name.includes('/') ? dirname(name) : name, name]));
  return [...folders.values()];
}

async function install(page: Page, root: string): Promise<void> {
  await page.goto(root);
  await page.getByText(KEPT).waitFor();
}

async function searchFor(page: Page, query: string): Promise<string[]> {
  await page.locator('ht-search input').fill(query);
  await page.locator('ht-search input').press('Enter');
  await page.getByText(/\d+ results?[,.]/).waitFor();
  return page.locator('.search-results a').allTextContents();
}

/** How many packs hold a page: every page is new in a version that is published here, and nothing else. */
function packsWithPages({ files, packs }: FileList): number {
  let from = 0;
  return packs.filter((pack) => {
    const held = files.slice(from, from + pack.files);
    from += pack.files;
    return held.some(({ path }) => path.endsWith('.html'));
  }).length;
}

describe('kept on the device', () => {
  let site: ServedSite;
  let watched: WatchedPage;
  /** What the site was asked for. */
  const asked: string[] = [];

  beforeAll(async () => {
    site = await serveSite(builtSite());
    site.server.prependListener('request', (request: IncomingMessage) => asked.push(request.url ?? ''));
    watched = await openPage(browser, site.root, { viewport: SIZES.phone, expected: SERVER_GONE });
    await install(watched.page, site.root);
  });
  afterAll(() => watched.close());

  test('first visit: what is shown is enough before anything is kept, and keeping it takes few requests', async () => {
    const packs = await readdir(join(builtSite(), 'offline'));
    expect(asked.filter((address) => address.startsWith('/offline/'))).toHaveLength(packs.length);
    expect(asked.length).toBeLessThan(packs.length + 15);
    asked.length = 0;
    await watched.page.goto(`${site.root}symptoms/no-cabin-heat.html`);
    await watched.page.getByText(KEPT).waitFor();
    expect(asked.filter((address) => address !== '/worker.js')).toEqual([]);
  });

  test('with the server gone every page, the search and the scripts work', async () => {
    const { page } = watched;
    await site.stop();
    const names = await pagesOf(builtSite());
    expect(names.length).toBeGreaterThan(50);
    expect(await differing(page, names)).toEqual([]);
    for (const name of oneOfEachFolder(names)) {
      const response = await page.goto(site.root + name, { waitUntil: 'domcontentloaded' });
      expect(response?.fromServiceWorker(), name).toBe(true);
      expect(await page.locator('h1').count(), name).toBe(1);
    }
    await page.goto(`${site.root}search.html`);
    expect((await searchFor(page, 'P0128')).length).toBeGreaterThan(1);
    await page.locator('.search-results a[href$="codes/p0128.html"]').first().click();
    await page.waitForURL(/codes\/p0128\.html$/);
  });

  test('an address without its ending, or of a folder, finds its page offline', async () => {
    const { page } = watched;
    for (const address of ['', 'symptoms/', 'symptoms/no-cabin-heat', 'symptoms/no-cabin-heat.html?x=1#y']) {
      const response = await page.goto(site.root + address);
      expect(response?.status(), address).toBe(200);
    }
    await page.goto(`${site.root}symptoms/nothing-of-the-kind.html`);
    expect(page.url()).toBe(`${site.root}404.html`);
  });
});

describe('a new version', () => {
  const MARK = 'The second version of this page';
  let site: ServedSite;

  beforeAll(async () => {
    folder = await copySite((name) => !LEFT_OUT.test(name));
    await publish('The first version');
  });
  afterAll(() => rm(folder, { recursive: true }));

  /** The same site with every page changed, and seen to be on the symptoms' pages, listed anew. */
  async function publish(mark: string): Promise<FileList> {
    const output = await readOutput(folder);
    for (const [name, page] of output.pages) {
      const isSeen = name.startsWith('symptoms/') || name === 'index.html';
      const headed = isSeen ? page.replace(/<h1[^>]*>[^<]*/, `<h1>${mark}`) : page;
      output.pages.set(name, `${headed}<!-- ${mark} -->`);
    }
    writePages(output);
    return writeOffline(output, 'src/site');
  }

  async function heading(page: Page, address: string): Promise<string | null> {
    await page.goto(site.root + address);
    return page.locator('h1').textContent();
  }

  /** What the device keeps of these files is gone from it. @returns how many they were */
  async function takeAway(page: Page, names: readonly string[]): Promise<number> {
    const files = await Promise.all(names.map((name) => readFile(join(folder, name))));
    const hashes = files.map((content) =>
      createHash('sha256').update(content).digest().subarray(0, 16).toString('base64url'),
    );
    return page.evaluate(async (gone) => {
      let count = 0;
      for (const name of await caches.keys()) {
        const cache = await caches.open(name);
        for (const request of await cache.keys())
          if (gone.some((hash) => request.url.endsWith(hash)) && (await cache.delete(request))) count += 1;
      }
      return count;
    }, hashes);
  }

  /** Asks for the new version as the page does each hour. */
  async function lookForNew(page: Page): Promise<void> {
    await page.evaluate(async () => {
      const registration = await navigator.serviceWorker.ready;
      await registration.update().catch(() => undefined);
    });
  }

  test('waits until the reader chooses it, and then shows', async () => {
    site = await serveSite(folder);
    const { page, close } = await openPage(browser, site.root);
    await install(page, site.root);
    const before = await heading(page, 'symptoms/no-cabin-heat.html');
    await publish(MARK);
    await lookForNew(page);
    await page.getByText('A newer version of the shelf is on this device').waitFor();
    expect(await heading(page, 'symptoms/no-cabin-heat.html')).toBe(before);
    const other = await page.context().newPage();
    await other.goto(`${site.root}index.html`);
    const loaded = page.waitForEvent('load');
    await page.getByRole('button', { name: 'Show the new version' }).click();
    await loaded;
    expect(await page.locator('h1').textContent()).toBe(MARK);
    // Another page that is open is told, and left as it is.
    await other.getByText('This page is from the previous version.').waitFor();
    expect(await other.locator('h1').textContent()).not.toBe(MARK);
    await other.getByRole('button', { name: 'Reload' }).click();
    await other.getByRole('heading', { name: MARK }).waitFor();
    await site.stop();
    expect(await heading(page, 'index.html')).toBe(MARK);
    await close();
  });

  test('cut off on the way leaves the version before whole, and goes on from there', async () => {
    site = await serveSite(folder);
    const { port } = new URL(site.root);
    const { page, close } = await openPage(browser, site.root, { expected: SERVER_GONE });
    await install(page, site.root);
    const names = await pagesOf(folder);
    const needed = packsWithPages(await publish('The third version'));
    expect(needed).toBeGreaterThan(1);
    cutDuring(site.server, 1);
    await lookForNew(page);
    await page.getByText('could not be fetched whole: the connection broke off').waitFor();
    for (const name of names.slice(0, 20))
      expect(await page.goto(site.root + name).then((r) => r?.status()), name).toBe(200);
    expect(await heading(page, 'symptoms/no-cabin-heat.html')).toBe(MARK);
    site = await serveSite(folder, Number(port));
    const asked: string[] = [];
    site.server.prependListener('request', (request: IncomingMessage) => asked.push(request.url ?? ''));
    await lookForNew(page);
    await page.getByRole('button', { name: 'Show the new version' }).click();
    await page.getByRole('heading', { name: 'The third version' }).waitFor();
    expect(asked.filter((address) => address.startsWith('/offline/'))).toHaveLength(needed - 1);
    await close();
    await site.stop();
  });

  test('with a file that is not the listed one is refused', async () => {
    site = await serveSite(folder);
    const { page, close } = await openPage(browser, site.root, { expected: SERVER_GONE });
    await install(page, site.root);
    await publish('The fourth version');
    for (const pack of await readdir(join(folder, 'offline'))) await rm(join(folder, 'offline', pack));
    const whole = await readFile(join(folder, 'index.html'), 'utf8');
    await writeFile(join(folder, 'index.html'), whole.slice(0, whole.length / 2));
    await lookForNew(page);
    await page.getByText('could not be fetched whole: the site was being changed').waitFor();
    await site.stop();
    expect(await heading(page, 'index.html')).toBe('The third version');
    await close();
  });

  test('without room on the device is refused, and said', async () => {
    await writeFile(join(folder, 'index.html'), await readFile(join(builtSite(), 'index.html')));
    await publish('The fifth version');
    site = await serveSite(folder);
    const { page, close } = await openPage(browser, site.root, { expected: SERVER_GONE });
    const session = await page.context().newCDPSession(page);
    await session.send('Storage.overrideQuotaForOrigin', {
      origin: new URL(site.root).origin,
      quotaSize: 100_000,
    });
    await page.goto(site.root);
    await page.getByText('Not kept on this device: this device has no room for it.').waitFor();
    expect(await heading(page, 'symptoms/no-cabin-heat.html')).toBe('The fifth version');
    await close();
    await site.stop();
  });

  test('files the browser threw away come back with the next visit', async () => {
    site = await serveSite(folder);
    const { page, close } = await openPage(browser, site.root, { expected: SERVER_GONE });
    await install(page, site.root);
    const lost = await page.evaluate(async () => {
      let count = 0;
      for (const name of await caches.keys()) {
        const cache = await caches.open(name);
        for (const request of await cache.keys()) if (await cache.delete(request)) count += 1;
      }
      return count;
    });
    expect(lost).toBeGreaterThan(50);
    expect(await heading(page, 'symptoms/no-cabin-heat.html')).toBe('The fifth version');
    await site.stop();
    expect(await heading(page, 'symptoms/no-cabin-heat.html')).toBe('The fifth version');
    await close();
  });

  test('that cannot be offered, its offer lost and the server gone, is told of all the same', async () => {
    site = await serveSite(folder);
    const { page, close } = await openPage(browser, site.root, {
      expected: new RegExp(`${SERVER_GONE.source}|new-version\\.js`),
    });
    await install(page, site.root);
    await publish('The sixth version');
    await lookForNew(page);
    await page.getByText('A newer version of the shelf is on this device').waitFor();
    expect(await takeAway(page, ['scripts/new-version.js'])).toBe(1);
    await site.stop();
    await page.reload();
    await page
      .getByText('A newer version of the shelf is out. Load this page anew to be offered it.')
      .waitFor();
    expect(await page.locator('h1').textContent()).toBe('The fifth version');
    await close();
  });

  test('with half of its files lost and no network, the other half still opens, and a lost page is said to be one', async () => {
    site = await serveSite(folder);
    const { page, close } = await openPage(browser, site.root, { expected: SERVER_GONE });
    await install(page, site.root);
    await site.stop();
    const names = (await pagesOf(folder)).filter((name) => name.startsWith('tools/'));
    const lost = new Set(names.filter((_, at) => at % 2 === 0));
    expect(await takeAway(page, [...lost])).toBe(lost.size);
    for (const name of names.slice(0, 8)) {
      await page.goto(site.root + name);
      expect(new URL(page.url()).pathname, name).toBe(lost.has(name) ? '/404.html' : `/${name}`);
    }
    await page.goto(site.root + [...lost][0]);
    await page.getByText('this device has lost its copy of the page').waitFor();
    await close();
  });
});

/** Ends the server in the middle of its answer to the n-th pack from now. */
function cutDuring(server: Server, n: number): void {
  let seen = 0;
  server.prependListener('request', (request: IncomingMessage) => {
    if (!request.url?.startsWith('/offline/') || seen++ < n) return;
    server.close();
    server.closeAllConnections();
  });
}

describe('copied to a stick', () => {
  test('opens from its folder: links, search and its results work, nothing is asked elsewhere', async () => {
    const stick = await copySite();
    const root = folderRoot(stick);
    const { page, close } = await openPage(browser, root, { viewport: SIZES.tablet });
    await page.goto(`${root}index.html`);
    await page.getByText('Opened from a folder').waitFor();
    await page.locator('ht-search input').fill('heater blows cold');
    await page.locator('.search-results a').first().click();
    await page.waitForURL(/symptoms\/no-cabin-heat\.html/);
    await page.getByRole('link', { name: 'Search', exact: true }).click();
    expect((await searchFor(page, 'P0128')).length).toBeGreaterThan(1);
    await page.reload();
    await page.getByText(/\d+ results?[,.]/).waitFor();
    await close();
    await rm(stick, { recursive: true });
  });

  test('without scripts the links lead everywhere', async () => {
    const root = folderRoot(builtSite());
    const { page, close } = await openPage(browser, root, {
      javaScriptEnabled: false,
      viewport: SIZES.phone,
    });
    await page.goto(`${root}index.html`);
    await page.locator('ht-search input').fill('heater');
    await page.locator('ht-search button').click();
    await page.waitForURL(/search\.html\?q=heater$/);
    await page
      .getByRole('link', { name: /cabin heat/i })
      .first()
      .click();
    await page.waitForURL(/symptoms\/no-cabin-heat\.html/);
    await close();
  });
});
