/** Which vehicles a figure is for: domain facts of the trade, common practice. */
import { expect, test } from 'vitest';
import { figureFits } from '../../src/model/figures.ts';
import type { KnownLayout } from '../../src/model/layout.ts';

const ELECTRIC: KnownLayout = {
  power: 'battery electric',
  thermostat: 'none',
  'thermostat-kind': 'none',
  fan: 'electric, pulse-width',
  pump: 'electric',
};
const PLAIN: KnownLayout = {
  power: 'combustion',
  thermostat: 'outlet side',
  'thermostat-kind': 'plain wax',
  fan: 'electric, one stage',
  pump: 'timing belt',
};

test.each([
  ['running.cruise', false, true],
  ['thermostat.opens', false, true],
  ['thermostat.opens-energised', false, false],
  ['fan.fast', false, false],
  ['fan.current', true, true],
  ['idle.speed', false, true],
  ['belt.deflection', false, true],
  ['coolant.capacity', true, true],
  ['torque.fan-clutch', false, false],
  ['torque.thermostat-housing', false, true],
])('%s: on a battery-electric car %s, on a plain one %s', (path, electric, plain) => {
  expect(figureFits(path, ELECTRIC)).toBe(electric);
  expect(figureFits(path, PLAIN)).toBe(plain);
});

test('what is not known of a layout rules nothing out', () => {
  expect(figureFits('fan.fast', {})).toBe(true);
  expect(figureFits('thermostat.opens-energised', { 'thermostat-kind': 'map-controlled' })).toBe(true);
});
