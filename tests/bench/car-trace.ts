/**
 * The reader of road tests on logs of the simulated car, which another hand made than the reader's own simulation.
 * Prints and never fails: npx node tests/bench/car-trace.ts [cars for each fault]
 */
import { drawCar } from '../../src/car/car.ts';
import { driveOf, town } from '../../src/car/drive.ts';
import { drawSeverity, type FaultId, layoutFor } from '../../src/car/faults.ts';
import { logOf, SHAPES } from '../../src/car/log.ts';
import { randomOf } from '../../src/car/random.ts';
import { judgeTrace } from '../../src/trace/judge-trace.ts';
import { finish, readLog } from '../../src/trace/read/read-log.ts';
import { traceVehicleOf } from '../../src/trace/vehicle.ts';

const cars = Number(process.argv[2] ?? 20);
const FAULTS: readonly FaultId[] = [
  'normal-behaviour',
  'thermostat-stuck-open',
  'thermostat-opens-early',
  'thermostat-stuck-shut',
  'thermostat-opens-late',
  'thermostat-wrong-rating',
  'thermostat-missing',
  'thermostat-not-seated',
  'pump-impeller-failed',
  'fan-motor-dead',
  'fan-relay-stuck-off',
  'radiator-fins-blocked',
  'radiator-blocked-inside',
  'trapped-air',
  'coolant-low',
  'sensor-reads-low',
  'sensor-reads-high',
  'sensor-open-circuit',
  'sensor-intermittent',
];
const SCORES = ['right', 'cannot tell', 'sound', 'wrong blame', 'not read'] as const;
const shapes = Object.values(SHAPES);

/** Right: the fault is among the causes named, or a sound car is called sound. Sound: a faulty car is called sound. */
function scoreOf(id: FaultId, seed: number): (typeof SCORES)[number] {
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
  const { finding, causes } = judgeTrace(read.trace, traceVehicleOf(undefined)).verdict;
  const named: readonly string[] = causes;
  if (id !== 'normal-behaviour' && named.includes(id)) return 'right';
  if (named.length > 0) return 'wrong blame';
  if (finding !== 'sound') return 'cannot tell';
  return id === 'normal-behaviour' ? 'right' : 'sound';
}

console.log(
  `${cars} cars a fault, no vehicle chosen\n${''.padEnd(28)}${SCORES.map((score) => score.padStart(12)).join('')}`,
);
for (const id of FAULTS) {
  const scores = Array.from({ length: cars }, (_, seed) => scoreOf(id, seed));
  const cells = SCORES.map((score) => String(scores.filter((each) => each === score).length).padStart(12));
  console.log(`${id.padEnd(28)}${cells.join('')}`);
}
