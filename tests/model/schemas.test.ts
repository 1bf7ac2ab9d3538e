/** What the schema of a kind refuses beyond a missing field or a wrong word, and what it says then. */
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import type { Kind } from '../../src/model/kinds.ts';
import { SCHEMAS } from '../../src/model/schemas.ts';
import { soundShelf } from '../library/shelves.ts';

type Fields = Record<string, unknown>;

function soundRecord(path: string): Fields {
  const file = soundShelf().find((each) => each.path === path);
  return parse(new TextDecoder().decode(file?.bytes)) as Fields;
}

const CAUSE = 'causes/sensor-low.yaml';
const TEST = 'tests/hose-watch.yaml';
const TREE = 'trees/runs-cold.yaml';
const SYMPTOM = 'symptoms/runs-cold.yaml';
const STEP = { test: 'hose-watch', on: { 'warm-early': 'thermostat', 'warm-late': 'sensor' } };
const { on: _, ...WITHOUT_WAYS } = STEP;
const withHose = (hose: unknown): Fields => ({ steps: { hose } });

test.each<[what: string, kind: Kind, path: string, change: Fields, says: RegExp]>([
  [
    'a recheck without its minutes',
    'cause',
    CAUSE,
    { confirm: { recheck: 'It reads right.' } },
    /how it is proven/,
  ],
  [
    'a proof by a test without its outcome',
    'cause',
    CAUSE,
    { confirm: { test: 'hose-watch' } },
    /the outcome that/,
  ],
  ['four first checks', 'code', 'codes/p0128.yaml', { first: ['a', 'b', 'c', 'd'] }, /<=3/],
  ['a test of more than ten hours', 'test', TEST, { minutes: 601 }, /More than ten hours/],
  ['a test of no time', 'test', TEST, { minutes: 0 }, /more than nothing/],
  [
    'a test with one outcome',
    'test',
    TEST,
    { outcomes: { seen: { reading: 'Seen', label: 'Seen' } } },
    /two outcomes/,
  ],
  ['two phrasings', 'symptom', SYMPTOM, { said: ['Cold feet', 'Needle low'] }, />=3/],
  ['hardly a share for something else', 'symptom', SYMPTOM, { 'something-else': 0.02 }, />=0\.03/],
  ['a step of two kinds', 'tree', TREE, withHose({ ...STEP, tree: 'other' }), /exactly one of/],
  ['a test step that leads nowhere', 'tree', TREE, withHose(WITHOUT_WAYS), /has `on`/],
  ['a proof without a way on', 'tree', TREE, withHose({ prove: 'sensor-low' }), /has `otherwise`/],
  ['an end without a cause', 'tree', TREE, { ends: { sensor: { causes: [], says: 'None.' } } }, />=1/],
  [
    'a note that hangs on nothing',
    'note',
    'notes/2026/slow-opening.yaml',
    { vehicle: undefined, cause: undefined, symptom: undefined, procedure: undefined },
    /hangs on something/,
  ],
  [
    'years that run backwards',
    'vehicle',
    'vehicles/tarn.yaml',
    { years: '2014-2009' },
    /first year stands before/,
  ],
])('%s is refused in words', (_what, kind, path, change, says) => {
  const record = soundRecord(path);
  expect(SCHEMAS[kind].safeParse(record).error?.issues ?? []).toEqual([]);
  const { error } = SCHEMAS[kind].safeParse({ ...record, ...change });
  expect(error?.issues.map(({ message }) => message)).toEqual([expect.stringMatching(says)]);
});
