import type { Glycol } from './glycol.ts';

/**
 * Coefficients of the correlation for glycol and water.
 *
 * Melinder (2010), Properties of Secondary Working Fluids for Indirect Systems, 2nd ed., IIR, as carried by the open
 * CoolProp 8.0.0 data (fluids MEG, MPG). Fitted for 0 to 0.6 by mass, freezing point to 100 °C. The small
 * temperature terms of the freezing polynomial are left out; they change it by less than 0.002 K.
 */
export interface Correlation {
  /** Temperature the powers count from, K. */
  readonly midTemperature: number;
  /** Mass fraction the powers count from. */
  readonly midFraction: number;
  /** kg/m3; row = power of temperature, column = power of fraction. */
  readonly density: readonly (readonly number[])[];
  /** J/(kg K); as density. */
  readonly specificHeat: readonly (readonly number[])[];
  /** K; by power of fraction. */
  readonly freezing: readonly number[];
}

/** Coefficients by glycol. */
export const CORRELATIONS: Readonly<Record<Glycol, Correlation>> = {
  ethylene: {
    midTemperature: 304.878,
    midFraction: 0.308462,
    density: [
      [1034, 131.1, 0.749, -106.2, -96.23, 489.1],
      [-0.4781, -0.6876, 0.7855, 1.229, -7.211],
      [-0.002692, 0.004805, -0.003995, -0.01153],
      [4.725e-6, 1.69e-6, 4.982e-5],
    ],
    specificHeat: [
      [3737, -1799, -993.3, 2610, 1537, -16180],
      [2.93, 10.46, 3.516, -1.189, -42.72],
      [-0.004675, -0.04147, 0.05109, -0.1643],
      [-1.389e-5, 1.847e-5, -0.0007138],
    ],
    freezing: [257.9, -80.8, -133.4, -72.93, 100.6, 11.4],
  },
  propylene: {
    midTemperature: 305.8583,
    midFraction: 0.307031,
    density: [
      [1018, 76.04, -24.98, -155, -113.1, 234.2],
      [-0.5406, -0.945, 0.27, 2.829, -2.221],
      [-0.002666, 0.005541, -0.004018, -0.007175],
      [1.347e-5, -1.343e-5, 3.376e-5],
    ],
    specificHeat: [
      [3882, -1304, -1598, 353.9, 5000, -4959],
      [2.699, 5.07, 0.9534, 31.02, -71.35],
      [-0.001659, -0.004752, 0.1167, -0.295],
      [-1.032e-5, 0.0001522, -0.000487],
    ],
    freezing: [259.9, -66.31, -109.4, -228.3, -340.9, 146.5],
  },
};

/** Sum of C[j] x^j. */
export function polynomial(coefficients: readonly number[], x: number): number {
  return coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0);
}

/** Sum of C[i][j] t^i x^j. */
export function surface(coefficients: readonly (readonly number[])[], t: number, x: number): number {
  return polynomial(
    coefficients.map((row) => polynomial(row, x)),
    t,
  );
}
