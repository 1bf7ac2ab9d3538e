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
import type { FindingId } from '../../src/trace/verdict.ts';

export const SCORES = ['right', 'cannot tell', 'not cleared', 'sound', 'wrong blame', 'not read'] as const;
const shapes = Object.values(SHAPES);

const RADIATOR_OPEN: readonly NoVerdictReason[] = ['radiator-not-asked', 'radiator-asked-lightly'];
const FAN_OPEN: readonly NoVerdictReason[] = ['fan-not-asked', 'fan-did-not-show', 'fan-only-asked'];

/** How a verdict on a sound regulation says, in a sentence of its own, that it has not cleared a fault. */
const NOT_CLEARED: Partial<Record<FaultId, readonly NoVerdictReason[]>> = {
  'radiator-fins-blocked': RADIATOR_OPEN,
  'radiator-blocked-inside': RADIATOR_OPEN,
  'pump-impeller-failed': RADIATOR_OPEN,
  'fan-motor-dead': FAN_OPEN,
  'fan-relay-stuck-off': FAN_OPEN,
  'coolant-low': ['level-not-shown'],
  'trapped-air': ['level-not-shown'],
  'thermostat-wrong-rating': ['few-kelvin-out'],
  'thermostat-opens-early': ['few-kelvin-out'],
  'thermostat-opens-late': ['few-kelvin-out'],
  'sensor-reads-low': ['few-kelvin-out'],
  'sensor-reads-high': ['few-kelvin-out'],
};

/** Stamp and fan as a technician types them off the car, whole degrees. */
function figuresOf({ values }: Car): TypedFigures {
  const fanOn = Math.round(values.stamp + values.fanOn);
  return { stamp: values.stamp, fanOn, fanOff: Math.round(fanOn - values.fanOff) };
}

export interface Scored {
  score: (typeof SCORES)[number];
  /** Causes named. */
  named: number;
  /** Sentences on what the log leaves open. */
  open: number;
}

/**
 * Right: the fault is among the causes named, or a sound car is called sound. Not cleared: a faulty car's regulation is
 * called sound, and a sentence says that the log does not clear what is broken. Sound: no sentence says so.
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
  if (!read.ok) return { score: 'not read', named: 0, open: 0 };
  const { finding, causes, open } = judgeTrace(
    read.trace,
    traceVehicleOf(undefined, known ? figuresOf(car) : {}),
  ).verdict;
  return { score: scoreOf(id, finding, causes, open), named: causes.length, open: open.length };
}

function scoreOf(
  id: FaultId,
  finding: FindingId,
  causes: readonly string[],
  open: readonly NoVerdictReason[],
): Scored['score'] {
  if (id !== 'normal-behaviour' && causes.includes(id)) return 'right';
  if (causes.length > 0) return 'wrong blame';
  if (finding !== 'sound') return 'cannot tell';
  if (id === 'normal-behaviour') return 'right';
  return NOT_CLEARED[id]?.some((each) => open.includes(each)) ? 'not cleared' : 'sound';
}
