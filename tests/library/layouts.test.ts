import { describe, expect, test } from 'vitest';
import { checkFiles } from '../../src/library/check-files.ts';
import { drivenLayouts } from '../../src/library/driven-layouts.ts';
import { layoutsToldApart } from '../../src/library/layouts-told-apart.ts';
import { layoutIsPossible } from '../../src/model/layout.ts';
import { soundShelf } from './shelves.ts';

describe('layouts that records tell apart', () => {
  test('are one when nothing tells them apart', () => {
    expect(layoutsToldApart([], [undefined])).toEqual([{}]);
  });
  test('have every value of a feature that is branched on', () => {
    expect(layoutsToldApart(['heater'], []).map(({ heater }) => heater)).toEqual([
      'always flowing',
      'valve-controlled',
    ]);
  });
  test('have one value for each group that conditions treat alike', () => {
    const layouts = layoutsToldApart([], [{ pump: ['electric'] }]);
    expect(layouts).toEqual([{ pump: 'accessory belt' }, { pump: 'electric' }]);
  });
  test('leave out what no vehicle can be', () => {
    const layouts = layoutsToldApart(['thermostat'], [{ 'thermostat-kind': ['map-controlled'] }]);
    expect(layouts.every(layoutIsPossible)).toBe(true);
    // Two places for a thermostat, with and without map control, and a valve block. Where there is none, no complaint is about it.
    expect(layouts).toHaveLength(5);
  });
});

test('a layout that contradicts itself is not possible', () => {
  expect(layoutIsPossible({ thermostat: 'none', 'thermostat-kind': 'plain wax' })).toBe(false);
  expect(layoutIsPossible({ fan: 'viscous clutch', 'fan-switched-by': 'engine controller' })).toBe(false);
  expect(layoutIsPossible({ fan: 'hydraulic', 'fan-switched-by': 'engine controller' })).toBe(true);
  expect(layoutIsPossible({})).toBe(true);
});

test('vehicles of one layout are listed under it, and those without an engine under none', () => {
  const { records } = checkFiles('content', soundShelf()).shelf;
  const tarn = records.vehicle.get('tarn');
  if (!tarn) throw new Error('No tarn');
  const like = (id: string, power: 'combustion' | 'hybrid' | 'battery electric') =>
    [id, { ...tarn, id, data: { ...tarn.data, layout: { ...tarn.data.layout, power } } }] as const;
  const vehicle = new Map([
    like('tarn', 'combustion'),
    like('brook', 'hybrid'),
    like('fell', 'combustion'),
    like('mere', 'battery electric'),
  ]);
  const found = drivenLayouts({ ...records, vehicle });
  expect(found.map(({ layout, vehicles }) => [layout.power, vehicles])).toEqual([
    ['combustion', ['tarn', 'fell']],
    ['hybrid', ['brook']],
  ]);
});
