/** An outside figure, and how the simulated car is asked for the same thing. */
import type { Car, KnownFigures } from '../../../src/car/car.ts';

export interface Row {
  /** Id of the figure, and what tells rows of one figure apart. */
  readonly id: string;
  readonly what: string;
  readonly unit: string;
  readonly source: string;
  readonly kind: 'published' | 'common practice' | 'from memory' | 'computed from published correlation';
  /** Lowest and highest that the source gives. The middle car of the hundred must lie between them. */
  readonly range: readonly [number, number];
  /** Nine tenths of the drawn cars must lie between these; the source watched one car, the drawn ones are many. */
  readonly spread: readonly [number, number];
  /** What is known of the source's car; all else is drawn. */
  readonly known: KnownFigures;
  /**
   * A figure of the model was set by this very figure, so that meeting it proves nothing more. The table of parameters
   * leans on fits to the two log sets as a whole besides: their rows are a check of the drawn spread, not of the fit.
   */
  readonly fitted?: true;
  /** How many to draw where a hundred would take too long; a hundred otherwise. */
  readonly cars?: number;
  /** @returns NaN where the car never gets there */
  readonly ours: (car: Car) => number;
  /** Where the middle car misses the range: how near it must still come, and why. */
  readonly explained?: { readonly range: readonly [number, number]; readonly why: string };
}

export const PETROL_LOG =
  'Public 1 Hz log set of one healthy 1.5 l petrol car in a tropical city, 129 trips (repository eron93br/carOBD), analysed here';
export const DIESEL_LOG =
  'KIT Automotive OBD-II Dataset (M. Weber), DOI 10.35097/1130, CC BY 4.0: one 2 l class diesel, 77 logs, analysed here';
export const DYNAMOMETER =
  'National-laboratory chassis dynamometer record of a 2.5 l petrol car, tests 61811011 to 61811014 (NREL), analysed here';
export const TEST_CYCLE =
  'European Commission JRC, demonstration input file (EUPL): 2.4 l, 88 kW diesel; measured or not is not stated';

const CELSIUS = 273.15;

/** That car: its fan came at 95 °C in 38 of 38, its rise paused from 86 °C; the stamp itself is not known. */
export const PETROL_CAR: KnownFigures = {
  layout: {
    fuel: 'petrol',
    thermostat: 'outlet side',
    kind: 'by-pass closing',
    fan: 'electric, one stage',
    fanSwitchedBy: 'engine controller',
    pump: 'belt',
    heater: 'always flowing',
  },
  displacement: 1.5e-3,
  stamp: CELSIUS + 85,
};
/** Its coolant held 90 °C at speed; the stamp is taken as 87 °C. */
export const DIESEL_CAR: KnownFigures = {
  layout: {
    fuel: 'diesel',
    thermostat: 'inlet side',
    kind: 'by-pass closing',
    fan: 'electric, one stage',
    fanSwitchedBy: 'engine controller',
    pump: 'belt',
    heater: 'always flowing',
  },
  displacement: 2e-3,
  stamp: CELSIUS + 87,
};
export const DYNAMOMETER_CAR: KnownFigures = { ...PETROL_CAR, displacement: 2.5e-3, stamp: CELSIUS + 88 };
export const CYCLE_CAR: KnownFigures = { ...DIESEL_CAR, displacement: 2.4e-3 };
/** Any car with a plain thermostat of this stamp. */
export function stampedAt(celsius: number, layout: KnownFigures['layout'] = {}): KnownFigures {
  return {
    layout: { kind: 'by-pass closing', pump: 'belt', heater: 'always flowing', ...layout },
    stamp: CELSIUS + celsius,
  };
}

export const celsius = (kelvin: number): number => kelvin - CELSIUS;
export const kelvinOf = (degrees: number): number => degrees + CELSIUS;
