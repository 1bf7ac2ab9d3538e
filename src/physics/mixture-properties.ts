import { checkCorrelated, type Mixture } from './glycol.ts';
import { CORRELATIONS, polynomial, surface } from './glycol-correlation.ts';
import { within } from './out-of-range.ts';
import { type Kelvin, kelvin, ZERO_CELSIUS } from './units.ts';

/** Highest temperature of the correlation, K. */
export const CORRELATION_HOT_END = (ZERO_CELSIUS + 100) as Kelvin;

/** The correlation's own freezing point of water is up to this much below 0 °C, K. */
const FREEZING_SLACK = 0.05;

/**
 * Temperature at which the first ice crystals form in a mixture.
 *
 * Melinder (2010). Other handbooks differ by up to 2.9 K (ethylene, 0.60) and 1.6 K (propylene, 0.55): show
 * `freezingRange` beside it.
 * @param mixture 0 to 0.6 glycol by mass
 * @returns K
 * @throws OutOfRange above 0.6 by mass, where sources disagree and only a range is honest
 */
export function freezingPoint(mixture: Mixture): Kelvin {
  const { freezing, midFraction } = CORRELATIONS[mixture.glycol];
  return kelvin(polynomial(freezing, checkCorrelated(mixture) - midFraction));
}

/**
 * Density of a mixture.
 *
 * Melinder (2010); 0.09 % low for plain water at 20 °C, up to 0.9 % below ASHRAE's inhibited fluids.
 * @param mixture 0 to 0.6 glycol by mass
 * @param temperature freezing point to 373.15 K
 * @returns kg/m3
 * @throws OutOfRange on either
 */
export function mixtureDensity(mixture: Mixture, temperature: Kelvin): number {
  return evaluate('density', mixture, temperature);
}

/**
 * Specific heat of a mixture.
 *
 * Melinder (2010), stated there to about 1 %; within 2.1 % of ASHRAE.
 * @param mixture 0 to 0.6 glycol by mass
 * @param temperature freezing point to 373.15 K
 * @returns J/(kg K)
 * @throws OutOfRange on either
 */
export function mixtureSpecificHeat(mixture: Mixture, temperature: Kelvin): number {
  return evaluate('specificHeat', mixture, temperature);
}

function evaluate(property: 'density' | 'specificHeat', mixture: Mixture, temperature: Kelvin): number {
  const correlation = CORRELATIONS[mixture.glycol];
  const freezes = freezingPoint(mixture) - FREEZING_SLACK;
  const t = within('coolant temperature', temperature, freezes, CORRELATION_HOT_END, 'K');
  return surface(
    correlation[property],
    t - correlation.midTemperature,
    mixture.fraction - correlation.midFraction,
  );
}
