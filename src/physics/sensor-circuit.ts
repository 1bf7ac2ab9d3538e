import { within } from './out-of-range.ts';
import { type Ohm, type Volt, volt } from './units.ts';

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

function checkPullUp({ supply, resistance }: PullUp): PullUp {
  within('supply voltage', supply, 1, 30, 'V');
  within('pull-up resistance', resistance, 10, 1e6, 'ohm');
  return { supply, resistance };
}
