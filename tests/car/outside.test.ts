/** A hundred drawn cars beside figures that others measured, published or computed. `node tests/bench/car.ts` prints them. */
import { expect, test } from 'vitest';
import { CARS, compareAll, ROWS } from './outside/compare.ts';
import { NOT_HELD } from './outside/not-held.ts';

const compared = compareAll();

function say({ row, middle, inSpread }: (typeof compared)[number]): string {
  return `${row.id}: ${middle} ${row.unit} in the middle, ${row.range.join(' to ')} by the source, ${Math.round(100 * inSpread)} % inside the spread`;
}
const holds = (middle: number, [low, high]: readonly [number, number]) => middle >= low && middle <= high;

test(`puts the middle of ${CARS} cars inside what the source gives, or it is said why not`, () => {
  const missed = compared.filter(
    ({ row, middle }) => !holds(middle, row.range) && !(row.explained && holds(middle, row.explained.range)),
  );
  expect(missed.map(say)).toEqual([]);
});

test('puts nine cars of ten inside the spread', () => {
  expect(compared.filter(({ inSpread }) => !(inSpread >= 0.9)).map(say)).toEqual([]);
});

test('explains only what misses', () => {
  expect(compared.filter(({ row, middle }) => row.explained && holds(middle, row.range)).map(say)).toEqual(
    [],
  );
});

test('misses fewer than four in ten of the published figures that no figure of the model was set by', () => {
  const published = compared.filter(({ row }) => row.kind === 'published' && !row.fitted);
  const missed = published.filter(({ row, middle }) => !holds(middle, row.range));
  expect(published.length).toBeGreaterThan(40);
  expect(missed.length / published.length, missed.map(say).join('\n')).toBeLessThan(0.4);
});

test('says of each figure where it is from, and of each that is left out why', () => {
  for (const { source, id } of ROWS) expect(source.length, id).toBeGreaterThan(3);
  for (const [id, why] of Object.entries(NOT_HELD)) expect(why.length, id).toBeGreaterThan(20);
  const ids = ROWS.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  expect(ids.filter((id) => (id.split(',')[0] ?? id) in NOT_HELD)).toEqual([]);
});
