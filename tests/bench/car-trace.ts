/**
 * The reader of road tests on logs of the simulated car, which another hand made than the reader's own simulation.
 * Once with nothing known of the car, once with its own stamp and fan figures.
 * Prints and never fails: npx node tests/bench/car-trace.ts [cars for each fault] [first seed]
 */
import type { FaultId } from '../../src/car/faults.ts';
import { SCORES, type Scored, scored } from '../trace/simulated-car.ts';

const cars = Number(process.argv[2] ?? 20);
const first = Number(process.argv[3] ?? 0);
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
/** Causes named, or sentences on what is left open, on average over the logs that have any. */
function mean(all: readonly Scored[], what: 'named' | 'open'): string {
  const some = all.filter((each) => each[what] > 0);
  return some.length === 0 ? '-' : (some.reduce((sum, each) => sum + each[what], 0) / some.length).toFixed(1);
}

for (const known of [false, true]) {
  const whose = known ? 'its stamp and fan typed' : 'no vehicle chosen';
  console.log(
    `\n${cars} cars a fault from seed ${first}, ${whose}\n${''.padEnd(28)}${[...SCORES, 'named', 'open'].map((each) => each.padStart(12)).join('')}`,
  );
  const sum = new Map<string, number>();
  for (const id of FAULTS) {
    const all = Array.from({ length: cars }, (_, at) => scored(id, first + at, known));
    for (const { score } of all) sum.set(score, (sum.get(score) ?? 0) + 1);
    const cells = SCORES.map((score) => String(all.filter((each) => each.score === score).length));
    const sizes = [mean(all, 'named'), mean(all, 'open')];
    console.log(`${id.padEnd(28)}${[...cells, ...sizes].map((each) => each.padStart(12)).join('')}`);
  }
  const sums = SCORES.map((score) => String(sum.get(score) ?? 0).padStart(12));
  console.log(`${'all'.padEnd(28)}${sums.join('')}`);
}
