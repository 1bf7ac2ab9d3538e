import { within } from './out-of-range.ts';
import { type Ohm, ohm, type Volt, volt } from './units.ts';

/** What a controller feeds a two-wire sensor through. */
export interface PullUp {
  /** Usually 5 V, 1 to 30 V. */
  readonly supply: Volt;
  /** Resistor inside the controller, 10 ohm to 1 Mohm. */
  readonly resistance: Ohm;
}

/** Share of the supply that an open wire leaves at the plug and a short leaves of it: past these no resistance is told. */
export const OPEN_ABOVE = 0.985;
export const SHORT_BELOW = 0.01;

/** Voltage across a sensor of a resistance. Ohm's law. @throws OutOfRange on any figure */
export function sensorVoltage(pullUp: PullUp, sensor: Ohm): Volt {
  const { supply, resistance } = checkPullUp(pullUp);
  const own = within('sensor resistance', sensor, 0, 1e9, 'ohm');
  return volt((supply * own) / (own + resistance));
}

/**
 * Resistance that stands between the two pins of the plug, wires included, from the voltage across it. Ohm's law.
 *
 * @param read with the sensor plugged in, `SHORT_BELOW` to `OPEN_ABOVE` of the supply
 * @throws OutOfRange on any figure
 */
export function resistanceForVolts(pullUp: PullUp, read: Volt): Ohm {
  const { supply, resistance } = checkPullUp(pullUp);
  const v = within('voltage at the plug', read, SHORT_BELOW * supply, OPEN_ABOVE * supply, 'V');
  return ohm((resistance * v) / (supply - v));
}

/**
 * Resistor inside the controller, from the voltage over a known one put in the sensor's place. Ohm's law.
 *
 * @param known 10 ohm to 100 kohm
 * @param read 2 to 98 % of the supply: nearer to an end the meter decides
 * @throws OutOfRange on any figure
 */
export function pullUpFrom(supply: Volt, known: Ohm, read: Volt): Ohm {
  const all = within('supply voltage', supply, 1, 30, 'V');
  const own = within('known resistance', known, 10, 100e3, 'ohm');
  const v = within('voltage at the plug', read, 0.02 * all, 0.98 * all, 'V');
  return ohm((own * (all - v)) / v);
}

function checkPullUp({ supply, resistance }: PullUp): PullUp {
  within('supply voltage', supply, 1, 30, 'V');
  within('pull-up resistance', resistance, 10, 1e6, 'ohm');
  return { supply, resistance };
}
