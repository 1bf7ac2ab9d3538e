/** Road tests of the simulated car, which another hand made than this reader's own simulation, and how their verdicts score. */
import { type Car, drawCar } from '../../src/car/car.ts';
import { driveOf, town } from '../../src/car/drive.ts';
import { drawSeverity, type FaultId, layoutFor } from '../../src/car/faults.ts';
import { logOf, SHAPES } from '../../src/car/log.ts';
import { randomOf } from '../../src/car/random.ts';
import { judgeTrace } from '../../src/trace/judge-trace.ts';
import { finish, readLog } from '../../src/trace/read/read-log.ts';
import { type TypedFigures, traceVehicleOf } from '../../src/trace/vehicle.ts';

export const SCORES = ['right', 'cannot tell', 'not cleared', 'sound', 'wrong blame', 'not read'] as const;
export type Score = (typeof SCORES)[number];
const shapes = Object.values(SHAPES);

export interface Scored {
  score: Score;
  /** Causes named. */
  named: number;
  /** Of a log called sound: causes it clears, and lines and causes that it does not. */
  clears: { cleared: number; lines: number; causes: number } | undefined;
}

/** Stamp and fan as a technician types them off the car, whole degrees. */
function figuresOf({ values }: Car): TypedFigures {
  const fanOn = Math.round(values.stamp + values.fanOn);
  return { stamp: values.stamp, fanOn, fanOff: Math.round(fanOn - values.fanOff) };
}

/** More lines of what is not cleared are not read, and a verdict that clears fewer causes has said nothing. */
const MOST_LINES = 4;
const LEAST_CLEARED = 8;

/**
 * Right: the fault is among the causes named, or a sound car is called sound. Not cleared: a faulty car is called sound,
 * and the fault is on the printed list of what this log does not clear; a list too long to be read does not count.
 * Sound: called sound without that.
 */
export function scored(id: FaultId, seed: number, known: boolean): Scored {
  const random = randomOf(seed, `${id} trace`);
  const car = drawCar(seed, { layout: { kind: 'by-pass closing', ...layoutFor(id) } });
  const drive = driveOf(273.15 + random.between(-5, 32), [
    { seconds: 90 },
    ...town(random, 400, 12),
    { seconds: 660, speed: random.between(20, 27) },
    { seconds: 900 },
  ]);
  const fault = { id, severity: drawSeverity(random, id) };
  const shape = shapes[seed % shapes.length];
  const read = finish(readLog(logOf(drive, car, fault, seed, shape && { shape }).text));
  if (!read.ok) return { score: 'not read', named: 0, clears: undefined };
  const { verdict } = judgeTrace(read.trace, traceVehicleOf(undefined, known ? figuresOf(car) : {}));
  const { finding, clears } = verdict;
  const causes: readonly string[] = verdict.causes;
  const left = (clears?.left ?? []).flatMap((each) => each.causes);
  const as = (score: Score): Scored => ({
    score,
    named: causes.length,
    clears: clears && {
      cleared: clears.cleared.length,
      lines: clears.left.length,
      causes: new Set(left).size,
    },
  });
  if (id !== 'normal-behaviour' && causes.includes(id)) return as('right');
  if (causes.length > 0) return as('wrong blame');
  if (finding !== 'sound') return as('cannot tell');
  if (id === 'normal-behaviour') return as('right');
  const short = clears && clears.left.length <= MOST_LINES && clears.cleared.length >= LEAST_CLEARED;
  return as(short && left.includes(id) ? 'not cleared' : 'sound');
}
