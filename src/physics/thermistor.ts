import { OutOfRange, within } from './out-of-range.ts';
import { findWhere } from './root.ts';
import { fromCelsius, type Kelvin, kelvin, type Ohm, ohm } from './units.ts';

/** A sensor and what it is held against agree within this, K: it is made to 1 to 2 K, and so is a good thermometer. Common practice, no source. */
export const SENSOR_AGREES = 5;
/** What a log says of the air comes off a sensor of its own and no thermometer beside the engine: so much more, K. Common practice, no source. */
export const LOGGED_AIR = 2;
/** Where one air alone was logged, the morning may have warmed that before the engine followed: so much more again, K. Common practice, no source. */
export const ONE_AIR_ALONE = 4;

/** Resistance of a sensor at a temperature. */
export interface SensorPoint {
  readonly temperature: Kelvin;
  readonly resistance: Ohm;
}

/** A sensor whose resistance falls as it warms (NTC), both ways. */
export interface SensorCurve {
  /** Temperatures the curve answers for, K. */
  readonly from: Kelvin;
  readonly to: Kelvin;
  /** @throws OutOfRange outside the curve */
  temperatureAt(resistance: Ohm): Kelvin;
  /** @throws OutOfRange outside the curve */
  resistanceAt(temperature: Kelvin): Ohm;
}

/** Sensors of a cooling system live between these, K. */
const COLDEST = fromCelsius(-60);
const HOTTEST = fromCelsius(200);
/** Resistances a hand meter can tell from a short and from an open wire, ohm. */
const RESISTANCE_LIMITS = [1, 10e6] as const;
/** A formula is carried on this far beyond the outer points it was made from, K. */
const CARRIED_ON = 60;
/** Relative rounding of exp and ln, with room. */
const ROUNDING = 1e-9;
/** Points nearer than this say more about the meter than about the sensor, K. */
const APART = 5;

/**
 * Curve through a table of points, straight in ln R over 1/T between neighbours, as a sensor nearly is.
 *
 * No extrapolation.
 * @param table two or more points, any order
 * @throws OutOfRange with fewer than two points, points under 5 K apart, or a resistance that does not fall as it warms
 */
export function curveFromTable(table: readonly SensorPoint[]): SensorCurve {
  const points = sortedPoints(table, 2);
  const knots = points.map(({ temperature, resistance }) => [Math.log(resistance), 1 / temperature] as const);
  const inverse = (logR: number): number => {
    for (let i = 1; i < knots.length; i++) {
      const [cold, hot] = [knots[i - 1], knots[i]];
      if (cold && hot && (logR >= hot[0] || i === knots.length - 1))
        return hot[1] + ((cold[1] - hot[1]) * (logR - hot[0])) / (cold[0] - hot[0]);
    }
    return Number.NaN;
  };
  return curveOf(inverse, points, 0);
}

/**
 * Curve through three points by the Steinhart-Hart equation, 1/T = A + B ln R + C (ln R)^3.
 *
 * Steinhart and Hart, Deep-Sea Research 15 (1968) 497. Within 0.15 K of a sensor maker's table between its outer points;
 * carried on 60 K beyond them.
 * @param three points at least 5 K apart, any order
 * @throws OutOfRange on the points, also when they bend so that no sensor fits
 */
export function curveThroughThree(three: readonly [SensorPoint, SensorPoint, SensorPoint]): SensorCurve {
  const points = sortedPoints(three, 3);
  const { a, b, c } = steinhartHart(points);
  return curveOf((logR) => a + b * logR + c * logR ** 3, points, CARRIED_ON);
}

/**
 * Curve from one resistance and the B value, R = R0 exp(B (1/T - 1/T0)).
 *
 * IEC 60539-1. Within 1.6 K of a sensor maker's table from 0 to 100 °C; wrong by 2 to 4 K at -35 and 150 °C.
 * @param reference usually the resistance at 25 °C
 * @param b B value, 1,500 to 7,000 K
 * @throws OutOfRange on the point or on B
 */
export function curveFromB(reference: SensorPoint, b: number): SensorCurve {
  const steepness = within('B value', b, 1500, 7000, 'K');
  const { temperature, resistance } = checkPoint(reference);
  const inverse = (logR: number): number => 1 / temperature + (logR - Math.log(resistance)) / steepness;
  return curveOf(inverse, [reference], Number.POSITIVE_INFINITY);
}

/** B value between two points, K. IEC 60539-1: ln(R1/R2)/(1/T1 - 1/T2). @throws OutOfRange on the points */
export function bValue(one: SensorPoint, other: SensorPoint): number {
  const [cold, hot] = sortedPoints([one, other], 2);
  if (!cold || !hot) return Number.NaN;
  return Math.log(cold.resistance / hot.resistance) / (1 / cold.temperature - 1 / hot.temperature);
}

/** Constants of 1/T = A + B ln R + C (ln R)^3. */
interface SteinhartHart {
  readonly a: number;
  readonly b: number;
  readonly c: number;
}

function steinhartHart(points: readonly SensorPoint[]): SteinhartHart {
  const [cold, middle, hot] = points;
  if (!cold || !middle || !hot) throw new OutOfRange('number of points', points.length, [3, 3], '1');
  const [l1, l2, l3] = [Math.log(hot.resistance), Math.log(middle.resistance), Math.log(cold.resistance)];
  const y1 = 1 / hot.temperature;
  const slope2 = (1 / middle.temperature - y1) / (l2 - l1);
  const slope3 = (1 / cold.temperature - y1) / (l3 - l1);
  const c = (slope3 - slope2) / (l3 - l2) / (l1 + l2 + l3);
  const b = slope2 - c * (l1 ** 2 + l1 * l2 + l2 ** 2);
  const a = y1 - (b + c * l1 ** 2) * l1;
  return { a, b, c };
}

/** Makes a curve of 1/T over ln R, answering between the outer points and a little beyond. */
function curveOf(
  inverse: (logR: number) => number,
  points: readonly SensorPoint[],
  beyond: number,
): SensorCurve {
  const temperatures = points.map(({ temperature }) => temperature);
  const from = kelvin(Math.max(COLDEST, Math.min(...temperatures) - beyond));
  const to = kelvin(Math.min(HOTTEST, Math.max(...temperatures) + beyond));
  const [lowest, highest] = logSpan(inverse, points, from, to);
  return {
    from,
    to,
    temperatureAt(resistance) {
      // The slack lets the outer points of a table back in after exp and ln have rounded them.
      const r = within(
        'sensor resistance',
        resistance,
        Math.exp(lowest) * (1 - ROUNDING),
        Math.exp(highest) * (1 + ROUNDING),
        'ohm',
      );
      return kelvin(1 / inverse(Math.log(r)));
    },
    resistanceAt(temperature) {
      const t = within('sensor temperature', temperature, from, to, 'K');
      return ohm(Math.exp(findWhere(inverse, 1 / t, lowest, highest)));
    },
  };
}

/** ln R at the hot and the cold end, found outwards from the points so that the curve is seen to keep falling. */
function logSpan(
  inverse: (logR: number) => number,
  points: readonly SensorPoint[],
  from: Kelvin,
  to: Kelvin,
): [number, number] {
  const logs = points.map(({ resistance }) => Math.log(resistance));
  return [
    walk(inverse, Math.min(...logs), 1 / to, -1, points),
    walk(inverse, Math.max(...logs), 1 / from, +1, points),
  ];
}

function walk(
  inverse: (logR: number) => number,
  start: number,
  wanted: number,
  direction: 1 | -1,
  points: readonly SensorPoint[],
): number {
  // An open end within rounding of its point is that point.
  if (Math.abs(inverse(start) - wanted) < 1e-12) return start;
  const step = 0.05 * direction;
  for (let at = start; Math.abs(at - start) < 15; at += step) {
    const [here, next] = [inverse(at), inverse(at + step)];
    if ((next - here) * direction <= 0) break;
    if ((next - wanted) * direction >= 0) return findWhere(inverse, wanted, at, at + step);
  }
  const middle = points[Math.floor(points.length / 2)];
  throw new OutOfRange(
    'resistance at the middle point',
    middle?.resistance ?? Number.NaN,
    RESISTANCE_LIMITS,
    'ohm',
  );
}

function sortedPoints(points: readonly SensorPoint[], atLeast: number): readonly SensorPoint[] {
  within('number of points', points.length, atLeast, 200, '1');
  const sorted = points.map(checkPoint).toSorted((one, other) => one.temperature - other.temperature);
  sorted.forEach((hot, i) => {
    const cold = sorted[i - 1];
    if (!cold) return;
    within('distance between two points', hot.temperature - cold.temperature, APART, Infinity, 'K');
    within(
      'resistance at the hotter point',
      hot.resistance,
      RESISTANCE_LIMITS[0],
      cold.resistance * 0.999,
      'ohm',
    );
  });
  return sorted;
}

function checkPoint(point: SensorPoint): SensorPoint {
  within('sensor temperature', point.temperature, COLDEST, HOTTEST, 'K');
  within('sensor resistance', point.resistance, RESISTANCE_LIMITS[0], RESISTANCE_LIMITS[1], 'ohm');
  return point;
}
