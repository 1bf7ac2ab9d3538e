import { describe, expect, test } from 'vitest';
import { layoutsToldApart } from '../../src/library/layouts-told-apart.ts';
import { layoutIsPossible } from '../../src/model/layout.ts';

describe('layouts that records tell apart', () => {
  test('are one when nothing tells them apart', () => {
    expect(layoutsToldApart([], [undefined])).toEqual([{}]);
  });
  test('have every value of a feature that is branched on', () => {
    expect(layoutsToldApart(['heater'], []).map(({ heater }) => heater)).toEqual([
      'always flowing',
      'valve-controlled',
      'auxiliary pump',
    ]);
  });
  test('have one value for each group that conditions treat alike', () => {
    const layouts = layoutsToldApart([], [{ pump: ['electric'] }]);
    expect(layouts).toEqual([{ pump: 'accessory belt' }, { pump: 'electric' }]);
  });
  test('leave out what no vehicle can be', () => {
    const layouts = layoutsToldApart(['thermostat'], [{ 'thermostat-kind': ['map-controlled'] }]);
    expect(layouts.every(layoutIsPossible)).toBe(true);
    // Two places for a thermostat, with and without map control. Where there is none, no complaint is about it.
    expect(layouts).toHaveLength(4);
  });
});

test('a layout that contradicts itself is not possible', () => {
  expect(layoutIsPossible({ thermostat: 'none', 'thermostat-kind': 'plain wax' })).toBe(false);
  expect(layoutIsPossible({ fan: 'viscous clutch', 'fan-switched-by': 'engine controller' })).toBe(false);
  expect(layoutIsPossible({ fan: 'hydraulic', 'fan-switched-by': 'engine controller' })).toBe(true);
  expect(layoutIsPossible({})).toBe(true);
});
