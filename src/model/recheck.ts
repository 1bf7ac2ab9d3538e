/** The recheck of a cause as a test of two outcomes: asked once a proof has come out for the cause, before a part is bought. */
import { likelihoodOf } from '../diagnosis/words.ts';
import type { Cause } from './cause.ts';

export const PROVEN = 'proven';
export const NOT_IT = 'not-it';
export const RECHECK_OUTCOMES = [PROVEN, NOT_IT] as const;

/** How often the recheck of a cause comes out otherwise though it is the cause, where the record does not say; common practice, no source. */
const USUALLY_MISSES = 0.05;

/** How often it comes out so with another cause where the record does not say; common practice, no source. */
const SEEN_OTHERWISE = 0.01;

/** The least for something else, which nobody has listed and which may look like anything; our own choice, no source. */
const LEAST_OTHERWISE = 0.002;

/** Minutes of a recheck that the record does not price; common practice, no source. */
const USUAL_MINUTES = 10;

const PREFIX = 'prove.';

/** Id of the recheck of a cause among the tests, and key of its answer. */
export function recheckId(cause: string): string {
  return `${PREFIX}${cause}`;
}

/** The cause whose recheck has this id; undefined when it is no recheck. */
export function causeOfRecheck(id: string): string | undefined {
  return id.startsWith(PREFIX) ? id.slice(PREFIX.length) : undefined;
}

export interface Recheck {
  /** What is done, and what shows that it is this cause. */
  do: string;
  minutes: number;
  /** Chance that it comes out for the cause: with this cause, with another one, with something else. */
  withIt: number;
  withAnother: number;
  /** With causes that show the same more often than others do. */
  withThese: Record<string, number>;
  withSomethingElse: number;
}

/** The recheck of a cause with its defaults filled in; undefined when it has none. */
export function recheckOf({ confirm }: Pick<Cause, 'confirm'>): Recheck | undefined {
  const { recheck, test, minutes } = confirm ?? {};
  if (recheck === undefined) return undefined;
  const {
    do: act,
    misses,
    elsewhere,
    minutes: own,
    also = {},
  } = typeof recheck === 'string'
    ? { do: recheck, misses: undefined, elsewhere: undefined, minutes: undefined, also: undefined }
    : recheck;
  const withAnother = elsewhere === undefined ? SEEN_OTHERWISE : likelihoodOf(elsewhere);
  return {
    do: act,
    minutes: own ?? (test === undefined ? minutes : undefined) ?? USUAL_MINUTES,
    withIt: 1 - (misses === undefined ? USUALLY_MISSES : likelihoodOf(misses)),
    withAnother,
    withThese: Object.fromEntries(Object.entries(also).map(([cause, word]) => [cause, likelihoodOf(word)])),
    withSomethingElse: Math.max(withAnother, LEAST_OTHERWISE),
  };
}
