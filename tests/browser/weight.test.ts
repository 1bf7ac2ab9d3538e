/**
 * What a reader loads with the first page, packed: the page with its styles, every script it names, nothing else. A plain record
 * is at most 12 kB, a complaint with its walk at most 35; the sizes are the same on every machine.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { gzipSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { attributeOf, readElements } from '../../src/site/after-build/read-page.ts';
import { builtSite, openPage } from './browser.ts';
import { openSite } from './open-site.ts';

/** Bytes, by folder. */
const LIMITS: Record<string, number> = {
  symptoms: 35_300,
  causes: 12_000,
  tests: 12_000,
  procedures: 12_000,
  tools: 12_000,
  codes: 12_000,
  coolants: 12_000,
  cautions: 12_000,
  notes: 12_000,
  'sheets/specs': 12_000,
  'sheets/take-in': 12_000,
  trees: 14_700,
  // Two ladders and two circuits, drawn in the page: they are seen first, and a picture of its own would weigh more.
  vehicles: 18_400,
  guides: 17_700,
  calculators: 27_700,
};
/** What holds more than its kind: the longest pieces of work, and lists that grow with the shelf. */
const MORE: Record<string, number> = {
  'procedures/gravity-fill-and-bleed.html': 13_400,
  'procedures/final-proof-run.html': 12_800,
  'procedures/thermostat-replace.html': 12_400,
  'causes/index.html': 18_000,
  'procedures/index.html': 14_200,
  'codes/index.html': 12_500,
  'calculators/index.html': 12_000,
  'guides/index.html': 12_000,
  'trees/index.html': 12_000,
  'vehicles/index.html': 12_000,
  'symptoms/index.html': 12_000,
};

const folder = builtSite();
const packed = new Map<string, number>();

function weightOf(file: string): number {
  const known = packed.get(file) ?? gzipSync(readFileSync(join(folder, file)), { level: 9 }).length;
  packed.set(file, known);
  return known;
}

/** Addresses from the root of all that a page asks for by itself, the page first. */
function loadedBy(page: string): string[] {
  const tags = readElements(readFileSync(join(folder, page), 'utf8'));
  const named = tags.flatMap((tag) => {
    const isStyle = tag.name === 'link' && /stylesheet|icon/.test(attributeOf(tag, 'rel') ?? '');
    const address = attributeOf(tag, isStyle ? 'href' : 'src');
    return address === undefined || address.startsWith('data:')
      ? []
      : [posix.join(posix.dirname(page), address)];
  });
  return [page, ...new Set(named)];
}

/** A page that has moved is only a way to another. */
const isRecord = (page: string) => !readFileSync(join(folder, page), 'utf8').includes('http-equiv="refresh"');

test.each(Object.entries(LIMITS))('a page of %s is at most %i bytes with all it loads', (kind, limit) => {
  const pages = readdirSync(join(folder, kind))
    .filter((name) => name.endsWith('.html'))
    .map((name) => `${kind}/${name}`)
    .filter(isRecord);
  expect(pages.length).toBeGreaterThan(0);
  const tooHeavy = pages.flatMap((page) => {
    const weight = loadedBy(page).reduce((sum, file) => sum + weightOf(file), 0);
    return weight > (MORE[page] ?? limit) ? [`${page}: ${weight}`] : [];
  });
  expect(tooHeavy).toEqual([]);
});

test('nothing is loaded that was not weighed', async () => {
  const { browser, site } = await openSite();
  for (const name of [
    'codes/p0217.html',
    'procedures/gravity-fill-and-bleed.html',
    'vehicles/aldermoor-tarn-hybrid.html',
    'symptoms/never-warms-up.html',
    'trees/never-warms-up.html',
    'causes/index.html',
  ]) {
    const { page, close } = await openPage(browser, site.root, { serviceWorkers: 'block' });
    const asked: string[] = [];
    page.on('request', (request) => asked.push(request.url().replace(site.root, '')));
    await page.goto(site.root + name);
    await page.waitForLoadState('networkidle');
    expect(asked.sort(), name).toEqual(loadedBy(name).sort());
    await close();
  }
});
