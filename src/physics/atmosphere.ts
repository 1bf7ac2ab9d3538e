import { within } from './out-of-range.ts';
import { type AbsolutePascal, absolutePascal, type Metre, STANDARD_ATMOSPHERE } from './units.ts';

/** ISO 2533:1975, same as ICAO Doc 7488 and US Standard Atmosphere 1976 in the troposphere. */
const SEA_LEVEL_TEMPERATURE = 288.15;
const LAPSE_RATE = 0.0065;
/** Standard fall, m/s²: ISO 2533:1975. */
export const GRAVITY = 9.80665;
const AIR_CONSTANT = 287.05287;

/** Altitudes that people drive at, with room on both sides, m. */
const ALTITUDE_LIMITS = [-500, 6000] as const;

/**
 * Air pressure of the standard atmosphere.
 *
 * ISO 2533:1975; weather moves it by about 3 % either way. Altitude is geopotential; the map's geometric altitude gives 24 Pa more at
 * 5,000 m, which is 0.01 K of boiling.
 * @param altitude -500 to 6,000 m
 * @throws OutOfRange on altitude
 */
export function atmosphericPressure(altitude: Metre): AbsolutePascal {
  const height = within('altitude', altitude, ALTITUDE_LIMITS[0], ALTITUDE_LIMITS[1], 'm');
  const cooling = 1 - (LAPSE_RATE * height) / SEA_LEVEL_TEMPERATURE;
  return absolutePascal(STANDARD_ATMOSPHERE * cooling ** (GRAVITY / (AIR_CONSTANT * LAPSE_RATE)));
}
