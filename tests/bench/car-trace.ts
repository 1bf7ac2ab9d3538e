/**
 * The reader of road tests on logs of the simulated car, which another hand made than the reader's own simulation.
 * Once with nothing known of the car, once with its own stamp and fan figures.
 * Prints and never fails: npx node tests/bench/car-trace.ts [cars for each fault] [first seed]
 */
import type { FaultId } from '../../src/car/faults.ts';
import { SHOWN_BY_LOGS } from '../../src/trace/cleared.ts';
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

const mean = (values: readonly number[]) =>
  values.length === 0 ? '-' : (values.reduce((a, b) => a + b, 0) / values.length).toFixed(1);
const range = (values: readonly number[]) =>
  values.length === 0 ? '-' : `${Math.min(...values)} to ${Math.max(...values)}`;

for (const known of [false, true]) {
  const whose = known ? 'its stamp and fan typed' : 'no vehicle chosen';
  const head = [...SCORES, 'causes named'].map((each) => each.padStart(13)).join('');
  console.log(`\n${cars} cars a fault from seed ${first}, ${whose}\n${''.padEnd(28)}${head}`);
  const all: (Scored & { id: FaultId })[] = [];
  const row = (title: string, part: readonly Scored[]) => {
    const cells = SCORES.map((score) => part.filter((each) => each.score === score).length);
    const named = part.map((each) => each.named).filter((each) => each > 0);
    console.log(
      `${title.padEnd(28)}${[...cells, mean(named)].map((each) => String(each).padStart(13)).join('')}`,
    );
  };
  for (const id of FAULTS) {
    const part = Array.from({ length: cars }, (_, at) => ({ id, ...scored(id, first + at, known) }));
    all.push(...part);
    row(id, part);
  }
  row('all', all);
  const wrong = all.filter(
    ({ score }) => score === 'wrong blame' || score === 'sound' || score === 'not read',
  );
  const blamed = all.filter(({ score }) => score === 'wrong blame').length;
  const share = (count: number) => `${((100 * count) / all.length).toFixed(1)} %`;
  console.log(`right or honest ${share(all.length - wrong.length)}, wrong blame ${share(blamed)}`);
  const half = all.filter(
    ({ score, clears }) => score === 'not cleared' && 2 * (clears?.cleared ?? 0) < SHOWN_BY_LOGS.length,
  );
  console.log(
    `were a list to count only where half the causes are cleared: ${share(all.length - wrong.length - half.length)}`,
  );
  const named = all.map((each) => each.named).filter((each) => each > 0);
  console.log(`causes named where any are: mean ${mean(named)}, ${range(named)}`);
  for (const sound of [true, false]) {
    const called = all
      .filter(({ id }) => (id === 'normal-behaviour') === sound)
      .flatMap(({ clears }) => clears ?? []);
    const cleared = called.map((each) => each.cleared);
    const lines = called.map((each) => each.lines);
    console.log(
      `${sound ? 'sound' : 'faulty'} cars called sound ${called.length}: of ${SHOWN_BY_LOGS.length} causes cleared ${mean(cleared)} (${range(cleared)}), not cleared ${mean(called.map((each) => each.causes))} in ${mean(lines)} lines (${range(lines)})`,
    );
  }
}
