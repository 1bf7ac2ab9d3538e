/** What the coolant reading does that no coolant can: jumps, open and short circuit, a value that never moves. */

import { ZERO_CELSIUS } from '../physics/units.ts';
import { extentOf, type Grid } from './grid.ts';
import type { Channel } from './read/read-log.ts';
import type { Drive } from './stretches.ts';

export type SensorFaultKind = 'jump' | 'open' | 'short' | 'flat';

export interface SensorFault {
  kind: SensorFaultKind;
  /** Seconds from the start, where it was first seen. */
  at: number;
  /** How often, or for how many readings. */
  times: number;
  /** Reading before and after a jump, the value it stands at otherwise, K. */
  from: number;
  to: number;
}

export interface SensorCheck {
  faults: SensorFault[];
  /** The readings without the impossible ones, for everything that comes after. */
  clean: Channel;
  /** Lone readings taken out as slips of the log. */
  slips: number;
}

/** A negative-coefficient sensor that is open reads the bottom of the scale (−40 °C in SAE J1979), shorted the top. */
const OPEN_UNDER = ZERO_CELSIUS - 39.4;
const SHORT_OVER = ZERO_CELSIUS + 148;
/**
 * A sensor in its pocket follows with a few seconds, and air passing it or a thermostat snapping open changes what it
 * sits in by 25 K at most. What changes faster than this is no temperature: K, and K per second between readings.
 */
const JUMP = 7;
const JUMP_RATE = 4;
/** Readings further apart than this say nothing about jumps, s. */
const JUMP_LONGEST = 8;
/** So many lone readings may be slips of the log, not of the sensor. */
const SLIPS_FORGIVEN = 2;
/** A jump there and back in this time is a spike, s. */
const SPIKE = 6;

/** Takes readings that no coolant can have out of the channel, and says what they are. */
export function checkSensor({ time, value }: Channel): SensorCheck {
  const faults: SensorFault[] = [];
  const keep = new Uint8Array(time.length).fill(1);
  const outside = (kind: 'open' | 'short', isOut: (reading: number) => boolean) => {
    let times = 0;
    let first = -1;
    value.forEach((reading, at) => {
      if (!isOut(reading)) return;
      keep[at] = 0;
      times++;
      if (first === -1) first = at;
    });
    // Hard frost is no open circuit: that stands still at one value.
    const moves = times > SLIPS_FORGIVEN && kind === 'open' && risesOut(value, isOut);
    if (moves) {
      keep.fill(1);
      return 0;
    }
    if (times > SLIPS_FORGIVEN || (times > 0 && times > 0.2 * time.length))
      faults.push({
        kind: comesBack(value, isOut) ? 'jump' : kind,
        at: time[first] ?? 0,
        times,
        from: value[first - 1] ?? value[first] ?? 0,
        to: value[first] ?? 0,
      });
    return times;
  };
  let slips = 0;
  for (const times of [
    outside('open', (each) => each < OPEN_UNDER),
    outside('short', (each) => each > SHORT_OVER),
  ])
    if (times <= SLIPS_FORGIVEN) slips += times;
  const jumps = findJumps(time, value, keep);
  slips += jumps.slips;
  if (jumps.fault) faults.push(jumps.fault);
  return { faults, clean: kept({ time, value }, keep), slips };
}

/** Whether it is found in range again after it was out: a contact, not a cut wire. */
function comesBack(value: Float64Array, isOut: (reading: number) => boolean): boolean {
  const first = value.findIndex(isOut);
  const last = value.findLastIndex((reading) => !isOut(reading));
  return first !== -1 && last > first;
}

/** Whether the reading goes in and out of range without a leap: cold outside, not a contact. */
function risesOut(value: Float64Array, isOut: (reading: number) => boolean): boolean {
  if (!value.some((reading) => !isOut(reading))) return false;
  return value.every((reading, at) => {
    const before = value[at - 1];
    return before === undefined || isOut(before) === isOut(reading) || Math.abs(reading - before) < 4;
  });
}

function kept({ time, value }: Channel, keep: Uint8Array): Channel {
  return { time: time.filter((_, at) => keep[at] === 1), value: value.filter((_, at) => keep[at] === 1) };
}

/** Jumps between neighbours; a lone reading that leaps out and back is a slip and taken out. */
function findJumps(
  time: Float64Array,
  value: Float64Array,
  keep: Uint8Array,
): { slips: number; fault: SensorFault | undefined } {
  let last = -1;
  let slips = 0;
  let steps = 0;
  let spikes = 0;
  let first: SensorFault | undefined;
  for (let at = 0; at < time.length; at++) {
    if (!keep[at]) continue;
    const gap = (time[at] ?? 0) - (time[last] ?? Number.NEGATIVE_INFINITY);
    const change = (value[at] ?? 0) - (value[last] ?? 0);
    if (last >= 0 && gap <= JUMP_LONGEST && Math.abs(change) >= JUMP + JUMP_RATE * gap) {
      const back = returnsAt(time, value, keep, at, value[last] ?? 0);
      first ??= { kind: 'jump', at: time[at] ?? 0, times: 0, from: value[last] ?? 0, to: value[at] ?? 0 };
      if (back === undefined) steps++;
      else {
        if (back === at + 1) slips++;
        spikes++;
        for (let out = at; out < back; out++) keep[out] = 0;
        at = back;
      }
    }
    last = at;
  }
  const times = steps + spikes;
  const isFault = steps > 0 || spikes > SLIPS_FORGIVEN || spikes > slips;
  return { slips: isFault ? 0 : slips, fault: isFault && first ? { ...first, times } : undefined };
}

/** The reading at which a leap has come back to where it left, if it does so soon. */
function returnsAt(
  time: Float64Array,
  value: Float64Array,
  keep: Uint8Array,
  from: number,
  level: number,
): number | undefined {
  for (let at = from + 1; at < time.length && (time[at] ?? 0) - (time[from] ?? 0) <= SPIKE; at++)
    if (keep[at] && Math.abs((value[at] ?? 0) - level) < JUMP / 2 + 1) return at;
  return undefined;
}

/** A reading that does not move for so long is none, s. */
const STANDS_STILL = 480;
/** Standing and at speed alike for so long, even a coarse reading would have moved, s. */
const STILL_EVERYWHERE = 900;
/** At changing speed for so long, the same, s. */
const STILL_AT_LAST = 1200;
/** All of it within so much, K. */
const STILL_WITHIN = 0.3;
/** While the speed moved by so much, m/s. */
const SPEED_MOVED = 8;
/** A thermostat holds a figure too; so near its stamp a steady one may be its work, K. */
const REGULATED = 12;
/** A log that shows steps as small as this would show a thermostat at work, K. */
const FINE = 0.3;

/** An engine no warmer than the air by this is cold: driven, it gains degrees each minute, thermostat or not, K. */
const WARMER_THAN_AIR = 15;
/** Cold, driven and not moving for so long, s. */
const STANDS_COLD = 240;

/**
 * A reading that stands while the drive changes, and that no thermostat holds so still.
 *
 * @param outside K, from something else than the coolant itself
 */
export function stuckReading(
  channel: Channel,
  grid: Grid,
  drive: Drive | undefined,
  opens: number,
  outside: number | undefined,
): SensorFault | undefined {
  const { coolant, speed } = grid.signals;
  const shortest = Math.ceil(STANDS_STILL / grid.step);
  const fine = finestStep(channel) <= FINE;
  let from = 0;
  for (let at = 1; at <= coolant.length; at++) {
    if (
      at < coolant.length &&
      Math.abs((coolant[at] ?? Number.NaN) - (coolant[from] ?? Number.NaN)) <= STILL_WITHIN
    )
      continue;
    const level = coolant[from] ?? 0;
    const nearAir = outside !== undefined && level < outside + WARMER_THAN_AIR;
    if (at - from >= shortest || (nearAir && at - from >= STANDS_COLD / grid.step)) {
      const moved = drive && speed ? extentOf(speed, from, at - 1) : undefined;
      const driven = moved !== undefined && moved.high - moved.low > SPEED_MOVED;
      const exact = fine && coolant.subarray(from + 5, at - 5).every((each) => each === coolant[from + 5]);
      const everywhere =
        driven &&
        at - from >= STILL_EVERYWHERE / grid.step &&
        (at - from >= STILL_AT_LAST / grid.step ||
          drive?.standing.some((each) => each.from >= from && each.to < at));
      if (
        exact ||
        everywhere ||
        (nearAir && moved && moved.high > SPEED_MOVED) ||
        (driven && Math.abs(level - opens) > REGULATED)
      )
        return { kind: 'flat', at: from * grid.step, times: at - from, from: level, to: level };
    }
    from = at;
  }
  return undefined;
}

/** Smallest change between two readings that are not alike, K. */
function finestStep({ value }: Channel): number {
  let finest = Number.POSITIVE_INFINITY;
  for (let at = 1; at < value.length; at++) {
    const step = Math.abs((value[at] ?? 0) - (value[at - 1] ?? 0));
    if (step > 1e-6 && step < finest) finest = step;
  }
  return finest;
}
