/**
 * A time that runs at a step, kept by the moment at which it ends: a page that sleeps, is left or is loaded anew reads the same
 * time left. All moments are milliseconds since 1970, all lengths milliseconds.
 */
import { twoDigits } from '../../model/day.ts';

export interface Timer {
  id: string;
  /** How long it runs in all. */
  length: number;
  ends: number;
  /** What it is for: the record's title and the words of the step. */
  title: string;
  step: string;
  /** Where it was started, from the root of the site. */
  from: string;
}

const SECOND = 1000;
const MINUTE = 60 * SECOND;
/** More lines than this are no help to anybody. */
export const MOST = 12;
/** A day, so that a damaged entry does not stand for ever. */
const LONGEST = 24 * 60 * MINUTE;

/** @param minutes above nothing, at most a day */
export function timerFor(
  about: Pick<Timer, 'id' | 'title' | 'step' | 'from'>,
  minutes: number,
  now: number,
): Timer {
  const length = Math.min(minutes * MINUTE, LONGEST);
  return { ...about, length, ends: now + length };
}

/** Time left, never below nothing and never more than the whole length. */
export function timeLeft({ ends, length }: Timer, now: number): number {
  return Math.min(Math.max(ends - now, 0), length);
}

export const isDue = (timer: Timer, now: number) => timeLeft(timer, now) === 0;

/**
 * More time left than the whole length: the device's clock was set back meanwhile, and how much has run is not known. It runs the
 * whole length once more, so that a hold is never called done too early. A clock set forward cannot be told from a device that slept.
 * @returns the same object where nothing is to be mended
 */
export function mended(timer: Timer, now: number): Timer {
  return timer.ends - now > timer.length ? { ...timer, ends: now + timer.length } : timer;
}

/** Time left as a clock shows it, begun seconds counted whole: 14:59, 1:04:00. */
export function clockText(left: number): string {
  const seconds = Math.ceil(left / SECOND);
  const hours = Math.floor(seconds / 3600);
  const minutes = Math.floor(seconds / 60) % 60;
  return `${hours > 0 ? `${hours}:${twoDigits(minutes)}` : minutes}:${twoDigits(seconds % 60)}`;
}

/** A length in words: 15 min, 1 h, 1 h 30 min. @param minutes rounded to whole ones */
export function lengthText(minutes: number): string {
  const whole = Math.round(minutes);
  const [hours, rest] = [Math.floor(whole / 60), whole % 60];
  return [hours > 0 && `${hours} h`, (rest > 0 || hours === 0) && `${rest} min`].filter(Boolean).join(' ');
}

/** What a device has kept, without what is no timer: anything may lie there. */
export function readTimers(value: unknown): Timer[] {
  return Array.isArray(value) ? value.filter(isTimer).slice(0, MOST) : [];
}

function isTimer(value: unknown): value is Timer {
  if (typeof value !== 'object' || value === null) return false;
  const { id, title, step, from, length, ends } = value as Record<string, unknown>;
  const isLine = (each: unknown) => typeof each === 'string';
  const isAddress = typeof from === 'string' && /^[a-z-]+(\/[a-z0-9-]+)*\.html(#.*)?$/.test(from);
  return (
    [id, title, step].every(isLine) &&
    isAddress &&
    typeof length === 'number' &&
    length > 0 &&
    length <= LONGEST &&
    Number.isFinite(ends)
  );
}
