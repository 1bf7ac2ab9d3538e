/** README's "Make it your own", step by step up to the check: from a copy of what is in the repository. */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { filesOf, readShelf } from '../../src/library/read-shelf.ts';
import { LAYOUT, LAYOUT_FEATURES } from '../../src/model/layout.ts';

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

const WHO = ['--name', 'Quay Street Garage', '--units', 'metric', '--currency', 'EUR', '--rate', '72,50'];

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

  const layout = LAYOUT_FEATURES.map((feature) => ['--set', `layout.${feature}=${LAYOUT[feature][0]}`]);
  const said = ['maker=Heronby', 'model=Sedge van', 'body=van', 'years=2015-2020', 'engine.fuel=diesel'];
  const car = run(
    'src/cli/new.ts',
    'vehicle',
    '--title',
    'Sedge van',
    ...layout.flat(),
    ...[...said, 'engine.code=H20', 'sources=common practice'].flatMap((each) => ['--set', each]),
  );
  expect(car.stderr).toBe('');
  const file = join(shelf, 'vehicles/sedge-van.yaml');
  writeFileSync(
    file,
    readFileSync(file, 'utf8')
      .replaceAll(/"?To write: (.*?)"?$/gm, 'Seen on one van.')
      .replace(
        /^figures:$/m,
        'figures:\n  thermostat.opens: { is: 88 °C, from: plate, page: 12, checked: 30.11.2026, sure: once }',
      ),
  );
  const note = run('src/cli/new.ts', 'note', '--title', 'Stamp of the van', '--set', 'vehicle=sedge-van');
  expect(note.stderr).toBe('');

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
