/**
 * Where Chromium is; run as a program it also fetches one when there is none:
 * `npx node tests/browser/chromium.ts`
 */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { chromium } from 'playwright-core';

/** The one without windows first: it opens a page in less than half the time. */
const PLACES = [
  '/usr/bin/chromium-headless-shell',
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

/** The browser named in CHROMIUM, the system's, or the one playwright-core fetched. */
export function findChromium(): string | undefined {
  const named = process.env.CHROMIUM;
  if (named) return named;
  return [...PLACES, chromium.executablePath()].find((path) => existsSync(path));
}

function fetchChromium(): void {
  const asRoot = process.platform === 'linux' && process.getuid?.() === 0 && existsSync('/usr/bin/apt-get');
  const install = ['apt-get', 'install', '-q', '-y', '--no-install-recommends'];
  // Not every release that has the package of the browser has one of its shell.
  const ways = asRoot
    ? [
        ['apt-get', 'update', '-q'],
        [...install, 'chromium-headless-shell'],
        [...install, 'chromium'],
      ]
    : [[process.execPath, 'node_modules/playwright-core/cli.js', 'install', 'chromium']];
  for (const [command = '', ...words] of ways) {
    if (findChromium()) return;
    const { status } = spawnSync(command, words, { stdio: 'inherit' });
    if (status !== 0) process.stderr.write(`${command} ${words.join(' ')} failed\n`);
  }
}

if (import.meta.main) {
  if (!findChromium()) fetchChromium();
  const found = findChromium();
  if (!found) {
    process.stderr.write('No Chromium. Install one, or name one: CHROMIUM=/path/to/chromium npm test\n');
    process.exit(1);
  }
  process.stdout.write(`Browser: ${found}\n`);
}
