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
}

export function runOne(seed: number, asAsked = false): Run {
  const { fault, outside, text, sheet } = simulate(seed, asAsked);
  const read = finish(readLog(text));
  if (!read.ok)
    return { seed, fault, outside, finding: 'not read', score: 'cannot tell', open: [read.fault.id] };
  const { verdict } = judgeTrace(read.trace, traceVehicleOf(sheet));
  const { finding, open } = verdict;
  return { seed, fault, outside, finding, score: score(fault, verdict), open };
}

/** Counts by a key, in the order met. */
export function countBy<T>(items: readonly T[], key: (item: T) => string): Map<string, number> {
  const counts = new Map<string, number>();
  for (const item of items) counts.set(key(item), (counts.get(key(item)) ?? 0) + 1);
  return counts;
}
