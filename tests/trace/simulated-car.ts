/** Road tests of the simulated car, which another hand made than this reader's own simulation, and how their verdicts score. */
import { type Car, drawCar } from '../../src/car/car.ts';
import { driveOf, town } from '../../src/car/drive.ts';
import { drawSeverity, type FaultId, layoutFor } from '../../src/car/faults.ts';
import { logOf, SHAPES } from '../../src/car/log.ts';
import { randomOf } from '../../src/car/random.ts';
import type { NoVerdictReason } from '../../src/trace/cold-side.ts';
import { judgeTrace } from '../../src/trace/judge-trace.ts';
import { finish, readLog } from '../../src/trace/read/read-log.ts';
import { type TypedFigures, traceVehicleOf } from '../../src/trace/vehicle.ts';

export const SCORES = ['right', 'cannot tell', 'sound', 'wrong blame', 'not read'] as const;
const shapes = Object.values(SHAPES);

/** Faults that only a part put to work shows, and how a verdict says that it was not. */
const NOT_ASKED: Partial<Record<FaultId, readonly NoVerdictReason[]>> = {
  'radiator-fins-blocked': ['radiator-not-asked'],
  'radiator-blocked-inside': ['radiator-not-asked'],
  'fan-motor-dead': ['fan-not-asked', 'fan-did-not-show'],
  'fan-relay-stuck-off': ['fan-not-asked', 'fan-did-not-show'],
};

/** Stamp and fan as a technician types them off the car, whole degrees. */
function figuresOf({ values }: Car): TypedFigures {
  const fanOn = Math.round(values.stamp + values.fanOn);
  return { stamp: values.stamp, fanOn, fanOff: Math.round(fanOn - values.fanOff) };
}

/**
 * Right: the fault is among the causes named, or a sound car is called sound. Sound: a faulty car is called sound, and the
 * verdict does not say that what is broken was never put to work.
 */
export function scoreOf(id: FaultId, seed: number, known: boolean): (typeof SCORES)[number] {
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
  if (!read.ok) return 'not read';
  const { finding, causes, open } = judgeTrace(
    read.trace,
    traceVehicleOf(undefined, known ? figuresOf(car) : {}),
  ).verdict;
  const named: readonly string[] = causes;
  if (id !== 'normal-behaviour' && named.includes(id)) return 'right';
  if (named.length > 0) return 'wrong blame';
  if (finding !== 'sound') return 'cannot tell';
  if (id === 'normal-behaviour') return 'right';
  return NOT_ASKED[id]?.some((each) => open.includes(each)) ? 'cannot tell' : 'sound';
}
