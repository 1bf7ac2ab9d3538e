import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterEach, beforeEach, expect, test } from 'vitest';

const KEPT = 'node_modules/.cache/headertank/compiled';
let home: string;
beforeEach(() => {
  home = mkdtempSync(join(tmpdir(), 'headertank-compiled-'));
});
afterEach(() => rmSync(home, { recursive: true, force: true }));

function run(): { status: number | null; stderr: string } {
  const first = pathToFileURL(resolve('src/cli/keep-compiled.ts')).href;
  const words = ['--import', first, resolve('src/library/apply-edits.ts')];
  // The tests have a place of their own for it; here the command is to find its own.
  const { NODE_COMPILE_CACHE: _, ...env } = process.env;
  return spawnSync(process.execPath, words, { cwd: home, encoding: 'utf8', env });
}

test('what was compiled is kept where the check keeps what it worked out', () => {
  expect(run()).toMatchObject({ status: 0, stderr: '' });
  const files = readdirSync(join(home, KEPT), { recursive: true, withFileTypes: true });
  expect(files.filter((entry) => entry.isFile()).length).toBeGreaterThan(0);
});

test('where nothing can be kept, the command runs all the same', () => {
  writeFileSync(join(home, 'node_modules'), 'a file where the folder would be');
  expect(run()).toMatchObject({ status: 0, stderr: '' });
});

test('the check and the build begin with it', () => {
  const { scripts } = JSON.parse(readFileSync('package.json', 'utf8'));
  for (const name of ['check', 'build'])
    expect(scripts[name]).toMatch(/^node --import \.\/src\/cli\/keep-compiled\.ts src\/cli\/check\.ts\b/);
});
