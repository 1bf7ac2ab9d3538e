/** Simulated road tests through reader and verdict, scored. */
import { judgeTrace } from '../../src/trace/judge-trace.ts';
import { finish, readLog } from '../../src/trace/read/read-log.ts';
import { traceVehicleOf } from '../../src/trace/vehicle.ts';
import type { FindingId } from '../../src/trace/verdict.ts';
import type { Fault } from './car.ts';
import { type Score, score } from './score.ts';
import { simulate } from './simulate.ts';

export interface Run {
  seed: number;
  fault: Fault;
  outside: number;
  finding: FindingId | 'not read';
  score: Score;
  open: readonly string[];
  /** What the drive did not ask, so that no reader could answer: never near the opening, never to the dead fan's figure. */
  notAsked: 'never warm' | 'fan not reached' | undefined;
}

/** Nearer to the opening than this the thermostat may show, K. */
const NEAR_OPENING = 5;

export function runOne(seed: number, asAsked = false): Run {
  const { fault, truth, outside, text, sheet, car } = simulate(seed, asAsked);
  const read = finish(readLog(text));
  if (!read.ok)
    return {
      seed,
      fault,
      outside,
      finding: 'not read',
      score: 'cannot tell',
      open: [read.fault.id],
      notAsked: undefined,
    };
  const { verdict, hot } = judgeTrace(read.trace, traceVehicleOf(sheet));
  const { finding, open } = verdict;
  const highest = hot.highest - 273.15;
  const notAsked =
    highest < car.opens - NEAR_OPENING
      ? 'never warm'
      : fault === 'fan dead' && highest < car.fanOn
        ? 'fan not reached'
        : undefined;
  return { seed, fault, outside, finding, score: score(truth, verdict), open, notAsked };
}

/** Counts by a key, in the order met. */
export function countBy<T>(items: readonly T[], key: (item: T) => string): Map<string, number> {
  const counts = new Map<string, number>();
  for (const item of items) counts.set(key(item), (counts.get(key(item)) ?? 0) + 1);
  return counts;
}
