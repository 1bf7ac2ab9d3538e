import { within } from './out-of-range.ts';
import { type Ohm, ohm, type Volt, volt } from './units.ts';

/** What a controller feeds a two-wire sensor through. */
export interface PullUp {
  /** Usually 5 V, 1 to 30 V. */
  readonly supply: Volt;
  /** Resistor inside the controller, 10 ohm to 1 Mohm. */
  readonly resistance: Ohm;
}

/** Voltage across a sensor of a resistance. Ohm's law. @throws OutOfRange on any figure */
export function sensorVoltage(pullUp: PullUp, sensor: Ohm): Volt {
  const { supply, resistance } = checkPullUp(pullUp);
  const own = within('sensor resistance', sensor, 0, 1e9, 'ohm');
  return volt((supply * own) / (own + resistance));
}

/**
 * Resistance of a sensor from the voltage across it. Ohm's law.
 *
 * @param across 0 to 99.9 % of the supply; at the full supply the wire is open
 * @throws OutOfRange on any figure
 */
export function sensorResistance(pullUp: PullUp, across: Volt): Ohm {
  const { supply, resistance } = checkPullUp(pullUp);
  const found = within('sensor voltage', across, 0, 0.999 * supply, 'V');
  return ohm((resistance * found) / (supply - found));
}

function checkPullUp({ supply, resistance }: PullUp): PullUp {
  within('supply voltage', supply, 1, 30, 'V');
  within('pull-up resistance', resistance, 10, 1e6, 'ohm');
  return { supply, resistance };
}
