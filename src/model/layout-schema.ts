/** How a layout and a layout condition are written in a record. Apart from layout.ts so that pages need no zod. */
import { z } from 'zod';
import { LAYOUT, type Layout, type LayoutFeature, withImplied } from './layout.ts';
import { lineSchema } from './scalars.ts';

/** The layout of one vehicle. What nobody has looked at may be left out of the leavable features; what follows is added. */
export const layoutSchema = z
  .strictObject({
    power: z.enum(LAYOUT.power),
    thermostat: z.enum(LAYOUT.thermostat),
    'thermostat-kind': z.enum(LAYOUT['thermostat-kind']),
    'second-thermostat': z.enum(LAYOUT['second-thermostat']).optional(),
    heater: z.enum(LAYOUT.heater),
    'heater-pump': z.enum(LAYOUT['heater-pump']).optional(),
    'rear-heater': z.enum(LAYOUT['rear-heater']).optional(),
    'extra-heat': z.enum(LAYOUT['extra-heat']).optional(),
    reservoir: z.enum(LAYOUT.reservoir),
    'cap-place': z.enum(LAYOUT['cap-place']).optional(),
    fan: z.enum(LAYOUT.fan),
    'fan-switched-by': z.enum(LAYOUT['fan-switched-by']),
    'fan-electronics': z.enum(LAYOUT['fan-electronics']).optional(),
    'clutch-control': z.enum(LAYOUT['clutch-control']).optional(),
    'second-fan': z.enum(LAYOUT['second-fan']).optional(),
    'grille-shutter': z.enum(LAYOUT['grille-shutter']).optional(),
    pump: z.enum(LAYOUT.pump),
    'pump-switch': z.enum(LAYOUT['pump-switch']).optional(),
    'after-run-pump': z.enum(LAYOUT['after-run-pump']).optional(),
    radiator: z.enum(LAYOUT.radiator),
    turbo: z.enum(LAYOUT.turbo),
    'charge-air': z.enum(LAYOUT['charge-air']).optional(),
    'low-temperature-loop': z.enum(LAYOUT['low-temperature-loop']).optional(),
    'egr-cooler': z.enum(LAYOUT['egr-cooler']),
    'oil-cooler': z.enum(LAYOUT['oil-cooler']),
    'transmission-cooler': z.enum(LAYOUT['transmission-cooler']),
    'gas-vaporiser': z.enum(LAYOUT['gas-vaporiser']).optional(),
  })
  .transform((layout): Layout => withImplied(layout))
  .meta({ becomes: 'layout' });

/** A condition: the record holds only for vehicles whose layout has one of these values in each named feature. */
export const layoutConditionSchema = z
  .strictObject({
    power: z.array(z.enum(LAYOUT.power)).min(1).optional(),
    thermostat: z.array(z.enum(LAYOUT.thermostat)).min(1).optional(),
    'thermostat-kind': z.array(z.enum(LAYOUT['thermostat-kind'])).min(1).optional(),
    'second-thermostat': z.array(z.enum(LAYOUT['second-thermostat'])).min(1).optional(),
    heater: z.array(z.enum(LAYOUT.heater)).min(1).optional(),
    'heater-pump': z.array(z.enum(LAYOUT['heater-pump'])).min(1).optional(),
    'rear-heater': z.array(z.enum(LAYOUT['rear-heater'])).min(1).optional(),
    'extra-heat': z.array(z.enum(LAYOUT['extra-heat'])).min(1).optional(),
    reservoir: z.array(z.enum(LAYOUT.reservoir)).min(1).optional(),
    'cap-place': z.array(z.enum(LAYOUT['cap-place'])).min(1).optional(),
    fan: z.array(z.enum(LAYOUT.fan)).min(1).optional(),
    'fan-switched-by': z.array(z.enum(LAYOUT['fan-switched-by'])).min(1).optional(),
    'fan-electronics': z.array(z.enum(LAYOUT['fan-electronics'])).min(1).optional(),
    'clutch-control': z.array(z.enum(LAYOUT['clutch-control'])).min(1).optional(),
    'second-fan': z.array(z.enum(LAYOUT['second-fan'])).min(1).optional(),
    'grille-shutter': z.array(z.enum(LAYOUT['grille-shutter'])).min(1).optional(),
    pump: z.array(z.enum(LAYOUT.pump)).min(1).optional(),
    'pump-switch': z.array(z.enum(LAYOUT['pump-switch'])).min(1).optional(),
    'after-run-pump': z.array(z.enum(LAYOUT['after-run-pump'])).min(1).optional(),
    radiator: z.array(z.enum(LAYOUT.radiator)).min(1).optional(),
    turbo: z.array(z.enum(LAYOUT.turbo)).min(1).optional(),
    'charge-air': z.array(z.enum(LAYOUT['charge-air'])).min(1).optional(),
    'low-temperature-loop': z.array(z.enum(LAYOUT['low-temperature-loop'])).min(1).optional(),
    'egr-cooler': z.array(z.enum(LAYOUT['egr-cooler'])).min(1).optional(),
    'oil-cooler': z.array(z.enum(LAYOUT['oil-cooler'])).min(1).optional(),
    'transmission-cooler': z.array(z.enum(LAYOUT['transmission-cooler'])).min(1).optional(),
    'gas-vaporiser': z.array(z.enum(LAYOUT['gas-vaporiser'])).min(1).optional(),
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
    'second-thermostat': sharesOf('second-thermostat'),
    heater: sharesOf('heater'),
    'heater-pump': sharesOf('heater-pump'),
    'rear-heater': sharesOf('rear-heater'),
    'extra-heat': sharesOf('extra-heat'),
    reservoir: sharesOf('reservoir'),
    'cap-place': sharesOf('cap-place'),
    fan: sharesOf('fan'),
    'fan-switched-by': sharesOf('fan-switched-by'),
    'fan-electronics': sharesOf('fan-electronics'),
    'clutch-control': sharesOf('clutch-control'),
    'second-fan': sharesOf('second-fan'),
    'grille-shutter': sharesOf('grille-shutter'),
    pump: sharesOf('pump'),
    'pump-switch': sharesOf('pump-switch'),
    'after-run-pump': sharesOf('after-run-pump'),
    radiator: sharesOf('radiator'),
    turbo: sharesOf('turbo'),
    'charge-air': sharesOf('charge-air'),
    'low-temperature-loop': sharesOf('low-temperature-loop'),
    'egr-cooler': sharesOf('egr-cooler'),
    'oil-cooler': sharesOf('oil-cooler'),
    'transmission-cooler': sharesOf('transmission-cooler'),
    'gas-vaporiser': sharesOf('gas-vaporiser'),
  })
  .describe(
    'Share of the cars that come in with each layout, by feature: while no vehicle is chosen, a cause that only some can have counts for that share.',
  );
