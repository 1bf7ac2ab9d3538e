/**
 * The regulation's own test of a thermostat, beside ours: 13 CCR 1968.2 (e)(10.2.1), from memory, text not obtained
 * (tests hold the limits against check figures). The coolant has to come within 20 °F of the nominal opening in the
 * time the maker had approved, and, phased in from model year 2016, must not fall back under it.
 */
import type { Grid } from './grid.ts';

/** 20 °F, K. */
export const MONITOR_DISTANCE = 20 / 1.8;

/** 20 °F: in more cold a maker may leave the monitor off; from memory, K. */
export const MONITOR_COLDEST = 273.15 - 12 / 1.8;

export interface MonitorResult {
  /** K. */
  threshold: number;
  /** Seconds from the start at which it was reached. */
  reachedAt: number | undefined;
  /** Seconds spent under it afterwards with the engine running. */
  secondsUnderAfter: number;
  result: 'meets' | 'does not reach' | 'falls back' | 'cannot tell' | 'does not apply';
}

/** Shorter dips are noise, s. */
const SHORTEST_FALL = 30;
/** A log that ends sooner, still rising, has not tried, s. */
const LONG_ENOUGH = 900;
/** Jitter allowed before a dip counts, K. */
const JITTER = 0.5;

/**
 * @param opens nominal opening, K
 * @param outside K, where it is known
 */
export function thermostatMonitor(
  { smooth, signals, step }: Grid,
  opens: number,
  outside?: number,
): MonitorResult {
  const threshold = opens - MONITOR_DISTANCE;
  const reached = smooth.findIndex((each) => each >= threshold);
  const runs = (at: number) => signals.rpm === undefined || (signals.rpm[at] ?? 1000) > 50;
  let under = 0;
  if (reached !== -1)
    for (let at = reached; at < smooth.length; at++)
      if ((smooth[at] ?? threshold) < threshold - JITTER && runs(at)) under += step;
  const duration = smooth.length * step;
  const result =
    outside !== undefined && outside < MONITOR_COLDEST
      ? 'does not apply'
      : reached === -1
        ? duration >= LONG_ENOUGH
          ? 'does not reach'
          : 'cannot tell'
        : under >= SHORTEST_FALL
          ? 'falls back'
          : 'meets';
  return {
    threshold,
    reachedAt: reached === -1 ? undefined : reached * step,
    secondsUnderAfter: under,
    result,
  };
}
