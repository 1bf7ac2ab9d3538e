/**
 * A figure that no formula here may be asked with.
 *
 * Every function of this folder answers with a finite number or throws this; never NaN, never a value moved
 * silently to the nearest limit. The parts are kept apart so that a page can say them in the reader's units.
 */
export class OutOfRange extends Error {
  /** What was given, in trade words: "glycol by mass", "altitude". */
  readonly quantity: string;
  /** What was found, in `unit`; may be NaN or infinite. */
  readonly value: number;
  /** Lowest and highest that would do, in `unit`; infinite where there is no limit on that side. */
  readonly limits: readonly [number, number];
  /** SI unit, "1" for a fraction. */
  readonly unit: string;

  constructor(quantity: string, value: number, limits: readonly [number, number], unit: string) {
    super(`${quantity} ${figure(value, unit)} is outside ${span(limits, unit)}`);
    this.name = 'OutOfRange';
    this.quantity = quantity;
    this.value = value;
    this.limits = limits;
    this.unit = unit;
  }
}

/**
 * Gives a value back when it is finite and inside its limits, ends included.
 *
 * @throws OutOfRange otherwise, also for NaN and for an infinite value
 */
export function within(
  quantity: string,
  value: number,
  lowest: number,
  highest: number,
  unit: string,
): number {
  if (Number.isFinite(value) && value >= lowest && value <= highest) return value;
  throw new OutOfRange(quantity, value, [lowest, highest], unit);
}

function figure(value: number, unit: string): string {
  const digits = Number.isFinite(value) ? String(Number(value.toPrecision(6))) : String(value);
  return unit === '1' ? digits : `${digits} ${unit}`;
}

function span([lowest, highest]: readonly [number, number], unit: string): string {
  if (highest === Infinity && lowest === -Infinity) return 'all finite numbers';
  if (highest === Infinity) return `${figure(lowest, unit)} and more`;
  if (lowest === -Infinity) return `${figure(highest, unit)} and less`;
  return `${figure(lowest, '1')} to ${figure(highest, unit)}`;
}
