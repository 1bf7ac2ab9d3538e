/** A new record of each kind is whole and valid before a word of it is changed; a vehicle has no layout but what was said. */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { askVehicle } from '../../src/cli/ask-vehicle.ts';
import { checkVehicle } from '../../src/library/check-vehicle.ts';
import { isOptional } from '../../src/library/field-tables.ts';
import { readShelf } from '../../src/library/read-shelf.ts';
import { fieldsOf } from '../../src/library/skeleton.ts';
import { JOINT_NAMES } from '../../src/model/figures.ts';
import { KIND_NAMES, KINDS, type Kind } from '../../src/model/kinds.ts';
import { LAYOUT_FEATURES, LEAVABLE_FEATURES } from '../../src/model/layout.ts';
import { SCHEMAS } from '../../src/model/schemas.ts';
import { recordOf } from '../../src/site/vehicle/vehicle-draft.ts';

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
  const told = async (question: string, wrong: (answer: string) => string | undefined) => {
    // What is asked after the layout is left open here.
    if (/^\n|^Access|^Where (?:air|most)|^What the gauge/.test(question)) return '-';
    const [first = ''] = question.split('\n');
    asked.push(first);
    for (const answer of answers[first] ??
      (/^Years/.test(first) ? ['2015-2020'] : /^Engine size/.test(first) ? ['-'] : ['1'])) {
      const says = wrong(answer);
      if (says === undefined) return answer;
      refused.push(`${first} ${answer}`);
    }
    throw new Error(`No answer to ${first} was taken.`);
  };
  await askVehicle(values, told, '2026-11-30');
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

test('told the same as the form, it writes what the form writes, and says what cannot be', async () => {
  const LAYOUT_SAID = { power: 'combustion', thermostat: 'outlet side', fan: 'electric, one stage' };
  const SAID: Record<string, string> = {
    'Thermostat starts to open': '88 °C',
    'Fan starts': '97 °C',
    'Fan stops': '92 C',
    'Cap opens, gauge pressure': '1,4 bar',
    'Whole cooling system': '6.2 l',
    'Water pump to block': '10 Nm',
  };
  const refused: string[] = [];
  const answersTo = (question: string): string[] => {
    const [line = ''] = question.trimStart().split('\n');
    const label = Object.keys(SAID).find((each) => line.startsWith(`${each}, `));
    if (label === 'Fan starts') return ['hot', '97 bar', SAID[label] ?? ''];
    if (label) return [SAID[label] ?? '-'];
    if (/^Thread/.test(line)) return ['M6'];
    if (/^Class/.test(line)) return ['8.8'];
    if (/^Screwed/.test(line)) return ['alloy'];
    if (/^From: Enter/.test(line)) return [''];
    if (/^From/.test(line)) return ['-', 'manual'];
    if (/^Page/.test(line)) return ['12'];
    if (/^How sure/.test(line)) return ['1'];
    if (/^Access/.test(line)) return ['Airbox comes off first.'];
    if (/^Where air/.test(line)) return ['At the heater feed.'];
    if (/^What the gauge/.test(line)) return ['Buffered.'];
    if (/^Where most/.test(line)) return ['manual'];
    if (/^Which book/.test(line)) return ['Book 3, page 12'];
    return [/^(?:Thermostat|Fan|Cap|Coolant|Torques): /.test(line) ? '' : '-'];
  };
  const values: Record<string, unknown> = {
    ...{ title: 'Sedge van', maker: 'Heronby', model: 'Sedge', body: 'van', years: '2015-2020' },
    ...{ engine: { code: 'H20', fuel: 'diesel', size: '2.0 l' }, layout: { ...LAYOUT_SAID } },
  };
  const told = async (question: string, wrong: (answer: string) => string | undefined) => {
    for (const answer of answersTo(question)) {
      const says = wrong(answer);
      if (says === undefined) return answer;
      refused.push(`${answer}: ${says}`);
    }
    throw new Error(`No answer to ${question} was taken.`);
  };
  await askVehicle(values, told, '2026-11-30');
  const origin = { from: 'manual', page: '12', sure: 'read off the source' };
  const entry = (group: string, name: string, parts: Record<string, string>) =>
    Object.entries({ ...parts, ...origin }).map(([part, value]) => [`${group}/${name}/${part}`, value]);
  const fields = Object.fromEntries([
    ...Object.entries({
      title: 'Sedge van',
      maker: 'Heronby',
      model: 'Sedge',
      body: 'van',
      years: '2015-2020',
    }),
    ...[
      ['engine/code', 'H20'],
      ['engine/fuel', 'diesel'],
      ['engine/size', '2.0 l'],
    ],
    ...Object.entries(LAYOUT_SAID).map(([feature, word]) => [`layout/${feature}`, word]),
    ...entry('figures', 'thermostat.opens', { is: '88 °C' }),
    ...entry('figures', 'fan.on', { is: '97 °C' }),
    ...entry('figures', 'fan.off', { is: '92 C' }),
    ...entry('figures', 'cap.opens', { is: '1,4 bar' }),
    ...entry('figures', 'coolant.capacity', { is: '6.2 l' }),
    ...entry('torques', 'water-pump', { is: '10 Nm', bolt: 'M6', class: '8.8', into: 'aluminium' }),
    ...[
      ['access', 'Airbox comes off first.'],
      ['bleeding', 'At the heater feed.'],
      ['gauge', 'Buffered.'],
    ],
    ...[
      ['known', 'manual'],
      ['source', 'Book 3, page 12'],
    ],
  ]);
  expect(values).toEqual(pick(recordOf(fields, '2026-11-30'), Object.keys(values), values.layout));
  const record = { ...values, invented: false, reviewed: '2026-11-30' };
  const { faults } = checkVehicle('sedge-van', record);
  expect(faults.filter(({ isMissing, path }) => !isMissing || path[0] !== 'layout')).toEqual([]);
  expect(refused).toHaveLength(3);
  expect(refused[1]).toMatch(/^hot: /);
  expect(refused[2]).toMatch(/^97 bar: .*temperature/);
  expect(refused[0]).toMatch(/^-: Nothing is taken for granted here: a number from 1 to 6\.$/);
});

/** The fields of the form's record that the command asks; the layout is compared by itself elsewhere. */
function pick(record: Record<string, unknown>, names: readonly string[], layout: unknown) {
  return { ...Object.fromEntries(names.map((name) => [name, record[name]])), layout };
}

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
