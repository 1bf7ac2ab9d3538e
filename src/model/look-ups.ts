/**
 * What somebody looks for on one vehicle and that is no quantity: where a fuse sits, which wire does what, which part
 * fits. One catalogue each; a record states what it knows.
 */
import { z } from 'zod';
import { type KnownLayout, type LayoutCondition, layoutAllows } from './layout.ts';
import { provenance } from './provenance.ts';
import { lineSchema } from './scalars.ts';

interface LookUp {
  label: string;
  /** Vehicles that can have it; without it, all. */
  layout?: LayoutCondition;
}

const ELECTRIC_FAN: LayoutCondition = {
  fan: ['electric, one stage', 'electric, two stages', 'electric, pulse-width'],
};
const THERMOSTAT: LayoutCondition = { thermostat: ['inlet side', 'outlet side'] };

/** Places and parts, each a line of words. */
export const LOOK_UPS = {
  'fan-fuse': { label: 'Fan fuse sits', layout: ELECTRIC_FAN },
  'fan-relay': { label: 'Fan relay sits', layout: ELECTRIC_FAN },
  'pump-fuse': { label: 'Electric pump fuse sits', layout: { pump: ['electric'] } },
  'heater-pump-fuse': { label: 'Heater pump fuse sits', layout: { 'heater-pump': ['in a heater hose'] } },
  'blower-fuse': { label: 'Blower fuse sits' },
  'coolant-sensor': { label: 'Coolant sensor sits' },
  'second-sensor': { label: 'Radiator outlet sensor sits' },
  'cap-thread': { label: 'Thread of the cap, for the tester’s adaptor' },
  'cap-number': { label: 'Cap, part number' },
  'thermostat-number': { label: 'Thermostat, part number', layout: THERMOSTAT },
  'thermostat-seal': { label: 'Thermostat seal, part number', layout: THERMOSTAT },
  'pump-number': { label: 'Coolant pump, part number' },
  'pump-seal': { label: 'Coolant pump seal, part number' },
  'belt-number': { label: 'Accessory belt, part number' },
  'radiator-number': { label: 'Radiator, part number' },
  'head-gasket': { label: 'Head gasket and how its thickness is told' },
} as const satisfies Record<string, LookUp>;

export type LookUpName = keyof typeof LOOK_UPS;
export const LOOK_UP_NAMES = Object.keys(LOOK_UPS) as LookUpName[];

/** Plugs whose pins are looked up at a test. */
export const PLUGS = {
  fan: { label: 'Fan or its module', layout: ELECTRIC_FAN },
  'fan-switch': { label: 'Fan switch', layout: { 'fan-switched-by': ['switch in the radiator'] } },
  'coolant-sensor': { label: 'Coolant sensor' },
  'second-sensor': { label: 'Radiator outlet sensor' },
  thermostat: {
    label: 'Thermostat heater or valve',
    layout: { 'thermostat-kind': ['map-controlled', 'electric valve'] },
  },
  pump: { label: 'Electric main pump', layout: { pump: ['electric'] } },
  'heater-pump': { label: 'Heater pump', layout: { 'heater-pump': ['in a heater hose'] } },
  'after-run-pump': { label: 'After-run pump', layout: { 'after-run-pump': ['fitted'] } },
  'level-sensor': { label: 'Level sensor' },
} as const satisfies Record<string, LookUp>;

export type PlugName = keyof typeof PLUGS;
export const PLUG_NAMES = Object.keys(PLUGS) as PlugName[];

const lookUpEntry = z.strictObject({
  is: lineSchema.describe('As it is said at the car: a place, a thread, a number.'),
  ...provenance,
});

const plugEntry = z.strictObject({
  pins: z
    .array(
      z.strictObject({
        pin: lineSchema.describe('Number or letter on the plug.'),
        wire: lineSchema.optional().describe('Colour of the wire.'),
        does: lineSchema.describe('What it carries, and what is measured on it.'),
      }),
    )
    .min(1),
  ...provenance,
});

export const lookUpsSchema = z
  .partialRecord(z.enum(LOOK_UP_NAMES as [LookUpName, ...LookUpName[]]), lookUpEntry)
  .default({})
  .describe('Places, threads and part numbers by name; leave out what is not known.');

export const plugsSchema = z
  .partialRecord(z.enum(PLUG_NAMES as [PlugName, ...PlugName[]]), plugEntry)
  .default({})
  .describe('Pins and wires by plug; leave out what is not known.');

/** Whether a vehicle of this layout can have what is looked up. */
export function lookUpFits({ layout }: LookUp, known: KnownLayout): boolean {
  return layoutAllows(layout, known);
}
