/** What the coolant reading does that no coolant can: jumps, open and short circuit. */

import { ZERO_CELSIUS } from '../physics/units.ts';
import type { Channel } from './read/read-log.ts';

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

/** @param change K, between two readings @param gap s; readings far apart say nothing */
export function isLeap(change: number, gap: number): boolean {
  return gap <= JUMP_LONGEST && Math.abs(change) >= JUMP + JUMP_RATE * gap;
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
    if (last >= 0 && isLeap(change, gap)) {
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
