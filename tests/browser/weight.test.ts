/**
 * What a reader loads with the first page, packed: the page with its styles, every script it names, nothing else. Each limit leaves
 * one or two in a hundred over its heaviest page, so that a sentence more in a record is no fault. A plain record
 * is at most 13.8 kB, a symptom with its walk at most 39, the choice of units in its top line among them and 0.35 for colours that are
 * there before the page is; the sizes are the same on every machine.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { gzipSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { attributeOf, readElements } from '../../src/site/after-build/read-page.ts';
import { builtSite, openPage, settled } from './browser.ts';
import { openSite } from './open-site.ts';

/** Bytes, by folder. */
const FOLDERS: Record<string, number> = {
  symptoms: 39_000,
  causes: 12_900,
  tests: 13_800,
  procedures: 13_400,
  tools: 12_400,
  codes: 12_000,
  coolants: 12_000,
  cautions: 12_900,
  notes: 12_000,
  sheets: 13_600,
  trees: 20_400,
  // Two ladders and two circuits, drawn in the page: they are seen first, and a picture of its own would weigh more.
  vehicles: 21_100,
  // With the way to the next one and the words it uses.
  guides: 19_900,
  calculators: 31_400,
  // Every step of a walk on one page, read without scripts.
  walks: 75_500,
};
/** Pages of the top folder, and what holds more than its kind: the longest pieces of work, lists that grow with the shelf. */
const PAGES: Record<string, number> = {
  // With the car that is pointed at and its lists, 2.1 kB.
  'index.html': 18_900,
  'about.html': 20_100,
  // With the pictures of the guide to a first note.
  'contribute.html': 100_000,
  '404.html': 14_400,
  'search.html': 20_900,
  'job.html': 29_900,
  // With the database that keeps the draft.
  'note.html': 29_000,
  // A box for every figure and every point of the layout that the model knows.
  'vehicle.html': 30_000,
  // Every point of the layout, and those that each complaint knows apart.
  'own-vehicle.html': 33_000,
  'road-test.html': 42_500,
  // The start alone; a case brings its complaint, its vehicle and the simulated car.
  'practice.html': 31_600,
  // With every word of the trade.
  'glossary.html': 15_100,
  // With a row for every complaint, by the evidence, by the case bank and by simulated cars, and the rules of every calculator.
  // With the published figures of belts, of a heat exchanger and of oiled bolts.
  'trust.html': 30_500,
  // Two cars beside each other, drawn in the page.
  'guides/how-the-circuit-regulates.html': 19_800,
  'procedures/gravity-fill-and-bleed.html': 15_400,
  'procedures/final-proof-run.html': 14_500,
  'procedures/thermostat-replace.html': 13_900,
  // Named by every test and procedure that opens or touches the bay.
  'cautions/high-voltage.html': 14_100,
  'procedures/index.html': 17_300,
  'causes/index.html': 26_200,
  'codes/index.html': 16_900,
  'tests/index.html': 15_600,
  'calculators/index.html': 12_000,
  'guides/index.html': 12_000,
  'trees/index.html': 12_000,
  'vehicles/index.html': 12_000,
  'symptoms/index.html': 12_000,
};
/** Bytes of all scripts of the job card: exporting and importing bring their own. */
const JOB_CARD_SCRIPTS = 20_200;

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

const pages = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .map((name) => name.replaceAll('\\', '/'))
  .filter((name) => name.endsWith('.html') && isRecord(name));
const folderOf = (page: string) => (page.includes('/') ? (page.split('/')[0] ?? '') : '');

test('every page of the site has a limit', () => {
  expect(pages.filter((page) => PAGES[page] === undefined && FOLDERS[folderOf(page)] === undefined)).toEqual(
    [],
  );
});

function tooHeavy(some: readonly string[], limit: number): string[] {
  return some.flatMap((page) => {
    const weight = loadedBy(page).reduce((sum, file) => sum + weightOf(file), 0);
    return weight > limit ? [`${page}: ${weight}`] : [];
  });
}

test.each(Object.entries(FOLDERS))('a page of %s is at most %i bytes with all it loads', (kind, limit) => {
  const some = pages.filter((page) => folderOf(page) === kind && PAGES[page] === undefined);
  expect(some.length).toBeGreaterThan(0);
  expect(tooHeavy(some, limit)).toEqual([]);
});

test.each(Object.entries(PAGES).filter(([page]) => pages.includes(page)))(
  '%s is at most %i bytes with all it loads',
  (page, limit) => {
    expect(tooHeavy([page], limit)).toEqual([]);
  },
);

test('the scripts of the job card weigh less than the checker alone would', () => {
  const scripts = loadedBy('job.html').filter((file) => file.endsWith('.js'));
  expect(scripts).toContain('scripts/job-card.js');
  expect(scripts.reduce((sum, file) => sum + weightOf(file), 0)).toBeLessThan(JOB_CARD_SCRIPTS);
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
    await settled(page);
    expect(asked.sort(), name).toEqual(loadedBy(name).sort());
    await close();
  }
});
