import { within } from './out-of-range.ts';
import { fromCelsius, type Kelvin, type Metre, metre } from './units.ts';

/** A round wall with coolant inside and air outside. */
export interface RoundWall {
  readonly innerRadius: Metre;
  readonly outerRadius: Metre;
  /** W/(m·K), 0.05 to 500. */
  readonly conductivity: number;
}

/** Coolant hose: 32 mm inside, wall of 4.5 mm, EPDM rubber. Conductivity of a handbook range of 0.25 to 0.4, from memory. */
export const HOSE: RoundWall = { innerRadius: metre(0.016), outerRadius: metre(0.0205), conductivity: 0.3 };
/** Housing of 3 mm. Plastics of such parts have 0.2 to 0.35, from memory; the lowest is taken. */
export const PLASTIC: RoundWall = { innerRadius: metre(0.016), outerRadius: metre(0.019), conductivity: 0.2 };

/**
 * Heat given off by a surface in air, W/(m²·K), radiation with it: most in still air and most in the wind of a fan.
 * Common engineering range, from memory.
 */
export const HEAT_GIVEN_OFF = { still: 14, fan: 30 } as const;

/** Air round a hose of a warm engine; the colder it is, the further below the coolant the hose. From memory. */
export const AROUND_HOSE = fromCelsius(30);
/** Infrared is good to this, K: makers' usual statement, from memory. */
export const INFRARED_ERROR = 2;
/** A surface so far above what is in it is no reading error any more, K. */
export const HOSE_ABOVE = 3;

/**
 * How much colder the outside of a wall is than the coolant in it, K; 0 where the air is as warm.
 *
 * Fourier through the wall in series with Newton outside: (coolant − air) R / (R + 1/h), R = r ln(r/r inside)/λ by the outer surface;
 * the film inside is left out, which is under 1 K with flow.
 * @param coolant 230 to 420 K
 * @param around temperature of the air round it, 230 to 400 K
 * @param givenOff W/(m²·K), 1 to 200
 * @throws OutOfRange on any figure
 */
export function surfaceBelowCoolant(
  coolant: Kelvin,
  around: Kelvin,
  wall: RoundWall,
  givenOff: number,
): number {
  const inside = within('coolant temperature', coolant, 230, 420, 'K');
  const air = within('air round the hose', around, 230, 400, 'K');
  const h = within('heat given off', givenOff, 1, 200, 'W/(m2·K)');
  const conductivity = within('conductivity', wall.conductivity, 0.05, 500, 'W/(m·K)');
  const outer = within('outer radius', wall.outerRadius, 1e-3, 0.2, 'm');
  const inner = within('inner radius', wall.innerRadius, 1e-3, outer, 'm');
  const resistance = (outer * Math.log(outer / inner)) / conductivity;
  return Math.max(0, ((inside - air) * resistance) / (resistance + 1 / h));
}
