/** A new record of each kind is whole and valid before a word of it is changed; a vehicle has no layout but what was said. */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { askVehicle } from '../../src/cli/ask-vehicle.ts';
import { isOptional } from '../../src/library/field-tables.ts';
import { readShelf } from '../../src/library/read-shelf.ts';
import { fieldsOf } from '../../src/library/skeleton.ts';
import { JOINT_NAMES } from '../../src/model/figures.ts';
import { KIND_NAMES, KINDS, type Kind } from '../../src/model/kinds.ts';
import { LAYOUT_FEATURES, LEAVABLE_FEATURES } from '../../src/model/layout.ts';
import { SCHEMAS } from '../../src/model/schemas.ts';

let shelf: string;

beforeAll(() => {
  shelf = mkdtempSync(join(tmpdir(), 'new-record-'));
  cpSync(join(import.meta.dirname, '../library/sound'), shelf, { recursive: true });
});
afterAll(() => rmSync(shelf, { recursive: true }));

function make(...words: string[]) {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ['src/cli/new.ts', ...words, '--shelf', shelf],
    { encoding: 'utf8' },
  );
  return { status, stdout, stderr };
}

const TITLES: Record<Exclude<Kind, 'tree'>, string> = {
  tool: 'Cap tester',
  caution: 'Hot exhaust',
  coolant: 'Green one',
  procedure: 'Change the cap',
  cause: 'Cap seal hardened',
  test: 'Pump up the cap',
  code: 'P0217',
  vehicle: 'Tarn 2.0',
  note: 'Cap stamped 1.4',
  symptom: 'Hisses after parking',
  case: 'Cap leaks on the Tarn',
};

test('each kind but the vehicle, one after the other, leaves the shelf without an error', async () => {
  for (const [kind, title] of Object.entries(TITLES)) {
    if (kind === 'vehicle') continue;
    const { status, stderr } = make(kind, '--title', title);
    expect(`${kind} ${status} ${stderr}`).toBe(`${kind} 0 `);
  }
  const { findings, shelf: read } = await readShelf(shelf);
  // A new code is listed by its symptom too: that is another file, and the finding says which.
  const others = findings.filter(({ rule }) => rule !== 'code-and-symptom-apart');
  expect(others.filter(({ level }) => level === 'error')).toEqual([]);
  expect(read.records.symptom.get('hisses-after-parking')?.data.tree).toBe('hisses-after-parking');
  expect(read.records.tree.has('hisses-after-parking')).toBe(true);
  expect(KIND_NAMES.filter((kind) => kind !== 'tree').sort()).toEqual(Object.keys(TITLES).sort());
}, 120_000);

test('a new vehicle has no layout, no year and no source that nobody has given', async () => {
  expect(
    make('vehicle', '--title', 'Heron 2.0 diesel van', '--set', 'layout.thermostat=outlet side').stderr,
  ).toBe('');
  const leavable: readonly string[] = LEAVABLE_FEATURES;
  const { findings } = await readShelf(shelf);
  const left = findings
    .filter(({ rule }) => rule === 'choice-left-open')
    .map(({ place }) => place.source ?? '');
  // Points of the layout that must be known but the one that was given; body, fuel, years and source.
  const open = [
    ...LAYOUT_FEATURES.filter((feature) => feature !== 'thermostat' && !leavable.includes(feature)),
    'body',
    'fuel',
    'years',
    '-',
  ];
  expect(left.map((line) => line.trim().split(/[: ]/)[0]).sort()).toEqual(open.sort());
  const file = join(shelf, KINDS.vehicle.folder, 'heron-2-0-diesel-van.yaml');
  const text = readFileSync(file, 'utf8');
  for (const joint of JOINT_NAMES) expect(text).toContain(`#   ${joint}: { is: , bolt: , class: , into: ,`);
  rmSync(file);
}, 60_000);

test('asked, it offers the words of each choice, refuses an empty answer, and leaves open what nobody can say', async () => {
  const asked: string[] = [];
  const refused: string[] = [];
  const answers: Record<string, string[]> = {
    'Maker: ': ['', 'Aldermoor'],
    'Model: ': ['Heron'],
    'Where does the thermostat sit?': ['', '7', 'outlet side'],
    'What turns the radiator fan?': ['viscous'],
    'Which way does the radiator flow?': ['-'],
  };
  const values: Record<string, unknown> = { engine: { code: 'H20' } };
  await askVehicle(values, async (question, wrong) => {
    const [first = ''] = question.split('\n');
    asked.push(first);
    for (const answer of answers[first] ??
      (/^Years/.test(first) ? ['2015-2020'] : /^Engine size/.test(first) ? ['-'] : ['1'])) {
      const says = wrong(answer);
      if (says === undefined) return answer;
      refused.push(`${first} ${answer}`);
    }
    throw new Error(`No answer to ${first} was taken.`);
  });
  // What switches a fan on a clutch, and its electronics, follow from the clutch.
  expect(asked).toHaveLength(6 + LAYOUT_FEATURES.length - 2);
  expect(refused).toEqual([
    'Maker:  ',
    'Where does the thermostat sit? ',
    'Where does the thermostat sit? 7',
  ]);
  expect(values).toMatchObject({
    maker: 'Aldermoor',
    body: 'hatchback',
    years: '2015-2020',
    engine: { code: 'H20', fuel: 'petrol' },
    // A fan on a clutch is switched by nothing: that is not asked.
    layout: { thermostat: 'outlet side', fan: 'viscous clutch', 'fan-switched-by': 'none' },
  });
  expect(values.layout).not.toHaveProperty('radiator');
  expect(values.engine).not.toHaveProperty('size');
});

test('help is no mistake', () => {
  const { status, stdout, stderr } = make('vehicle', '--help');
  expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
  expect(stdout).toContain('layout.thermostat: one of "inlet side", "outlet side", ');
});

test('every field of the kind stands in the file with a line of help', () => {
  for (const kind of ['cause', 'vehicle', 'test'] as const) {
    const { stdout } = make(kind, '--title', 'Printed only', '--print');
    for (const [name, field] of fieldsOf(SCHEMAS[kind])) {
      const line = new RegExp(`^# .*\\n${isOptional(field) ? '(?:# )?' : ''}${name}:`, 'm');
      expect(stdout, `${kind}.${name}`).toMatch(line);
    }
  }
}, 60_000);

test('options fill fields and are held against the schema', () => {
  const made = make(
    'vehicle',
    '--title',
    'Fell van',
    '--id',
    'fell-van',
    '--set',
    'body=van',
    '--set',
    'engine.code=T16',
  );
  expect(made.stderr).toBe('');
  const text = readFileSync(join(shelf, KINDS.vehicle.folder, 'fell-van.yaml'), 'utf8');
  expect(text).toContain('\nbody: van\n');
  expect(text).toContain('\n  code: T16\n');
  expect(make('vehicle', '--title', 'Other', '--set', 'body=spaceship').stderr).toMatch(
    /body: "spaceship" does not fit/,
  );
  expect(make('vehicle', '--title', 'Other', '--set', 'invented=ture').stderr).toMatch(
    /invented: "ture" does not fit/,
  );
  expect(make('test', '--title', 'Other', '--set', 'minutes=').stderr).toMatch(/minutes: "" does not fit/);
  expect(make('vehicle', '--title', 'Other', '--set', 'colour=red').stderr).toMatch(
    /has no field "colour"\. Fields: title/,
  );
  expect(make('vehicle', '--title', 'Other', '--set', '__proto__.x=1').stderr).toMatch(/has no field/);
}, 60_000);

test.each([
  [['vehicel', '--title', 'x'], 'There is no kind of record "vehicel". Nearest: "vehicle".'],
  [['cause'], 'Give it a title'],
  [['cause', '--title', '…'], '"" cannot be an id.'],
  [['cause', '--title', 'x', '--id', '../../x'], '"../../x" cannot be an id.'],
  [['cause', '--title', 'Again', '--id', 'thermostat-open'], '"thermostat-open" is taken:'],
  [['tree', '--title', 'x'], 'A tree belongs to a complaint.'],
  [[], 'Kinds: symptom, cause'],
])(
  '%j is refused in words',
  (words, says) => {
    const { status, stderr } = make(...words);
    expect(stderr).toContain(says);
    expect(stderr).not.toMatch(/\bat .*\.ts:\d+/);
    expect(status).toBe(2);
  },
  30_000,
);

test('the day is the day here, wherever that is', () => {
  // These two places never have one day, so that at most one of them has Greenwich's.
  for (const zone of ['Pacific/Kiritimati', 'Etc/GMT+12']) {
    const here = new Intl.DateTimeFormat('en-CA', { timeZone: zone, dateStyle: 'short' });
    const before = here.format(new Date());
    const { stdout } = spawnSync(
      process.execPath,
      ['src/cli/new.ts', 'tool', '--title', 'Day here', '--print', '--shelf', shelf],
      { encoding: 'utf8', env: { ...process.env, TZ: zone } },
    );
    const written = /^reviewed: (\S+)/m.exec(stdout)?.[1];
    expect([before, here.format(new Date())]).toContain(written);
  }
}, 60_000);

test('a file that is there and cannot be read as a record is never written over', () => {
  const file = join(shelf, 'tools/half-written.yaml');
  writeFileSync(file, 'title: Half writ');
  const { status, stderr } = make('tool', '--title', 'Half written');
  expect(stderr).toMatch(/half-written\.yaml is there already and was left as it is\. Give another id/);
  expect(status).toBe(2);
  expect(readFileSync(file, 'utf8')).toBe('title: Half writ');
  rmSync(file);
}, 60_000);
