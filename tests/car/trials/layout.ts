/** The layout of a simulated car as the shelf has it. What the simulation does not know is as most cars have it. */
import type { CarLayout } from '../../../src/car/car.ts';
import { asMostAre, type Layout } from '../../../src/model/layout.ts';

/** @param withCondenserFan whether a fan before the condenser stands beside the big one */
export function shelfLayout(car: CarLayout, withCondenserFan: boolean): Layout {
  return asMostAre({
    power: 'combustion',
    thermostat: car.thermostat,
    'thermostat-kind': car.kind,
    'second-thermostat': 'none',
    heater: car.heater === 'valve-controlled' ? 'valve-controlled' : 'always flowing',
    'heater-pump': car.heater === 'auxiliary pump' ? 'in a heater hose' : 'none',
    reservoir: 'header tank',
    fan: car.fan,
    'fan-switched-by': car.fanSwitchedBy,
    'second-fan': withCondenserFan ? 'condenser fan' : 'none',
    pump: car.pump === 'electric' ? 'electric' : 'accessory belt',
    radiator: 'cross-flow',
    turbo: car.fuel === 'diesel' ? 'on the circuit' : 'none',
    'egr-cooler': car.fuel === 'diesel' ? 'on the circuit' : 'none',
    'oil-cooler': 'none',
    'transmission-cooler': 'none',
  });
}
