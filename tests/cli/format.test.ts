/** Records in the project's way of writing; what cannot be written or read is said, and as what it is. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';

const UNTIDY = 'title:   Cap tester\nuse:\n    - Pump it up.\n';

let shelf: string;
let file: string;

beforeEach(() => {
  shelf = mkdtempSync(join(tmpdir(), 'format-'));
  mkdirSync(join(shelf, 'tools'));
  file = join(shelf, 'tools/cap-tester.yaml');
});
afterEach(() => rmSync(shelf, { recursive: true }));

function format(...words: string[]) {
  return spawnSync(process.execPath, ['src/cli/format.ts', shelf, ...words], { encoding: 'utf8' });
}

test('what is written otherwise is named, and changed unless it is only asked for', () => {
  writeFileSync(file, UNTIDY);
  const asked = format('--check');
  expect(asked.stdout).toContain('cap-tester.yaml');
  expect(asked.status).toBe(1);
  expect(readFileSync(file, 'utf8')).toBe(UNTIDY);
  expect(format()).toMatchObject({ status: 0, stderr: '' });
  expect(readFileSync(file, 'utf8')).not.toBe(UNTIDY);
  expect(format('--check')).toMatchObject({ status: 0, stdout: '0 to change.\n' });
}, 60_000);

test('a file that is not UTF-8 is left as it is', () => {
  const bytes = Buffer.from([0x74, 0x3a, 0x20, 0xe9, 0x0a]);
  writeFileSync(file, bytes);
  expect(format().stdout).toContain('cap-tester.yaml: left as it is; it is not UTF-8.');
  expect(readFileSync(file)).toEqual(bytes);
}, 60_000);

test('what YAML cannot read is left as it is, and who says why is named', () => {
  const broken = 'title: "Cap tester\nuse: [\n';
  writeFileSync(file, broken);
  expect(format().stdout).toContain('cap-tester.yaml: left as it is; npm run check says why.');
  expect(readFileSync(file, 'utf8')).toBe(broken);
}, 60_000);
