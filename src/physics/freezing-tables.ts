import type { Glycol } from './glycol.ts';
import type { Points } from './interpolate.ts';

type Row = readonly [volumeFraction: number, massFraction: number, celsius: number];

/**
 * ASHRAE Handbook - Fundamentals (2001), physical properties of secondary coolants, as carried by the open CoolProp data:
 * volume fraction (on ASHRAE's own base), mass fraction, °C.
 */
const ASHRAE: Readonly<Record<Glycol, readonly Row[]>> = {
  ethylene: [
    [0, 0, 0],
    [0.044, 0.05, -1.4],
    [0.089, 0.1, -3.2],
    [0.136, 0.15, -5.4],
    [0.181, 0.2, -7.8],
    [0.229, 0.25, -10.7],
    [0.277, 0.3, -14.1],
    [0.326, 0.35, -17.9],
    [0.375, 0.4, -22.3],
    [0.425, 0.45, -27.5],
    [0.476, 0.5, -33.8],
    [0.527, 0.55, -41.1],
    [0.578, 0.6, -48.3],
  ],
  propylene: [
    [0, 0, 0],
    [0.048, 0.05, -1.6],
    [0.096, 0.1, -3.3],
    [0.145, 0.15, -5.1],
    [0.194, 0.2, -7.1],
    [0.244, 0.25, -9.6],
    [0.294, 0.3, -12.7],
    [0.344, 0.35, -16.4],
    [0.396, 0.4, -21.1],
    [0.447, 0.45, -26.7],
    [0.499, 0.5, -33.5],
    [0.55, 0.55, -41.6],
    [0.6, 0.6, -51.1],
  ],
};

/** ASHRAE freezing point by mass, °C. */
export const ASHRAE_BY_MASS: Readonly<Record<Glycol, Points>> = {
  ethylene: ASHRAE.ethylene.map(([, mass, celsius]) => [mass, celsius]),
  propylene: ASHRAE.propylene.map(([, mass, celsius]) => [mass, celsius]),
};

/** ASHRAE freezing point by volume, °C. */
export const ASHRAE_BY_VOLUME: Readonly<Record<Glycol, Points>> = {
  ethylene: ASHRAE.ethylene.map(([volume, , celsius]) => [volume, celsius]),
  propylene: ASHRAE.propylene.map(([volume, , celsius]) => [volume, celsius]),
};

/**
 * Melinder's table for propylene, °C by mass, where his own polynomial runs up to 1.6 K warmer (fluid MPG2, refit by Skovrup).
 * For ethylene table and polynomial agree within 0.1 K.
 */
export const MELINDER_PROPYLENE_TABLE: Points = [
  [0.15, -5.0],
  [0.2, -7.16],
  [0.25, -9.97],
  [0.3, -13.08],
  [0.35, -16.58],
  [0.4, -20.79],
  [0.45, -26.17],
  [0.5, -33.1],
  [0.55, -41.75],
];

/**
 * Ethylene glycol above the correlation: coldest and warmest freezing point that sources support, °C by mass.
 *
 * 0.60: Melinder and ASHRAE. To 0.75: ice side and glycol side cross near -50 °C and hydrates form; ASHRAE prints only
 * "below -50"; the two curves carried on meet near -61 °C, the -69 °C of trade text has no support. From 0.80: ideal
 * solubility of the glycol (heat of fusion 9.96 kJ/mol) and ASHRAE's table, both from memory, agree within 3 K.
 * Pure: -12.69 (Ott, Goates and Lamb 1972) and -13.0 °C (Perry 8th ed.).
 */
export const STRONG_ETHYLENE: { readonly coldest: Points; readonly warmest: Points } = {
  coldest: [
    [0.6, -52],
    [0.65, -61],
    [0.7, -58],
    [0.75, -54],
    [0.8, -48],
    [0.85, -39],
    [0.9, -32],
    [0.95, -23],
    [1, -13],
  ],
  warmest: [
    [0.6, -48],
    [0.65, -48],
    [0.7, -48],
    [0.75, -47],
    [0.8, -43],
    [0.85, -36],
    [0.9, -29],
    [0.95, -19],
    [1, -12.6],
  ],
};

/** Propylene glycol above the correlation, °C: no ice seen below about -50, a glass near -60 (producers' tables, from memory). */
export const STRONG_PROPYLENE = { coldest: -60, warmest: -50 } as const;
