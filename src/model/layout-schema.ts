/** How a layout and a layout condition are written in a record. Apart from layout.ts so that pages need no zod. */
import { z } from 'zod';
import { LAYOUT, type LayoutFeature } from './layout.ts';
import { lineSchema } from './scalars.ts';

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

const shareSchema = z.number().min(0).max(1);

/** Shares of the values of one feature, which must sum to 1. */
function sharesOf<F extends LayoutFeature>(feature: F) {
  return z
    .record(z.enum(LAYOUT[feature] as readonly [string, ...string[]]), shareSchema)
    .refine((shares) => Math.abs(Object.values(shares).reduce((sum, share) => sum + share, 0) - 1) < 1e-6, {
      message: 'The shares of one feature sum to 1.',
    })
    .optional();
}

/** How common each layout is among the cars that come in. */
export const layoutSharesSchema = z
  .strictObject({
    from: lineSchema.describe('Where the shares are from: counted in this shop, or an estimate.'),
    power: sharesOf('power'),
    thermostat: sharesOf('thermostat'),
    'thermostat-kind': sharesOf('thermostat-kind'),
    heater: sharesOf('heater'),
    reservoir: sharesOf('reservoir'),
    fan: sharesOf('fan'),
    'fan-switched-by': sharesOf('fan-switched-by'),
    pump: sharesOf('pump'),
    radiator: sharesOf('radiator'),
    turbo: sharesOf('turbo'),
    'egr-cooler': sharesOf('egr-cooler'),
    'oil-cooler': sharesOf('oil-cooler'),
    'transmission-cooler': sharesOf('transmission-cooler'),
  })
  .describe(
    'Share of the cars that come in with each layout, by feature: while no vehicle is chosen, a cause that only some can have counts for that share.',
  );
