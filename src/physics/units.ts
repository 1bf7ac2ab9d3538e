import { within } from './out-of-range.ts';

/**
 * SI quantities as types, so that a gauge pressure, a Celsius temperature or a volume per cent does not compile
 * where an absolute pressure, a kelvin or a mass fraction is meant.
 *
 * Conventions, said once:
 * - Temperature is absolute. A difference of temperature has its own type.
 * - Pressure is absolute or gauge by type. Gauge is what a cap or a tester shows: above the air outside.
 * - A volume fraction of glycol is by volumes before mixing at 20 °C, as a workshop measures them out.
 */

declare const kind: unique symbol;
type Si<Kind extends string> = number & { readonly [kind]: Kind };

/** Absolute temperature, K. */
export type Kelvin = Si<'temperature'>;
/** Difference of two temperatures, K. */
export type KelvinDifference = Si<'temperature difference'>;
/** Absolute pressure, Pa. */
export type AbsolutePascal = Si<'absolute pressure'>;
/** Pressure above the air outside, Pa; negative in a vacuum. */
export type GaugePascal = Si<'gauge pressure'>;
/** Glycol by mass, 0 to 1. */
export type MassFraction = Si<'mass fraction'>;
/** Glycol by volume before mixing at 20 °C, 0 to 1. */
export type VolumeFraction = Si<'volume fraction'>;
/** Volume, m3. */
export type CubicMetre = Si<'volume'>;
/** Difference of two volumes, m3. */
export type CubicMetreDifference = Si<'volume difference'>;
/** Length or altitude, m. */
export type Metre = Si<'length'>;
/** Area, m2. */
export type SquareMetre = Si<'area'>;
/** Force, N. */
export type Newton = Si<'force'>;
/** Torque, N·m. */
export type NewtonMetre = Si<'torque'>;
/** Time, s. */
export type Second = Si<'time'>;
/** Power, W. */
export type Watt = Si<'power'>;
/** Heat, J. */
export type Joule = Si<'heat'>;
/** Volume flow, m3/s. */
export type CubicMetrePerSecond = Si<'volume flow'>;
/** Electric resistance, ohm. */
export type Ohm = Si<'resistance'>;
/** Electric potential difference, V. */
export type Volt = Si<'voltage'>;
/** Electric current, A. */
export type Ampere = Si<'current'>;

/** 0 °C in kelvin, by definition of the Celsius scale. */
export const ZERO_CELSIUS = 273.15;
/** Standard atmosphere at sea level, Pa: ISO 2533:1975. */
export const STANDARD_ATMOSPHERE = 101325 as AbsolutePascal;

/** @throws OutOfRange below absolute zero or when not finite */
export function kelvin(value: number): Kelvin {
  return within('temperature', value, 0, Infinity, 'K') as Kelvin;
}

/** Kelvin from degrees Celsius. @throws OutOfRange below absolute zero or when not finite */
export function fromCelsius(value: number): Kelvin {
  return kelvin(value + ZERO_CELSIUS);
}

/** Degrees Celsius from kelvin. */
export function toCelsius(value: Kelvin): number {
  return value - ZERO_CELSIUS;
}

/** @throws OutOfRange when not finite */
export function kelvinDifference(value: number): KelvinDifference {
  return within('temperature difference', value, -Infinity, Infinity, 'K') as KelvinDifference;
}

/** @throws OutOfRange below zero or when not finite */
export function absolutePascal(value: number): AbsolutePascal {
  return within('absolute pressure', value, 0, Infinity, 'Pa') as AbsolutePascal;
}

/** @throws OutOfRange when not finite */
export function gaugePascal(value: number): GaugePascal {
  return within('gauge pressure', value, -Infinity, Infinity, 'Pa') as GaugePascal;
}

/** Absolute from gauge pressure. @throws OutOfRange below zero */
export function toAbsolute(gauge: GaugePascal, outside: AbsolutePascal): AbsolutePascal {
  return absolutePascal(gauge + outside);
}

/** @throws OutOfRange outside 0 to 1 */
export function massFraction(value: number): MassFraction {
  return within('glycol by mass', value, 0, 1, '1') as MassFraction;
}

/** @throws OutOfRange outside 0 to 1 */
export function volumeFraction(value: number): VolumeFraction {
  return within('glycol by volume', value, 0, 1, '1') as VolumeFraction;
}

/** @throws OutOfRange below zero or when not finite */
export function cubicMetre(value: number): CubicMetre {
  return within('volume', value, 0, Infinity, 'm3') as CubicMetre;
}

/** Cubic metres from litres. @throws OutOfRange below zero or when not finite */
export function fromLitres(value: number): CubicMetre {
  return cubicMetre(value / 1000);
}

/** @throws OutOfRange when not finite */
export function cubicMetreDifference(value: number): CubicMetreDifference {
  return within('volume difference', value, -Infinity, Infinity, 'm3') as CubicMetreDifference;
}

/** @throws OutOfRange when not finite */
export function metre(value: number): Metre {
  return within('length', value, -Infinity, Infinity, 'm') as Metre;
}

/** @throws OutOfRange below zero or when not finite */
export function squareMetre(value: number): SquareMetre {
  return within('area', value, 0, Infinity, 'm2') as SquareMetre;
}

/** @throws OutOfRange below zero or when not finite */
export function newton(value: number): Newton {
  return within('force', value, 0, Infinity, 'N') as Newton;
}

/** @throws OutOfRange below zero or when not finite */
export function newtonMetre(value: number): NewtonMetre {
  return within('torque', value, 0, Infinity, 'N·m') as NewtonMetre;
}

/** @throws OutOfRange below zero or when not finite */
export function second(value: number): Second {
  return within('time', value, 0, Infinity, 's') as Second;
}

/** @throws OutOfRange below zero or when not finite */
export function watt(value: number): Watt {
  return within('power', value, 0, Infinity, 'W') as Watt;
}

/** @throws OutOfRange when not finite */
export function joule(value: number): Joule {
  return within('heat', value, -Infinity, Infinity, 'J') as Joule;
}

/** @throws OutOfRange below zero or when not finite */
export function cubicMetrePerSecond(value: number): CubicMetrePerSecond {
  return within('flow', value, 0, Infinity, 'm3/s') as CubicMetrePerSecond;
}

/** @throws OutOfRange below zero or when not finite */
export function ohm(value: number): Ohm {
  return within('resistance', value, 0, Infinity, 'ohm') as Ohm;
}

/** @throws OutOfRange below zero or when not finite */
export function volt(value: number): Volt {
  return within('voltage', value, 0, Infinity, 'V') as Volt;
}

/** @throws OutOfRange below zero or when not finite */
export function ampere(value: number): Ampere {
  return within('current', value, 0, Infinity, 'A') as Ampere;
}
