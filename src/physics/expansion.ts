import { LARGEST_SYSTEM } from './flushing.ts';
import type { Mixture } from './glycol.ts';
import { CORRELATION_HOT_END, mixtureDensity } from './mixture-properties.ts';
import { within } from './out-of-range.ts';
import {
  type CubicMetre,
  type CubicMetreDifference,
  cubicMetreDifference,
  type Kelvin,
  kelvin,
  type Metre,
  metre,
  type SquareMetre,
} from './units.ts';
import { waterDensity } from './water-density.ts';

/** So near to it the mark is right: it is drawn for a cold engine, not for one temperature, m. Common practice, no source. */
export const AT_THE_MARK = 0.01;
/** As far as a density is carried on past its table, K: 120 °C. */
const CARRIED_ON_TO = 393.15;

/**
 * Volume at one temperature as a multiple of the volume at another.
 *
 * Ratio of densities: Melinder (2010) for mixtures, Kell (1975) for plain water. Handbooks differ by up to 0.5 % of the volume
 * over 70 K.
 * Past 100 °C, where the tables of mixtures end, the density goes on falling as it did over the last 10 K; plain water does so within 0.1 % of IAPWS.
 * @param mixture 0 to 0.6 glycol by mass
 * @param from freezing point to 393.15 K
 * @param to as `from`
 * @throws OutOfRange on any of them
 */
export function volumeRatio(mixture: Mixture, from: Kelvin, to: Kelvin): number {
  return density(mixture, from) / density(mixture, to);
}

/**
 * Volume a filling gains from one temperature to another; negative when it cools.
 *
 * Rigid engine and hoses; their own growth takes about a tenth of it back.
 * @param volume of liquid at `from`, 0 to 0.2 m3
 * @throws OutOfRange on any of them; limits as `volumeRatio`
 */
export function expansion(
  mixture: Mixture,
  volume: CubicMetre,
  from: Kelvin,
  to: Kelvin,
): CubicMetreDifference {
  const liquid = within('coolant volume', volume, 0, LARGEST_SYSTEM, 'm3');
  return cubicMetreDifference(liquid * (volumeRatio(mixture, from, to) - 1));
}

/** A system with the bottle its level is read in. */
export interface FilledSystem {
  readonly mixture: Mixture;
  /** Liquid in the whole system at `coldAt`, 0 to 0.2 m3. */
  readonly volume: CubicMetre;
  /** Temperature at which the level belongs at the cold mark. */
  readonly coldAt: Kelvin;
  /** Inside area of the bottle seen from above, 0.001 to 0.2 m2. */
  readonly bottleArea: SquareMetre;
}

/**
 * Height of the level above the cold mark once the coolant has another temperature; negative below it.
 *
 * @param now temperature of the coolant, the same throughout
 * @throws OutOfRange on any of them; limits as `volumeRatio`
 */
export function levelAboveColdMark(system: FilledSystem, now: Kelvin): Metre {
  const area = within('bottle area', system.bottleArea, 0.001, 0.2, 'm2');
  return metre(expansion(system.mixture, system.volume, system.coldAt, now) / area);
}

/**
 * Room left in the bottle at the hottest, once the level stands at the cold mark when cold; negative when it overflows.
 *
 * @param room volume of the bottle from the cold mark to the brim, 0 to 0.2 m3
 * @throws OutOfRange on any of them; limits as `volumeRatio`
 */
export function roomWhenHot(system: FilledSystem, room: CubicMetre, hottest: Kelvin): CubicMetreDifference {
  const above = within('room in the bottle', room, 0, LARGEST_SYSTEM, 'm3');
  return cubicMetreDifference(above - expansion(system.mixture, system.volume, system.coldAt, hottest));
}

function density(mixture: Mixture, temperature: Kelvin): number {
  if (mixture.fraction === 0) return waterDensity(temperature);
  if (temperature <= CORRELATION_HOT_END) return mixtureDensity(mixture, temperature);
  const beyond = within('coolant temperature', temperature, 0, CARRIED_ON_TO, 'K') - CORRELATION_HOT_END;
  const end = mixtureDensity(mixture, kelvin(CORRELATION_HOT_END));
  const before = mixtureDensity(mixture, kelvin(CORRELATION_HOT_END - 10));
  return end + ((end - before) / 10) * beyond;
}
