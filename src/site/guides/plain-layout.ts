/** The layout the guides draw when a guide is about one feature and the rest should not distract. */
import type { Layout } from '../../model/layout.ts';

export const PLAIN_LAYOUT: Layout = {
  power: 'combustion',
  thermostat: 'outlet side',
  'thermostat-kind': 'by-pass closing',
  heater: 'always flowing',
  'heater-pump': 'none',
  reservoir: 'header tank',
  fan: 'electric, one stage',
  'fan-switched-by': 'engine controller',
  pump: 'accessory belt',
  radiator: 'cross-flow',
  turbo: 'none',
  'egr-cooler': 'none',
  'oil-cooler': 'none',
  'transmission-cooler': 'none',
};
