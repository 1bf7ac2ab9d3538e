/**
 * What the first rise shows by itself, at whatever speed: a thermostat that was shut opens at one temperature, and the
 * rise breaks off there; and under its opening it keeps the radiator out, so that driving can only warm the engine.
 */
import { extentOf, type Grid, middleOf, runningMean } from './grid.ts';
import type { TraceVehicle } from './vehicle.ts';
import type { WarmUpCourse } from './warm-up-course.ts';

/** The rise breaks off this near to the stamp: the element is warmed late and let go early, K. */
const PAUSE_UNDER = 6;
const PAUSE_OVER = 5;

/** Whether the first rise broke off where the thermostat should open. */
export function pausedAtStamp({ pause }: WarmUpCourse, { opens }: TraceVehicle): boolean {
  return (
    pause !== undefined && pause.kelvin > opens.low - PAUSE_UNDER && pause.kelvin < opens.high + PAUSE_OVER
  );
}

/** What the temperature did from two minutes after the pause to the end of the log. */
export interface HeldAfter {
  /** Middle, least and greatest, K. */
  level: number;
  low: number;
  high: number;
  /** How long, s. */
  seconds: number;
}

/** Cold water from the radiator comes through first; what it holds shows after this, s. */
const COMES_THROUGH = 120;
/** Held for so long is more than a halt on the way, s. */
const HELD_LEAST = 240;
/** A sound one closes 2 to 6 K under where it opens (common practice), and the stamp is 2 K out: no lower, K. */
const CLOSES_UNDER = 7;
/** Fully open 10 to 15 K above its opening (common practice): past that nothing holds it, K. */
const HOLDS_UNDER = 12;

/** K. */
const MOVES = 0.5;

/**
 * Broke off at its stamp, and stayed about there to the end: it opens where it should and lets the heat out. Common
 * practice: with a thermostat standing open the rise has no such point, it fades.
 */
export function heldAtStamp(
  { smooth, signals, step }: Grid,
  course: WarmUpCourse,
  vehicle: TraceVehicle,
): HeldAfter | undefined {
  const { pause } = course;
  const { opens, fanOn } = vehicle;
  if (!pause || !pausedAtStamp(course, vehicle)) return undefined;
  // With a general range for the stamp, what breaks off at its edge may be a shifted one.
  if (opens.from === 'general' && (pause.kelvin < opens.low - 1 || pause.kelvin > opens.high + 1))
    return undefined;
  const from = Math.round((pause.at + COMES_THROUGH) / step);
  const seconds = (smooth.length - 1 - from) * step;
  if (seconds < HELD_LEAST) return undefined;
  const { low, high } = extentOf(smooth, from, smooth.length - 1);
  const most = Math.max(opens.high + HOLDS_UNDER, fanOn.from === 'general' ? 0 : fanOn.high + 2);
  if (low < opens.low - CLOSES_UNDER || high > most) return undefined;
  // A thermostat at work moves the reading a little; what stands quite still may be no reading.
  const raw = extentOf(signals.coolant, from, smooth.length - 1);
  if (raw.high - raw.low < MOVES) return undefined;
  return { level: middleOf(smooth, from, smooth.length - 1), low, high, seconds };
}

/** Under its opening and driven, it sank: K. */
export interface Cooling {
  from: number;
  to: number;
}

/** So far under the stamp a sound thermostat is shut, K. */
const SURELY_SHUT = 5;
/** A fall of so many K is no sensor step and no gust. */
const FALL = 4;
/** On the move: mean of a minute above this, m/s (22 km/h). */
const DRIVEN = 6;
/** At the start, and when it is started warm, water of other places comes by, s. */
const MIXING = 240;

/** The deepest fall while driven under the opening: only an open way to the radiator does that. */
export function sankWhenDriven(
  { smooth, signals, step }: Grid,
  { opens }: TraceVehicle,
): Cooling | undefined {
  const { speed, rpm } = signals;
  if (!speed) return undefined;
  const even = runningMean(speed, Math.round(30 / step));
  let deepest: Cooling | undefined;
  let top = Number.NEGATIVE_INFINITY;
  let since = 0;
  for (let at = 0; at < smooth.length; at++) {
    const here = smooth[at] ?? Number.NaN;
    const runs = rpm === undefined || (rpm[at] ?? 1000) > 50;
    since = runs ? since + step : 0;
    if (!((even[at] ?? 0) > DRIVEN) || since < MIXING || Number.isNaN(here)) {
      top = Number.NEGATIVE_INFINITY;
      continue;
    }
    top = Math.max(top, here);
    if (top < opens.low - SURELY_SHUT && top - here >= FALL && top - here > drop(deepest))
      deepest = { from: top, to: here };
  }
  return deepest;
}

/** Seconds on the move. */
export function secondsDriven({ signals, step }: Grid): number {
  return (signals.speed?.reduce((sum, each) => sum + (each > DRIVEN ? 1 : 0), 0) ?? 0) * step;
}

function drop(sank: Cooling | undefined): number {
  return sank ? sank.from - sank.to : 0;
}

/** A thermostat's range lies above where the rise breaks off: level over the pause, K. */
const LEVEL_UNDER_PAUSE = 2;
const LEVEL_OVER_PAUSE = 7;

/** Whether the rise broke off low down and the level stayed at that: something opens there. Cold air alone bends a rise slowly. */
export function brokeOffAt({ pause }: WarmUpCourse, level: number): boolean {
  return (
    pause !== undefined && level > pause.kelvin - LEVEL_UNDER_PAUSE && level < pause.kelvin + LEVEL_OVER_PAUSE
  );
}
