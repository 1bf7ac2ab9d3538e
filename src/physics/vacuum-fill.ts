import { GRAVITY } from './atmosphere.ts';
import { mixtureVapourPressure } from './boiling.ts';
import type { Mixture } from './glycol.ts';
import { mixtureDensity } from './mixture-properties.ts';
import { within } from './out-of-range.ts';
import {
  type AbsolutePascal,
  type CubicMetre,
  cubicMetre,
  type GaugePascal,
  gaugePascal,
  type Kelvin,
  type Metre,
} from './units.ts';

/** A drained system that is drawn down and lets the coolant follow. */
export interface VacuumFill {
  /** All that is empty: what came out and the air that was above it, 0.0005 to 0.2 m3. */
  readonly empty: CubicMetre;
  /** Drawn down to this, below nothing. */
  readonly vacuum: GaugePascal;
  /** Air pressure outside. */
  readonly outside: AbsolutePascal;
  /** Engine and coolant, 263 to 353 K. */
  readonly temperature: Kelvin;
  readonly mixture: Mixture;
  /** How far the container stands below the neck, 0 to 3 m. */
  readonly lift: Metre;
}

export interface VacuumDraw {
  /** Coolant that follows by itself, m3; 0 when the vacuum does not lift it. */
  readonly draws: CubicMetre;
  /** Air that stays, once the adapter is off and the air outside presses on it, m3. */
  readonly airLeft: CubicMetre;
  /** Deepest that a gauge can show here, Pa: there the coolant left inside boils. */
  readonly deepest: GaugePascal;
}

/**
 * What a vacuum draws in, and what air stays.
 *
 * Boyle: the dry air left presses itself together until the air outside, less the lift, stands against it; vapour over wet walls
 * turns back to water. One temperature, hoses back in shape at the end. Good to what the gauge is: 2 kPa is a fiftieth of the empty room.
 * @throws OutOfRange on any figure, and when the gauge is below `deepest`
 */
export function vacuumDraw(fill: VacuumFill): VacuumDraw {
  const empty = within('empty room', fill.empty, 0.5e-3, 0.2, 'm3');
  const outside = within('air pressure', fill.outside, 40e3, 110e3, 'Pa');
  const temperature = within('coolant temperature', fill.temperature, 263, 353.15, 'K') as Kelvin;
  const lift = within('lift of the coolant', fill.lift, 0, 3, 'm');
  const vapour = mixtureVapourPressure(fill.mixture, temperature);
  const deepest = vapour - outside;
  const vacuum = within('vacuum', fill.vacuum, deepest, 0, 'Pa');
  const dryAir = vacuum - deepest;
  const head = mixtureDensity(fill.mixture, temperature) * GRAVITY * lift;
  const roomAt = (pressure: number) => Math.min(empty, (empty * dryAir) / (pressure - vapour));
  return {
    draws: cubicMetre(empty - roomAt(Math.max(outside - head, vapour + 1))),
    airLeft: cubicMetre(roomAt(outside)),
    deepest: gaugePascal(deepest),
  };
}
