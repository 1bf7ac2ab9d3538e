import { mixtureVapourPressure } from './boiling.ts';
import { volumeRatio } from './expansion.ts';
import type { Mixture } from './glycol.ts';
import { within } from './out-of-range.ts';
import {
  type AbsolutePascal,
  type CubicMetre,
  type CubicMetrePerSecond,
  cubicMetre,
  cubicMetrePerSecond,
  fromCelsius,
  type GaugePascal,
  gaugePascal,
  type Kelvin,
  kelvin,
  type Second,
  toAbsolute,
} from './units.ts';

/** A cold or warm system pumped up with a hand tester. */
export interface PressurisedSystem {
  readonly mixture: Mixture;
  /** Coolant in the system, as it measures at 20 °C, 0.0005 to 0.2 m3. */
  readonly liquid: CubicMetre;
  /** Air above it at the start, tester and hose included, 0.00005 to 0.05 m3. */
  readonly air: CubicMetre;
  /** Air pressure outside. */
  readonly outside: AbsolutePascal;
}

/** A gauge reading with the temperature of the coolant at that moment. */
export interface PressureReading {
  readonly gauge: GaugePascal;
  readonly temperature: Kelvin;
}

/** Volume of the coolant is counted at this temperature. */
const MEASURED_AT = fromCelsius(20);
/** A test holds when it has lost no more, Pa: two readings of a workshop tester, 0.02 bar each. Common practice, no source. */
export const HOLDS_WITHIN = 3e3;
/** It leaks from here on, Pa: what rigid hoses and even temperature leave open. Common practice, no source. */
export const LEAKS_FROM = 5e3;
/** Between the two nothing is decided; one reading moved by its error stays there, Pa. */
const READING_ERROR = 2e3;
/** Share of the computed change that stays doubtful: rigid hoses and even temperature are assumed. */
const RIGID_SHARE = 0.2;
/** Half the error of each thermometer, K: the difference of two read a degree apart. */
const HALF_A_DEGREE = 0.5;
/** The air outside moves by this over a night, and hoses creep, Pa an hour past the first and at most. Common practice, no source. */
const DRIFT = { anHour: 1e3, most: 3e3 } as const;
/** Above this doubt a loss cannot be told from cooling, Pa. */
const TOO_UNSURE = 10e3;
/** No cap of a car holds more, Pa, and no hand tester is pumped further: the largest a vehicle may state here. */
export const NO_CAP_HOLDS = 240e3;

/**
 * Gauge reading that a tight system would show after its temperature changed.
 *
 * Trapped air by the gas law, vapour over the coolant, and the coolant's own shrinking, which makes room for the air; the
 * gas law alone is far off in a warm system. Rigid hoses, even temperature: good to about 5 kPa.
 * @param start reading at the beginning, absolute above the vapour pressure there
 * @param end temperature of the coolant now
 * @throws OutOfRange on any figure, when the start reading is below the vapour pressure, or when the coolant would fill all the air space
 */
export function tightReading(system: PressurisedSystem, start: PressureReading, end: Kelvin): GaugePascal {
  const outside = within('air pressure', system.outside, 40e3, 110e3, 'Pa') as AbsolutePascal;
  const { dryEnd, vapourEnd } = tightState(system, start, end);
  return gaugePascal(dryEnd + vapourEnd - outside);
}

/** What a pressure test says once temperature is taken out. */
export interface PressureTest {
  readonly verdict:
    | 'tight'
    /** More than reading explains and less than a leak is called from: let it settle and repeat. */
    | 'repeat'
    | 'leaks'
    /** Temperature moved so far that a loss cannot be told from cooling: bring it to one temperature and repeat. */
    | 'cannot tell'
    /** Higher than a tight system would read: it was still warming, or gas gets in. */
    | 'rose';
  /** Reading a tight system would show, Pa gauge. */
  readonly tight: GaugePascal;
  /** That reading less the one taken, Pa; negative when it rose. */
  readonly loss: number;
  /** Either way, Pa: a loss counts as a leak from here on. */
  readonly uncertainty: number;
  /** No more than this counts as nothing, Pa. */
  readonly holdsWithin: number;
  /** The least leak that the test could have called one, as coolant, m3/s. */
  readonly leastRate: CubicMetrePerSecond;
  /** Coolant lost if the loss is coolant, m3; 0 unless the reading is below the tight one. */
  readonly lostVolume: CubicMetre;
  /** Coolant lost in time if the loss is coolant, m3/s. */
  readonly lossRate: CubicMetrePerSecond;
}

/**
 * Judges a pressure test from two readings, with the part that temperature explains taken out.
 *
 * Holds within 0.03 bar, leaks from 0.05 bar, both wider by what the temperatures and a night leave in doubt; between the
 * two it is repeated.
 * @param took time between the readings, 10 s to a day
 * @throws OutOfRange as `tightReading`, on time, and when the end reading is below the vapour pressure
 */
export function judgePressureTest(
  system: PressurisedSystem,
  start: PressureReading,
  end: PressureReading,
  took: Second,
): PressureTest {
  const seconds = within('time between the readings', took, 10, 86400, 's');
  const tight = tightReading(system, start, end.temperature);
  const { dryEnd, vapourEnd, airEnd, gain } = tightState(system, start, end.temperature);
  const dryFound = dryPressure(end.gauge, system.outside, vapourEnd, 'reading at the end');
  const loss = tight - end.gauge;
  const halfADegree = ofHalfADegree(system, start, end.temperature);
  const doubt =
    RIGID_SHARE * Math.abs(start.gauge - tight) +
    halfADegree +
    Math.min(DRIFT.most, (DRIFT.anHour * Math.max(0, seconds - 3600)) / 3600);
  // Warming squeezes the air, and what the first reading was out with it.
  const readingError = READING_ERROR * Math.max(1, gain);
  const uncertainty = Math.max(LEAKS_FROM, HOLDS_WITHIN + doubt, HOLDS_WITHIN + readingError);
  const holdsWithin = Math.max(HOLDS_WITHIN, uncertainty - Math.max(readingError, 1.1 * halfADegree));
  const lost = Math.max(0, airEnd * (dryEnd / dryFound - 1));
  return {
    verdict: judge(loss, holdsWithin, uncertainty),
    tight,
    loss,
    uncertainty,
    holdsWithin,
    leastRate: cubicMetrePerSecond((airEnd * (dryEnd / Math.max(1e3, dryEnd - uncertainty) - 1)) / seconds),
    lostVolume: cubicMetre(lost),
    lossRate: cubicMetrePerSecond(lost / seconds),
  };
}

interface TightState {
  /** Pressure of the air alone, Pa. */
  readonly dryEnd: number;
  readonly vapourEnd: number;
  /** Volume of the air, m3. */
  readonly airEnd: number;
  /** Pressure of the air now beside that at the start. */
  readonly gain: number;
}

function tightState(system: PressurisedSystem, start: PressureReading, end: Kelvin): TightState {
  const liquid = within('coolant volume', system.liquid, 0.5e-3, 0.2, 'm3');
  const air = within('air volume', system.air, 0.05e-3, 0.05, 'm3');
  const vapourStart = mixtureVapourPressure(system.mixture, start.temperature);
  const vapourEnd = mixtureVapourPressure(system.mixture, end);
  const dryStart = dryPressure(start.gauge, system.outside, vapourStart, 'reading at the start');
  const liquidStart = liquid * volumeRatio(system.mixture, MEASURED_AT, start.temperature);
  const liquidEnd = liquid * volumeRatio(system.mixture, MEASURED_AT, end);
  // Less than a hundredth of the air left would be a hydraulic lock, not a test.
  const airEnd = within('air left at the end', air + liquidStart - liquidEnd, air / 100, Infinity, 'm3');
  const gain = (air / airEnd) * (end / start.temperature);
  return { dryEnd: dryStart * gain, vapourEnd, airEnd, gain };
}

/** A closed system cannot show less than its own vapour, nor more than any tester pumps. */
function dryPressure(gauge: GaugePascal, outside: AbsolutePascal, vapour: number, name: string): number {
  const reading = within(name, gauge, vapour - outside + 1e3, 400e3, 'Pa') as GaugePascal;
  return toAbsolute(reading, outside) - vapour;
}

function judge(loss: number, holdsWithin: number, uncertainty: number): PressureTest['verdict'] {
  // A cent of the gauge is not lost on the way through the arithmetic.
  const slack = 1;
  if (loss >= uncertainty - slack) return 'leaks';
  if (loss <= -uncertainty + slack) return 'rose';
  if (uncertainty > TOO_UNSURE) return 'cannot tell';
  return Math.abs(loss) <= holdsWithin + slack ? 'tight' : 'repeat';
}

/** What half a degree either way does to the tight reading, Pa. */
function ofHalfADegree(system: PressurisedSystem, start: PressureReading, end: Kelvin): number {
  const at = (shift: number) => {
    const { dryEnd, vapourEnd } = tightState(system, start, kelvin(end + shift));
    return dryEnd + vapourEnd;
  };
  // Towards the cold: towards the hot a nearly full system would have no air left to reckon with.
  return Math.abs(at(0) - at(-2 * HALF_A_DEGREE)) / 2;
}
