/** A real browser on the built site. Every page is watched: a console error or a request to elsewhere fails the test. */
import { existsSync } from 'node:fs';
import type { Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  chromium,
  type Page,
  type Request,
} from 'playwright-core';
import { expect } from 'vitest';
import { createStaticServer } from '../../src/cli/static-server.ts';
import { findChromium } from './chromium.ts';

/** Nothing on the wire but the site, no sandbox where a container has none. */
export const FLAGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-proxy-server',
];

export const SIZES = {
  phone: { width: 390, height: 844 },
  tablet: { width: 820, height: 1180 },
  desktop: { width: 1440, height: 900 },
} as const;

export function launchBrowser(): Promise<Browser> {
  const executablePath = findChromium();
  if (!executablePath) throw new Error('No Chromium. Fetch one with: npx node tests/browser/chromium.ts');
  return chromium.launch({ executablePath, args: FLAGS });
}

/** The built site, from HEADERTANK_SITE or dist/. */
export function builtSite(): string {
  const folder = resolve(process.env.HEADERTANK_SITE ?? 'dist');
  if (!existsSync(join(folder, 'worker.js')))
    throw new Error(`${folder} holds no finished site. Make it with: npm run build`);
  return folder;
}

/** Written when a test itself asks for a page without a service worker. */
const BY_REQUEST = /Service Worker registration blocked by Playwright/;

export interface ServedSite {
  /** Address of the root, with a stroke at its end. */
  root: string;
  server: Server;
  /** Ends at once, open connections too, as when a cable is pulled. */
  stop(): Promise<void>;
}

/** @param port 0 for any free one */
export async function serveSite(folder: string, port = 0): Promise<ServedSite> {
  const server = createStaticServer(folder);
  await new Promise<void>((listening) => server.listen(port, 'localhost', listening));
  const root = `http://localhost:${(server.address() as AddressInfo).port}/`;
  return { root, server, stop: () => stopServer(server) };
}

export function stopServer(server: Server): Promise<void> {
  return new Promise((stopped) => {
    server.close(() => stopped());
    server.closeAllConnections();
  });
}

/** Root address of the site as a folder opened from file://. */
export function folderRoot(folder: string): string {
  return `${pathToFileURL(folder).href}/`;
}

export interface WatchedPage {
  page: Page;
  /** What has gone wrong on the page so far. */
  problems: string[];
  /** Fails the test with every problem; then ends the page with its store and storage. */
  close(): Promise<void>;
}

export interface PageOptions extends BrowserContextOptions {
  /** Lines of the console that the test itself brings about, such as a server it stopped. */
  expected?: RegExp;
}

/**
 * A page in a browser of its own: nothing kept from before, of a country that reads metric units.
 * @param root the only place it may ask for anything
 */
export async function openPage(
  browser: Browser,
  root: string,
  options: PageOptions = {},
): Promise<WatchedPage> {
  const { expected, ...rest } = options;
  const context = await browser.newContext({ viewport: SIZES.desktop, locale: 'en-GB', ...rest });
  // Twice the usual: a busy machine is no fault of the page.
  context.setDefaultTimeout(60_000);
  const problems: string[] = [];
  const note = (problem: string) => {
    if (!expected?.test(problem) && !BY_REQUEST.test(problem)) problems.push(problem);
  };
  watchRequests(context);
  context.on('request', (request) => {
    const address = request.url();
    if (!address.startsWith(root) && !address.startsWith('data:')) note(`asks elsewhere: ${address}`);
  });
  context.on('console', (message) => {
    const { url } = message.location();
    if (message.type() === 'error' || message.type() === 'warning')
      note(`${message.type()}: ${message.text()} (${url})`);
  });
  context.on('weberror', (error) => note(`uncaught: ${error.error().message}`));
  const page = await context.newPage();
  return {
    page,
    problems,
    async close() {
      await context.close();
      expect(problems).toEqual([]);
    },
  };
}

/** Requests on their way, and how many there have been. */
interface Traffic {
  open: Set<Request>;
  count: number;
}

const traffics = new WeakMap<BrowserContext, Traffic>();

function watchRequests(context: BrowserContext): void {
  const traffic: Traffic = { open: new Set(), count: 0 };
  traffics.set(context, traffic);
  context.on('request', (request) => {
    traffic.open.add(request);
    traffic.count += 1;
  });
  const ended = (request: Request) => traffic.open.delete(request);
  context.on('requestfinished', ended);
  context.on('requestfailed', ended);
}

/**
 * Waits until the page has nothing to do and asks for nothing more: two turns of it, which take a fraction of Playwright's half second.
 * A browser without windows sometimes has no idle callback for a page, however idle: then a tenth of a second stands for it.
 */
export async function settled(page: Page): Promise<void> {
  const traffic = traffics.get(page.context());
  if (!traffic) throw new Error('Only a page that openPage opened is watched.');
  for (let quietTurns = 0; quietTurns < 2; ) {
    const before = traffic.count;
    await page.evaluate(
      () => new Promise((turn) => requestIdleCallback(() => setTimeout(turn, 40), { timeout: 100 })),
    );
    quietTurns = traffic.open.size === 0 && traffic.count === before ? quietTurns + 1 : 0;
  }
}
