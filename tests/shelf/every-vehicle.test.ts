/** No walk of a vehicle of the shelf, the battery-electric one included, asks for a test that its layout rules out. */
import { expect, test } from 'vitest';
import { placesReached } from '../../src/library/tree-ways.ts';
import { layoutAllows } from '../../src/model/layout.ts';
import { shelf } from './shelf.ts';

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
