/**
 * Simulated cars walked through the trees, and evidence against physics. `node tests/bench/car-trials.ts` and car-rows.ts do the whole;
 * here a few cars of each complaint, others on another day: the seed is the date's and is printed with what fails.
 */
import { expect, test } from 'vitest';
import { COMPLAINT_IDS } from '../../src/car/complaint.ts';
import { FAULT_IDS } from '../../src/car/faults.ts';
import { TEST_IDS, TESTS } from '../../src/car/reading.ts';
import { partedRows, placeOnScale } from '../../src/library/against-physics/compare.ts';
import { isSettled, keptRows, settledRows } from '../../src/library/against-physics/kept.ts';
import table from '../../src/site/about/car-trials.json' with { type: 'json' };
import { isDemonstration, shelf } from '../shelf/shelf.ts';
import { pairsOf, trierOf } from './trials/trial.ts';

const DAYS = 86_400_000;
const seed = Number(process.env.TRIALS_SEED ?? Math.floor(Date.now() / DAYS));
/** One car for each of so many complaints with a cause. */
const DRAWN = 24;
/** Of 24 cars at most this many may be lost or end with a wrong cause proven: 3 in a hundred do, and more than 4 of 24 come once in two thousand runs. */
const MOST_ASTRAY = 4;

test(`a random few of the simulated cars are led right or told honestly (TRIALS_SEED=${seed})`, () => {
  const tries = trierOf(shelf);
  const shown = new Set(table.causes.map(({ complaint, cause }) => `${complaint} ${cause}`));
  const pairs = pairsOf(shelf).filter(({ complaint, fault }) => shown.has(`${complaint} ${fault}`));
  const tried = Array.from({ length: DRAWN }, (_, at) => {
    const pair = pairs[(seed * 31 + at * 7) % pairs.length];
    return pair && tries(pair.complaint, pair.fault, seed + at);
  }).filter((one) => one !== undefined);
  const astray = tried.filter(({ verdict }) => verdict === 'lost' || verdict === 'wrong');
  const says = astray.map(
    ({ from, verdict, walk }) =>
      `${verdict}: ${from.complaint}, ${from.fault}, seed ${from.seed}: ${walk.proven ?? 'nothing'} proven by ${walk.asked.map((one) => `${one.test} ${one.outcome}`).join(', ')}`,
  );
  expect(tried.length).toBeGreaterThan(DRAWN / 3);
  expect(astray.length, says.join('\n')).toBeLessThanOrEqual(MOST_ASTRAY);
}, 60_000);

test('the kept trials hold the limits: right or honest 97 of a hundred, a wrong cause proven in under one', () => {
  const once = table.all.find(({ scale }) => scale === 1);
  if (!once) throw new Error('The table has no trials at the ranges as they stand.');
  expect(once.cars).toBeGreaterThan(100);
  expect((once.right + once.honest) / once.cars).toBeGreaterThanOrEqual(0.97);
  expect(once.wrong / once.cars).toBeLessThan(0.01);
  expect(once.right + once.honest + once.lost + once.wrong).toBe(once.cars);
  expect(new Set(table.complaints.map(({ complaint }) => complaint))).toEqual(new Set(COMPLAINT_IDS));
});

test.runIf(isDemonstration)('what is settled names tests and causes that the simulation shows', () => {
  for (const { test: id, causes } of settledRows()) {
    expect(TEST_IDS as readonly string[]).toContain(id);
    for (const cause of causes) expect(FAULT_IDS as readonly string[]).toContain(cause);
  }
});

test.runIf(isDemonstration)('the twenty rows that part most are settled', () => {
  const parted = partedRows(shelf.records, keptRows().rows);
  expect(parted.length).toBeGreaterThan(20);
  const settled = settledRows();
  const open = parted.slice(0, 20).filter((row) => !isSettled(settled, row));
  expect(open.map(({ test: id, cause, outcome }) => `${id}, ${cause}, ${outcome}`)).toEqual([]);
});

test('the kept rows name outcomes that their tests have', () => {
  for (const { test: name, seen, cars } of keptRows().rows) {
    const known = TEST_IDS.find((id) => id === name);
    if (!known) throw new Error(`No simulated test ${name}.`);
    expect(TESTS[known].outcomes as readonly string[]).toEqual(expect.arrayContaining(Object.keys(seen)));
    expect(Object.values(seen).reduce((sum, count) => sum + count, 0)).toBe(cars);
  }
});

test('a share finds its place among the words', () => {
  expect(placeOnScale(0)).toBe(0);
  expect(placeOnScale(1)).toBe(10);
  expect(placeOnScale(0.34)).toBeCloseTo(4, 9);
  expect(placeOnScale(0.42)).toBeCloseTo(4.5, 9);
});
