/** How a vehicle's cooling circuit is laid out: it decides what a test means (see the guide on layouts). */
import { z } from 'zod';

/** Every feature of a layout and what it can be. The order is the order of the page. */
export const LAYOUT = {
  power: ['combustion', 'hybrid', 'battery electric'],
  thermostat: ['inlet side', 'outlet side', 'none'],
  'thermostat-kind': ['plain wax', 'by-pass closing', 'map-controlled', 'electric valve', 'none'],
  heater: ['always flowing', 'valve-controlled', 'auxiliary pump'],
  reservoir: ['header tank', 'recovery bottle'],
  fan: [
    'electric, one stage',
    'electric, two stages',
    'electric, pulse-width',
    'viscous clutch',
    'hydraulic',
  ],
  'fan-switched-by': ['switch in the radiator', 'engine controller', 'none'],
  pump: ['accessory belt', 'timing belt', 'electric'],
  radiator: ['cross-flow', 'down-flow'],
  turbo: ['on the circuit', 'none'],
  'egr-cooler': ['on the circuit', 'none'],
  'oil-cooler': ['on the circuit', 'none'],
  'transmission-cooler': ['in the radiator', 'none'],
} as const;

export type LayoutFeature = keyof typeof LAYOUT;
export const LAYOUT_FEATURES = Object.keys(LAYOUT) as LayoutFeature[];

/** Labels for people. */
export const LAYOUT_LABELS: Record<LayoutFeature, string> = {
  power: 'Drive',
  thermostat: 'Thermostat sits on the',
  'thermostat-kind': 'Kind of thermostat',
  heater: 'Heater',
  reservoir: 'Reservoir',
  fan: 'Radiator fan',
  'fan-switched-by': 'Fan switched by',
  pump: 'Coolant pump driven by',
  radiator: 'Radiator',
  turbo: 'Turbocharger cooling',
  'egr-cooler': 'Exhaust-gas cooler',
  'oil-cooler': 'Oil cooler',
  'transmission-cooler': 'Transmission cooler',
};

/** The layout of one vehicle: every feature stated. */
export const layoutSchema = z.strictObject({
  power: z.enum(LAYOUT.power),
  thermostat: z.enum(LAYOUT.thermostat),
  'thermostat-kind': z.enum(LAYOUT['thermostat-kind']),
  heater: z.enum(LAYOUT.heater),
  reservoir: z.enum(LAYOUT.reservoir),
  fan: z.enum(LAYOUT.fan),
  'fan-switched-by': z.enum(LAYOUT['fan-switched-by']),
  pump: z.enum(LAYOUT.pump),
  radiator: z.enum(LAYOUT.radiator),
  turbo: z.enum(LAYOUT.turbo),
  'egr-cooler': z.enum(LAYOUT['egr-cooler']),
  'oil-cooler': z.enum(LAYOUT['oil-cooler']),
  'transmission-cooler': z.enum(LAYOUT['transmission-cooler']),
});

export type Layout = z.infer<typeof layoutSchema>;

/** A condition: the record holds only for vehicles whose layout has one of these values in each named feature. */
export const layoutConditionSchema = z
  .strictObject({
    power: z.array(z.enum(LAYOUT.power)).min(1).optional(),
    thermostat: z.array(z.enum(LAYOUT.thermostat)).min(1).optional(),
    'thermostat-kind': z.array(z.enum(LAYOUT['thermostat-kind'])).min(1).optional(),
    heater: z.array(z.enum(LAYOUT.heater)).min(1).optional(),
    reservoir: z.array(z.enum(LAYOUT.reservoir)).min(1).optional(),
    fan: z.array(z.enum(LAYOUT.fan)).min(1).optional(),
    'fan-switched-by': z.array(z.enum(LAYOUT['fan-switched-by'])).min(1).optional(),
    pump: z.array(z.enum(LAYOUT.pump)).min(1).optional(),
    radiator: z.array(z.enum(LAYOUT.radiator)).min(1).optional(),
    turbo: z.array(z.enum(LAYOUT.turbo)).min(1).optional(),
    'egr-cooler': z.array(z.enum(LAYOUT['egr-cooler'])).min(1).optional(),
    'oil-cooler': z.array(z.enum(LAYOUT['oil-cooler'])).min(1).optional(),
    'transmission-cooler': z.array(z.enum(LAYOUT['transmission-cooler'])).min(1).optional(),
  })
  .describe(
    'Holds only for vehicles with one of these values in each feature named, such as { thermostat: [inlet side] }.',
  );

export type LayoutCondition = z.infer<typeof layoutConditionSchema>;

/** What is known of a layout: a whole one, a part answered in the walk, or nothing. */
export type KnownLayout = Partial<Record<LayoutFeature, string>>;

/** Whether a condition can hold: features not known yet do not rule it out. */
export function layoutAllows(condition: LayoutCondition | undefined, known: KnownLayout): boolean {
  if (!condition) return true;
  return LAYOUT_FEATURES.every((feature) => {
    const wanted: readonly string[] | undefined = condition[feature];
    const actual = known[feature];
    return wanted === undefined || actual === undefined || wanted.includes(actual);
  });
}
