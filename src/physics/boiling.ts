import { atmosphericPressure } from './atmosphere.ts';
import { checkStrength, type Glycol, type Mixture, MOLAR_MASS } from './glycol.ts';
import { glycolVapourPressure } from './glycol-vapour-pressure.ts';
import { within } from './out-of-range.ts';
import { findWhere } from './root.ts';
import {
  type AbsolutePascal,
  absolutePascal,
  type GaugePascal,
  type Kelvin,
  type KelvinDifference,
  kelvin,
  kelvinDifference,
  type Metre,
  massFraction,
  STANDARD_ATMOSPHERE,
  toAbsolute,
  ZERO_CELSIUS,
} from './units.ts';
import { waterVapourPressure } from './water-saturation.ts';

/**
 * One-parameter Margules constant, by least squares in temperature to the 19 measured boiling points of Kamihama et al.,
 * J. Chem. Eng. Data 57 (2012) 339: mean error 0.13 K, largest 0.30 K. Propylene: no measured point at one
 * atmosphere was to be had, so ideal (Raoult); within 1.1 K of ASHRAE's table up to 0.6 by mass.
 */
const MARGULES: Readonly<Record<Glycol, number>> = { ethylene: -0.0965, propylene: 0 };

/** Share of a concentrate that is water its label does not count. Common practice, no source. */
const UNCOUNTED_WATER = 0.03;

/** From the thin air of 6,000 m with a vacuum in the system to more than any cap, Pa absolute. */
const PRESSURE_LIMITS = [20e3, 500e3] as const;
/** From the freezing of water to where pure glycol boils under the highest pressure, K. */
const TEMPERATURE_LIMITS = [ZERO_CELSIUS, 560] as const;

/**
 * Pressure of the vapour over a mixture: the absolute pressure under which it boils at this temperature.
 *
 * Raoult's law with activity by Margules; water by IAPWS-IF97, glycol by Perry.
 * @param mixture 0 to 1 glycol by mass
 * @param temperature 273.15 to 560 K
 * @throws OutOfRange on either
 */
export function mixtureVapourPressure(mixture: Mixture, temperature: Kelvin): AbsolutePascal {
  checkStrength(mixture);
  within('coolant temperature', temperature, TEMPERATURE_LIMITS[0], TEMPERATURE_LIMITS[1], 'K');
  return absolutePascal(vapourPressure(mixture, temperature));
}

/**
 * Temperature at which a mixture begins to boil under a pressure.
 *
 * Same model as `mixtureVapourPressure`. See `boilingUncertainty` for how far to trust it.
 * @param mixture 0 to 1 glycol by mass
 * @param pressure absolute, not gauge, 20 to 500 kPa
 * @throws OutOfRange on either
 */
export function boilingPoint(mixture: Mixture, pressure: AbsolutePascal): Kelvin {
  checkStrength(mixture);
  const p = within('absolute pressure', pressure, PRESSURE_LIMITS[0], PRESSURE_LIMITS[1], 'Pa');
  return kelvin(findWhere((t) => vapourPressure(mixture, t as Kelvin), p, ...TEMPERATURE_LIMITS));
}

/**
 * Temperature at which a mixture boils in a system closed by a cap, at an altitude.
 *
 * @param mixture 0 to 1 glycol by mass
 * @param cap opening pressure of the cap as stamped, gauge, 0 to 300 kPa; 0 for an open system
 * @param altitude -500 to 6,000 m
 * @throws OutOfRange on any of them
 */
export function boilingPointUnderCap(mixture: Mixture, cap: GaugePascal, altitude: Metre): Kelvin {
  const gauge = within('cap pressure', cap, 0, 300e3, 'Pa') as GaugePascal;
  return boilingPoint(mixture, toAbsolute(gauge, atmosphericPressure(altitude)));
}

/** How far a coolant is from boiling. */
export interface BoilMargin {
  /** Boiling point with the cap shut and holding, K. */
  readonly boilsAt: Kelvin;
  /** Boiling point less temperature, K; negative when it boils already. */
  readonly margin: KelvinDifference;
  /** Above this the coolant flashes into steam when the cap is opened, K. */
  readonly flashesAt: Kelvin;
  /** Temperature less `flashesAt`, K; positive means it would flash now. */
  readonly aboveFlash: KelvinDifference;
}

/**
 * Margin to boiling of a running system, and whether opening the cap would flash it.
 *
 * Not flashing is not the same as safe to open: hot coolant scalds far below its boiling point.
 * @param temperature of the coolant, 200 to 600 K
 * @throws OutOfRange on any of them; limits as `boilingPointUnderCap`
 */
export function boilMargin(
  temperature: Kelvin,
  mixture: Mixture,
  cap: GaugePascal,
  altitude: Metre,
): BoilMargin {
  const now = within('coolant temperature', temperature, 200, 600, 'K');
  const boilsAt = boilingPointUnderCap(mixture, cap, altitude);
  const flashesAt = flashTemperature(mixture, altitude);
  return {
    boilsAt,
    margin: kelvinDifference(boilsAt - now),
    flashesAt,
    aboveFlash: kelvinDifference(now - flashesAt),
  };
}

/** Temperature above which opening the cap flashes coolant into steam: its boiling point in the open, K. */
export function flashTemperature(mixture: Mixture, altitude: Metre): Kelvin {
  return boilingPoint(mixture, atmosphericPressure(altitude));
}

/** Error of a boiling point, either way, K. */
export interface BoilingUncertainty {
  /** For neat glycol and water. */
  readonly model: KelvinDifference;
  /** For a coolant as bought: inhibitors, water in the concentrate, the volume it was measured by. */
  readonly realCoolant: KelvinDifference;
}

/**
 * How far a computed boiling point may be off.
 *
 * Ethylene from the measured points; propylene from the spread against ASHRAE's table (recalled). In a strong mixture the
 * water that no label counts moves a real coolant further than that.
 * @param mixture 0 to 1 glycol by mass
 * @throws OutOfRange on strength
 */
export function boilingUncertainty(mixture: Mixture): BoilingUncertainty {
  const w = checkStrength(mixture);
  const [model, least] =
    mixture.glycol === 'ethylene' ? [0.35, w > 0.63 ? 2 : 1] : w > 0.6 ? [3, 4] : [1.5, 2];
  const wetter = { ...mixture, fraction: massFraction(w * (1 - UNCOUNTED_WATER)) };
  const drop = boilingPoint(mixture, STANDARD_ATMOSPHERE) - boilingPoint(wetter, STANDARD_ATMOSPHERE);
  return {
    model: kelvinDifference(model),
    realCoolant: kelvinDifference(Math.max(least, Math.ceil(drop))),
  };
}

function vapourPressure({ glycol, fraction }: Mixture, temperature: Kelvin): number {
  const waterMoles = (1 - fraction) / MOLAR_MASS.water;
  const glycolMoles = fraction / MOLAR_MASS[glycol];
  const water = waterMoles / (waterMoles + glycolMoles);
  const a = MARGULES[glycol];
  const fromWater = water * Math.exp(a * (1 - water) ** 2) * waterVapourPressure(temperature);
  const fromGlycol = (1 - water) * Math.exp(a * water ** 2) * glycolVapourPressure(glycol, temperature);
  return fromWater + fromGlycol;
}
