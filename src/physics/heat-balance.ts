import type { Mixture } from './glycol.ts';
import { mixtureDensity, mixtureSpecificHeat } from './mixture-properties.ts';
import { within } from './out-of-range.ts';
import {
  type CubicMetre,
  type CubicMetrePerSecond,
  cubicMetrePerSecond,
  fromCelsius,
  type Joule,
  joule,
  type Kelvin,
  kelvin,
  type Watt,
  watt,
} from './units.ts';

/** Difference between the two hoses in working order, K. Common practice, no source. */
export const USUAL_DIFFERENCE = { radiator: [4, 15], heater: [5, 20] } as const;

/** So near to a limit two thermometers, good to a degree each, decide, K. Common practice, no source. */
export const NEAR_A_LIMIT = 2;
/** Colder than this going in, the engine has not come to where either is judged, K: 70 °C. Common practice, no source. */
export const WARM = 343.15;

/** Coolant in and out of a radiator or heater core. */
export interface Temperatures {
  readonly hot: Kelvin;
  /** Not above `hot`. */
  readonly cold: Kelvin;
}

/** Most coolant any road engine moves, 1,000 l/min. */
const HIGHEST_FLOW = 1 / 60;
/** More than any road vehicle's radiator gives off, W. */
const HIGHEST_POWER = 1e6;
/** Below this difference two thermometers decide, not the coolant, K. */
const LEAST_DIFFERENCE = 0.1;

/**
 * Heat that coolant gives off in a radiator or heater core.
 *
 * Q = flow x density x specific heat x difference, both properties at the mean temperature (Melinder).
 * @param mixture 0 to 0.6 glycol by mass
 * @param flow 0 to 1/60 m3/s (1,000 l/min)
 * @throws OutOfRange on any figure, and when cold is above hot
 */
export function heatGivenOff(mixture: Mixture, flow: CubicMetrePerSecond, between: Temperatures): Watt {
  const moved = within('coolant flow', flow, 0, HIGHEST_FLOW, 'm3/s');
  return watt(moved * heatPerVolume(mixture, between));
}

/**
 * Coolant flow that a heat and two temperatures ask for.
 *
 * @param power 0 to 1 MW
 * @throws OutOfRange on any figure, and when hot is less than 0.1 K above cold
 */
export function flowForHeat(mixture: Mixture, power: Watt, between: Temperatures): CubicMetrePerSecond {
  const heat = within('heat given off', power, 0, HIGHEST_POWER, 'W');
  within('temperature difference', between.hot - between.cold, LEAST_DIFFERENCE, Infinity, 'K');
  return cubicMetrePerSecond(heat / heatPerVolume(mixture, between));
}

/**
 * Heat to warm a filling from one temperature to another.
 *
 * Simpson's rule over the specific heat, which is a cubic in temperature, so exact for it.
 * @param mixture 0 to 0.6 glycol by mass
 * @param volume as it measures at 20 °C, 0 to 0.2 m3
 * @throws OutOfRange on any figure
 */
export function heatToWarm(mixture: Mixture, volume: CubicMetre, from: Kelvin, to: Kelvin): Joule {
  const liquid = within('coolant volume', volume, 0, 0.2, 'm3');
  const mass = liquid * mixtureDensity(mixture, fromCelsius(20));
  const [first, middle, last] = [from, kelvin((from + to) / 2), to].map((t) =>
    mixtureSpecificHeat(mixture, t),
  );
  return joule((mass * (to - from) * ((first ?? 0) + 4 * (middle ?? 0) + (last ?? 0))) / 6);
}

/** Heat per volume of coolant that cools from hot to cold, J/m3. */
function heatPerVolume(mixture: Mixture, { hot, cold }: Temperatures): number {
  const difference = within('temperature difference', hot - cold, 0, Infinity, 'K');
  const mean = kelvin((hot + cold) / 2);
  return mixtureDensity(mixture, mean) * mixtureSpecificHeat(mixture, mean) * difference;
}
