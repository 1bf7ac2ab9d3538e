/** The last good site stays until the next is complete, wherever the build is cut off. */
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { nextFolder, prepareSwap, swapIn } from '../../src/cli/swap-folder.ts';

let home: string;
let dist: string;
beforeEach(() => {
  home = mkdtempSync(join(tmpdir(), 'swap-'));
  dist = join(home, 'dist');
});
afterEach(() => rmSync(home, { recursive: true, force: true }));

function write(folder: string, text: string): void {
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'index.html'), text);
}

function site(): string | undefined {
  const page = join(dist, 'index.html');
  return existsSync(page) ? readFileSync(page, 'utf8') : undefined;
}

describe('a build that goes through', () => {
  test('puts the new site where the old one was, and leaves nothing beside it', () => {
    write(dist, 'old');
    prepareSwap(dist);
    write(nextFolder(dist), 'new');
    expect(site()).toBe('old');
    swapIn(dist);
    expect(site()).toBe('new');
    expect(existsSync(nextFolder(dist))).toBe(false);
    expect(existsSync(join(home, '.dist-before'))).toBe(false);
  });

  test('needs no site to have been there', () => {
    prepareSwap(dist);
    write(nextFolder(dist), 'new');
    swapIn(dist);
    expect(site()).toBe('new');
  });
});

describe('a build that was cut off', () => {
  test('while it wrote: the half-made site is gone with the next build, the old one stays', () => {
    write(dist, 'old');
    write(nextFolder(dist), 'half');
    prepareSwap(dist);
    expect(site()).toBe('old');
    expect(existsSync(nextFolder(dist))).toBe(false);
  });

  test('between the two renames: the old one comes back with the next build', () => {
    write(join(home, '.dist-before'), 'old');
    write(nextFolder(dist), 'new');
    prepareSwap(dist);
    expect(site()).toBe('old');
  });
});

test.each([
  ['a link', () => symlinkSync(home, dist)],
  ['a file', () => writeFileSync(dist, 'precious')],
])('%s in the place of the site is left alone and named', (name, make) => {
  writeFileSync(join(home, 'precious.txt'), 'x');
  make();
  expect(() => prepareSwap(dist)).toThrow(name);
  expect(readFileSync(join(home, 'precious.txt'), 'utf8')).toBe('x');
});
