/** README's "Make it your own", step by step up to the check: from a copy of what is in the repository. */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { filesOf, readShelf } from '../../src/library/read-shelf.ts';
import { WHO, writeOwnCar } from './own-car.ts';

let shelf: string;

beforeAll(() => {
  shelf = mkdtempSync(join(tmpdir(), 'own-shelf-'));
  cpSync('content', shelf, { recursive: true });
});
afterAll(() => rmSync(shelf, { recursive: true }));

function run(file: string, ...words: string[]) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [file, ...words, '--shelf', shelf], {
    encoding: 'utf8',
  });
  return { status, stdout, stderr };
}

test('what a shop leaves out or says wrongly is refused before anything is touched', () => {
  const before = filesOf(shelf).length;
  expect(run('src/cli/own-shelf.ts', '--name', 'Quay Street Garage').stderr).toMatch(/^--units is missing/);
  expect(run('src/cli/own-shelf.ts', ...WHO.with(7, 'dear')).stderr).toMatch(/^--rate "dear": A number/);
  expect(run('src/cli/own-shelf.ts', ...WHO.with(5, 'euro')).stderr).toMatch(/^--currency "euro": Three/);
  expect(filesOf(shelf)).toHaveLength(before);
}, 120_000);

test('own shop, one own car, one note: the shelf has nothing to mend and nothing invented', async () => {
  const made = run('src/cli/own-shelf.ts', ...WHO, '--repository', 'https://git.example.org/quay/shelf');
  expect(made.stderr).toBe('');
  expect(made.stdout).toMatch(/^Removed: \d+ invented vehicles, \d+ notes, \d+ cases/);
  expect(run('src/cli/own-shelf.ts', ...WHO).stderr).toMatch(
    /^This is the shelf of Quay Street Garage already/,
  );

  writeOwnCar(shelf, (file, ...words) => expect(run(file, ...words).stderr).toBe(''));

  const { shelf: own, findings } = await readShelf(shelf);
  expect(findings.filter(({ level }) => level === 'error')).toEqual([]);
  expect(own.shop).toMatchObject({ name: 'Quay Street Garage', invented: false, 'labour-rate': 72.5 });
  expect([...own.records.vehicle.values()].map(({ data }) => data.invented)).toEqual([false]);
  expect(own.records.symptom.size).toBeGreaterThan(30);
  const { stdout } = spawnSync('grep', ['-rilE', 'saltmarsh|aldermoor|invented workshop', shelf], {
    encoding: 'utf8',
  });
  expect(stdout).toBe('');
}, 300_000);
