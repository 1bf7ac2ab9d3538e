/** Nothing is installed or shipped under a licence that was not agreed to, and both lists are what they say. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import {
  INSTALLED_LIST,
  installed,
  installedText,
  isAllowed,
  SHIPPED_LIST,
  shipped,
  shippedText,
} from './licences.ts';

/** Git may write the ends of lines as the system likes them. */
const read = (file: string) => readFileSync(file, 'utf8').replaceAll('\r\n', '\n');

test('the list of all that is installed agrees with the lock file; otherwise: npm run licences', () => {
  expect(read(INSTALLED_LIST)).toBe(installedText(installed()));
});

test('the list that ships with the site agrees with what its scripts are made of; otherwise: npm run licences', async () => {
  const packages = await shipped();
  expect(packages.map(({ name }) => name)).toEqual(expect.arrayContaining(['pagefind', 'zod']));
  expect(read(SHIPPED_LIST)).toBe(shippedText(packages).replaceAll('\r\n', '\n'));
});

test('every licence is one that was agreed to', () => {
  expect(installed().filter((each) => !isAllowed(each))).toEqual([]);
});

test('an expression is read as it is meant', () => {
  const may = (licence: string, name = 'x') => isAllowed({ name, version: '1.0.0', licence });
  expect(may('(MIT OR GPL-3.0-only)')).toBe(true);
  expect(may('MIT AND GPL-3.0-only')).toBe(false);
  expect(may('unknown')).toBe(false);
  expect(may('LGPL-3.0-or-later')).toBe(false);
  expect(may('Apache-2.0 AND LGPL-3.0-or-later', '@img/sharp-win32-x64')).toBe(true);
});

test('the lock file names no registry, so that any may be asked', () => {
  expect(readFileSync('package-lock.json', 'utf8')).not.toMatch(/"resolved"/);
});
