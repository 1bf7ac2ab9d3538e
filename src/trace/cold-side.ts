/** Does it hold at speed, or does it run too cold? And would the log have shown it. */
import { type Band, STAMP_TOLERANCE } from './expected-band.ts';
import {
  brokeOffAt,
  type Cooling,
  type HeldAfter,
  heldAtStamp,
  pausedAtStamp,
  sankWhenDriven,
  secondsDriven,
} from './first-rise.ts';
import { type Grid, middleOf } from './grid.ts';
import { HALF_LIFT } from './hot-side.ts';
import type { Likeness } from './likeness.ts';
import type { Start } from './outside.ts';
import { SETTLED_RISE, type SettledStretch, settledAtSpeed } from './settled.ts';
import type { Drive } from './stretches.ts';
import { acrossEngine, type TraceVehicle } from './vehicle.ts';
import type { WarmUpCourse } from './warm-up-course.ts';

/** Why the log cannot tell. */
export type NoVerdictReason =
  | 'too-short'
  | 'no-speed'
  | 'never-at-speed'
  | 'outside-unknown'
  | 'never-settled'
  | 'cold-day'
  | 'heater-unknown'
  | 'hot-day'
  | 'vehicle-unknown'
  | 'fan-not-asked'
  | 'fan-did-not-show'
  | 'stands-still'
  | 'fan-did-not-cool'
  | 'radiator-not-asked'
  | 'over-the-stamp'
  | 'near-the-limit'
  | 'dipped-once'
  | 'may-read-high'
  | 'fan-at-other-figure';

export type ColdSide =
  | { is: 'holds'; settled: SettledStretch }
  /** Was warm when slow, sinks at speed. `expected`: the least a sound engine would have read, K. */
  | { is: 'falls'; settled: SettledStretch; sure: boolean; expected: number }
  /** Never got warm though it was driven. */
  | { is: 'stays low'; settled: SettledStretch; sure: boolean; expected: number }
  /** Regulates, but at too low a figure. */
  | { is: 'low throughout'; settled: SettledStretch; sure: boolean }
  /** Opens at its stamp and stays there; how it holds at speed was not asked. */
  | { is: 'opens'; held: HeldAfter; because: NoVerdictReason[]; settled: undefined }
  /** Never long at speed, but driven it sinks, or no sound engine explains the log. Distances as in `Likeness`, K. */
  | { is: 'unlike sound'; sank: Cooling | undefined; likeness: Likeness; settled: undefined }
  | { is: 'unknown'; because: NoVerdictReason[]; settled: SettledStretch | undefined };

/** Held for so long at speed, settling included, s. */
const HELD_LONG = 240;
/** A sound engine must have read so much more before a thermostat is blamed, K. */
const CLEAR_OF_BAND = 2;
/** A sensor and a stamp are each 2 K out; so near the limit nobody is blamed, K. */
const NEAR_LIMIT = 1.5;
/** Regulated as far under its stamp as this is a shifted or wrong thermostat, or a sensor; further down it stands open, K. */
const SHIFTED_AT_MOST = 30;

export interface ColdSideInput {
  grid: Grid;
  drive: Drive | undefined;
  band: Band | undefined;
  likeness: Likeness | undefined;
  vehicle: TraceVehicle;
  start: Start;
  course: WarmUpCourse;
  /** The coldest a sound engine could have been from a point of the grid on, as warm there as this one. */
  leastFrom: ((at: number) => Float64Array | undefined) | undefined;
  /** Whether a band with the heater off would have cleared the limit where this one does not. */
  heaterMatters: boolean;
}

/** What speed was not there to show, the first rise may. */
const LEFT_OPEN: readonly NoVerdictReason[] = [
  'no-speed',
  'never-at-speed',
  'never-settled',
  'outside-unknown',
  'heater-unknown',
  'cold-day',
];

/** Says whether it holds, sinks or never warms; what speed was not there to show, the first rise may. */
export function coldSide(input: ColdSideInput): ColdSide {
  const atSpeed = coldSideAtSpeed(input);
  if (atSpeed.is !== 'unknown' || !atSpeed.because.some((each) => LEFT_OPEN.includes(each))) return atSpeed;
  return unlikeSound(input) ?? opensAtStamp(input, atSpeed.because) ?? atSpeed;
}

function opensAtStamp(
  { grid, course, vehicle, likeness }: ColdSideInput,
  because: NoVerdictReason[],
): ColdSide | undefined {
  const held = heldAtStamp(grid, course, vehicle);
  if (!held) return undefined;
  if (held.level < leastHeld(vehicle))
    return { is: 'unknown', because: [whyDoubtful(vehicle)], settled: undefined };
  // Without the whole drive to hold against, only a known stamp makes the pause speak.
  const known = vehicle.opens.from === 'vehicle';
  const other = likeness && Math.min(likeness.open, likeness.early);
  const speaks =
    !likeness || !other ? known : known ? !looksLike(other, likeness.sound) : likeness.sound <= other;
  if (!speaks) return undefined;
  return { is: 'opens', held, because, settled: undefined };
}

/** So far off on average no sound engine is what was logged, K; and the other explanation so many times nearer. */
const UNLIKE = 5;
const TIMES_NEARER = 3;
/** s. */
const DRIVEN_LEAST = 300;

function unlikeSound({ grid, vehicle, likeness }: ColdSideInput): ColdSide | undefined {
  if (!likeness) return undefined;
  const other = Math.min(likeness.open, likeness.early);
  const sank = sankWhenDriven(grid, vehicle);
  if (sank && looksLike(other, likeness.sound))
    return { is: 'unlike sound', sank, likeness, settled: undefined };
  if (likeness.sound < UNLIKE || TIMES_NEARER * other > likeness.sound) return undefined;
  // How much heat an engine makes at idle differs too much between engines: it has to have been driven.
  if (secondsDriven(grid) < DRIVEN_LEAST) return undefined;
  return { is: 'unlike sound', sank: undefined, likeness, settled: undefined };
}

function coldSideAtSpeed(input: ColdSideInput): ColdSide {
  const { grid, drive, band, likeness, vehicle, course } = input;
  const unknown = (because: NoVerdictReason, settled?: SettledStretch): ColdSide => ({
    is: 'unknown',
    because: [because],
    settled,
  });
  if (!drive) return unknown('no-speed');
  const stretches = settledAtSpeed(grid, drive);
  if (stretches.length === 0) return unknown('never-at-speed');
  const limit = vehicle.lowLimit.low;
  // The stretch that speaks loudest: settled, and furthest from the limit.
  const settled = stretches.filter(({ rise }) => Math.abs(rise) < SETTLED_RISE);
  const falling = stretches.filter(
    (each) => each.rise < 0 && each.level < limit - 3 && each.before > each.level + 6,
  );
  // Still rising, but so slowly that minutes more would not bring it to the limit.
  const creeping = stretches.filter(
    ({ rise, level }) => rise > 0 && rise < 0.03 && level + rise * 180 < limit - 3,
  );
  const cold = [...settled, ...falling, ...creeping]
    .filter(({ level }) => level < limit + 0.5)
    .sort((a, b) => a.level - b.level)[0];
  if (cold) return coldVerdict(input, cold, settled);
  const held = stretches.filter((each) => each.low >= limit && each.to - each.from >= HELD_LONG / grid.step);
  const longest = held.sort((a, b) => b.to - b.from - (a.to - a.from))[0];
  if (!longest) return unknown('never-settled', stretches.at(-1));
  // Under its stamp less what stamp and reading are out, nothing is called held.
  if (longest.level < leastHeld(vehicle)) return unknown(whyDoubtful(vehicle), longest);
  if (longest.level < vehicle.lowLimit.high + NEAR_LIMIT) return unknown('near-the-limit', longest);
  if (stillClimbing(longest)) return unknown('never-settled', longest);
  if (longest.level > mostHeld(vehicle)) return unknown(whyDoubtful(vehicle), longest);
  if (vehicle.opens.from === 'general' && longest.level > vehicle.opens.high + 3)
    return unknown('vehicle-unknown', longest);
  // A rise that breaks off at the stamp is a thermostat that was shut and opens.
  if (pausedAtStamp(course, vehicle)) return { is: 'holds', settled: longest };
  if (!band) return unknown('outside-unknown', longest);
  // Holding proves something only where a thermostat stuck open would not have held.
  const shown = held.filter(
    ({ level, to }) => level >= leastHeld(vehicle) && middleOf(band.openHigh, to - 60, to) < level - 1,
  );
  const best = shown.sort((a, b) => b.level - a.level)[0];
  if (best) return { is: 'holds', settled: best };
  return likeness && looksLike(likeness.sound, likeness.open)
    ? { is: 'holds', settled: longest }
    : unknown('hot-day', longest);
}

/**
 * By a nearest vehicle's stamp: half-way from what stamp and reading are out to what a thermostat is blamed for, under
 * the highest stamp it may be, K.
 */
const HELD_BY_NEAREST = 4.5;

/** The least that is called held or opening where it should, K: with a range of stamps, by the highest of them. */
function leastHeld({ opens }: TraceVehicle): number {
  if (opens.from === 'vehicle') return opens.low - STAMP_TOLERANCE;
  return opens.high - (opens.from === 'nearest' ? HELD_BY_NEAREST : STAMP_TOLERANCE);
}

/**
 * The most that is called held, K. Which side a nearest vehicle's thermostat sits on says nothing of this one: what an
 * inlet-side one may read is a late opening for an outlet-side one.
 */
function mostHeld(vehicle: TraceVehicle): number {
  const { opens, cruise } = vehicle;
  if (opens.from === 'nearest') return (opens.low + opens.high) / 2 + HALF_LIFT;
  return Math.max(cruise.high, opens.high + HALF_LIFT + acrossEngine(vehicle));
}

function whyDoubtful({ opens }: TraceVehicle): NoVerdictReason {
  return opens.from === 'vehicle' ? 'near-the-limit' : 'vehicle-unknown';
}

/** Not held, only passed through: it may be on its way to anywhere. */
function stillClimbing({ rise }: SettledStretch): boolean {
  return rise > 2 * SETTLED_RISE;
}

/** Whether one explanation fits so much better than another that the other can be left out. */
function looksLike(better: number, worse: number): boolean {
  return worse > Math.max(1.6 * better, better + 1.5);
}

function coldVerdict(
  input: ColdSideInput,
  cold: SettledStretch,
  settled: readonly SettledStretch[],
): ColdSide {
  const { grid, band, likeness, vehicle, heaterMatters, leastFrom } = input;
  const limit = vehicle.lowLimit.low;
  const unknown = (because: NoVerdictReason): ColdSide => ({
    is: 'unknown',
    because: [because],
    settled: cold,
  });
  if (regulatesUnderStamp(input, cold)) return { is: 'low throughout', settled: cold, sure: false };
  if (!band) return unknown('outside-unknown');
  const explained = likeness ? Math.min(likeness.open, likeness.early) / likeness.sound : 1;
  const fell = cold.before > cold.level + 4 && cold.before > limit - 2;
  // So near the limit, the fall itself has to speak, and the whole log against a sound engine.
  const plain = cold.before > cold.level + 6 && explained < 0.6;
  if (cold.level > limit - NEAR_LIMIT && !plain) return unknown('near-the-limit');
  const minute = Math.round(60 / grid.step);
  const since = leastFrom?.(cold.from);
  // Two ways to the same figure: from the start of the log, and from where this stretch began.
  const expected = Math.max(
    middleOf(band.low, cold.to - minute, cold.to),
    since ? middleOf(since, cold.to - cold.from - minute, cold.to - cold.from) : 0,
  );
  if (expected < Math.min(limit, cold.level + CLEAR_OF_BAND))
    return unknown(heaterMatters ? 'heater-unknown' : 'cold-day');
  // A day or an engine the band does not know: the cold explanation has to be the better one over the whole log.
  if (explained > 0.9) return unknown('cold-day');
  const sure = vehicle.opens.from === 'vehicle' && expected > cold.level + 6;
  if (regulatesLow(input, cold, settled)) return { is: 'low throughout', settled: cold, sure };
  return { is: fell ? 'falls' : 'stays low', settled: cold, sure, expected };
}

/** Stamp, sensor and closing are out by 6 K together at most, K. */
const UNDER_STAMP = 6.5;

/**
 * Broke off low and holds there: then a thermostat opens there, on however cold a day. Air and heater bend a rise
 * slowly, over a quarter of an hour.
 */
function regulatesUnderStamp(
  { course, vehicle, likeness }: ColdSideInput,
  { level }: SettledStretch,
): boolean {
  return (
    level < vehicle.opens.low - UNDER_STAMP &&
    level > vehicle.opens.low - SHIFTED_AT_MOST &&
    brokeOffAt(course, level) &&
    likeness !== undefined &&
    looksLike(likeness.early, likeness.sound) &&
    looksLike(likeness.early, likeness.open)
  );
}

/** Whether the low figure is one it regulates at: a sharp pause there in the first rise, or the same at every speed. */
function regulatesLow(
  { grid, course, vehicle, band }: ColdSideInput,
  cold: SettledStretch,
  settled: readonly SettledStretch[],
): boolean {
  if (cold.level < vehicle.opens.low - SHIFTED_AT_MOST) return false;
  // Where a thermostat standing open would read less than this, something still regulates.
  const open = band ? middleOf(band.openHigh, cold.to - 60, cold.to) : Number.NaN;
  if (Number.isFinite(open) && cold.level > open + 3) return true;
  const paused =
    course.pause &&
    Math.abs(course.pause.kelvin - cold.level) < 4 &&
    course.pause.at < cold.from * grid.step + 120;
  const alike = settled.filter((each) => Math.abs(each.level - cold.level) < 2.5).length > 1;
  return Boolean(paused && alike);
}
