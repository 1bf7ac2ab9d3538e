import { within } from './out-of-range.ts';
import { type AbsolutePascal, absolutePascal, type Kelvin, kelvin } from './units.ts';

/** IAPWS R7-97(2012), table 34. */
const N1 = 0.11670521452767e4;
const N2 = -0.72421316703206e6;
const N3 = -0.17073846940092e2;
const N4 = 0.1202082470247e5;
const N5 = -0.32325550322333e7;
const N6 = 0.1491510861353e2;
const N7 = -0.48232657361591e4;
const N8 = 0.40511340542057e6;
const N9 = -0.23855557567849;
const N10 = 0.65017534844798e3;

/** Range of the saturation line, K and Pa. */
const TEMPERATURE_LIMITS = [273.15, 647.096] as const;
const PRESSURE_LIMITS = [611.213, 22.064e6] as const;

const MEGAPASCAL = 1e6;

/**
 * Pressure at which water boils at a temperature.
 *
 * IAPWS-IF97 region 4, equation 30.
 * @param temperature 273.15 to 647.096 K
 * @throws OutOfRange on temperature
 */
export function waterVapourPressure(temperature: Kelvin): AbsolutePascal {
  const t = within('water temperature', temperature, TEMPERATURE_LIMITS[0], TEMPERATURE_LIMITS[1], 'K');
  const theta = t + N9 / (t - N10);
  const a = theta ** 2 + N1 * theta + N2;
  const b = N3 * theta ** 2 + N4 * theta + N5;
  const c = N6 * theta ** 2 + N7 * theta + N8;
  return absolutePascal(((2 * c) / (-b + Math.sqrt(b ** 2 - 4 * a * c))) ** 4 * MEGAPASCAL);
}

/**
 * Temperature at which water boils under a pressure.
 *
 * IAPWS-IF97 region 4, equation 31.
 * @param pressure absolute, 611.213 Pa to 22.064 MPa
 * @throws OutOfRange on pressure
 */
export function waterBoilingPoint(pressure: AbsolutePascal): Kelvin {
  const p = within('absolute pressure', pressure, PRESSURE_LIMITS[0], PRESSURE_LIMITS[1], 'Pa');
  const beta = (p / MEGAPASCAL) ** 0.25;
  const e = beta ** 2 + N3 * beta + N6;
  const f = N1 * beta ** 2 + N4 * beta + N7;
  const g = N2 * beta ** 2 + N5 * beta + N8;
  const d = (2 * g) / (-f - Math.sqrt(f ** 2 - 4 * e * g));
  return kelvin((N10 + d - Math.sqrt((N10 + d) ** 2 - 4 * (N9 + N10 * d))) / 2);
}
