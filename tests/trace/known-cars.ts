/** Vehicles for tests, their figures written as a record writes them. */

import { FIGURES, type FigurePath } from '../../src/model/figures.ts';
import { readQuantity } from '../../src/model/quantity.ts';
import type { VehicleFigures } from '../../src/trace/vehicle.ts';

export function sheetWith(
  figures: Partial<Record<FigurePath, string>>,
  layout: VehicleFigures['layout'] = { thermostat: 'outlet side', fan: 'electric, one stage' },
): VehicleFigures {
  const read = Object.entries(figures).map(([path, text]) => {
    const result = readQuantity(text, FIGURES[path as FigurePath].dimension);
    if (!result.ok) throw new Error(`${path}: ${text}`);
    return [path, { quantity: result.quantity }] as const;
  });
  return { title: 'Test car', layout, figures: Object.fromEntries(read) };
}

export const STAMP_87 = sheetWith({
  'thermostat.opens': '87 °C',
  'running.cruise': '87 to 93 °C',
  'running.low-limit': '78 °C',
  'warm-up.time': '8 min',
  'fan.on': '97 °C',
  'fan.off': '92 °C',
  'warning.lamp': '116 °C',
});

export const STAMP_88 = sheetWith({
  'thermostat.opens': '88 °C',
  'running.cruise': '87 to 94 °C',
  'warm-up.time': '9 min',
  'fan.on': '96 °C',
  'fan.off': '92 °C',
  'warning.lamp': '115 °C',
});
