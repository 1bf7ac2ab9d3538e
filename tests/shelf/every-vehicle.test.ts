/** No walk of a vehicle of the shelf, the battery-electric one included, asks for a test that its layout rules out. */
import { expect, test } from 'vitest';
import { placesReached } from '../../src/library/tree-ways.ts';
import { hasPlace } from '../../src/model/circuit-places.ts';
import { layoutAllows } from '../../src/model/layout.ts';
import { BADGE, drawPlaces } from '../../src/site/drawings/circuit-places.ts';
import { isDemonstration, shelf } from './shelf.ts';

const { records } = shelf;

test.each([...records.vehicle.values()].map(({ id, data }) => ({ id, layout: data.layout })))(
  '$id is asked for no test it cannot have',
  ({ layout }) => {
    const had = [...records.symptom.values()].filter(({ data }) => layoutAllows(data.layout, layout));
    expect(had.length).toBeGreaterThan(0);
    const wrong = had.flatMap(({ data }) =>
      placesReached(records, data.tree, layout).flatMap(({ tree, id }) => {
        const asked = tree.data.steps[id]?.test;
        const condition = asked === undefined ? undefined : records.test.get(asked)?.data.layout;
        return layoutAllows(condition, layout) ? [] : [`${tree.id}: ${id} asks ${asked}`];
      }),
    );
    expect(wrong).toEqual([]);
  },
);

/** The belt they look at drives no part of the circuit where the pump has another drive. */
const OF_THE_BELT = ['belt-check', 'belt-off-spin'];

test('a test for some layouts names a place that each vehicle of them has', () => {
  const withPlaces = [...records.test.values()].filter(({ data }) => data.at.length > 0 && data.layout);
  expect(withPlaces.length).toBeGreaterThan(30);
  const without = withPlaces
    .filter(({ id }) => !OF_THE_BELT.includes(id))
    .flatMap(({ id, data }) =>
      [...records.vehicle.values()]
        .filter(({ data: { layout } }) => layout.power !== 'battery electric')
        .filter(({ data: { layout } }) => layoutAllows(data.layout, layout))
        .filter(({ data: { layout } }) => !data.at.some((place) => hasPlace(layout, place)))
        .map((vehicle) => `${id} on ${vehicle.id}`),
    );
  expect(without).toEqual([]);
});

test('numbers of the places of a test do not touch in the circuit of any vehicle', () => {
  let drawn = 0;
  for (const { data, id } of [...records.test.values()].filter((each) => each.data.at.length > 1))
    for (const { data: vehicle, id: of } of records.vehicle.values()) {
      const svg = drawPlaces('a', vehicle.title, vehicle.layout, data.at)?.svg ?? '';
      const badges = [...svg.matchAll(/class="here" cx="([\d.]+)" cy="([\d.]+)"/g)].map(([, x, y]) => [
        Number(x),
        Number(y),
      ]);
      drawn += badges.length;
      const near = badges.filter(([x = 0, y = 0], at) =>
        badges.slice(at + 1).some(([left = 0, top = 0]) => Math.hypot(x - left, y - top) < 2 * BADGE - 1),
      );
      expect(near, `${id} on ${of}`).toEqual([]);
    }
  if (isDemonstration) expect(drawn).toBeGreaterThan(300);
});
