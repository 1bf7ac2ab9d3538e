/** Faults that draw the line of another: on logs of the simulated car the verdict names the true one among them, or none. */
import { expect, test } from 'vitest';
import type { FaultId } from '../../src/car/faults.ts';
import { scoreOf } from './simulated-car.ts';

/** Not those the verdicts were looked at with. */
const SEEDS = Array.from({ length: 4 }, (_, at) => 700 + at);
/** What each is taken for, by the mechanism. */
const DOUBLES: readonly (readonly [FaultId, string])[] = [
  ['fan-motor-dead', 'a fan that runs, where the log holds only that it was asked for'],
  ['fan-relay-stuck-off', 'the same'],
  ['sensor-reads-low', 'an open thermostat, though a resistance in the plug agrees with the air when cold'],
  ['sensor-reads-high', 'a shut thermostat or a blocked radiator'],
  ['thermostat-opens-late', 'one that stays shut'],
];

test.each(DOUBLES)('%s is not called only %s', (fault) => {
  const scores = [false, true].flatMap((known) => SEEDS.map((seed) => scoreOf(fault, seed, known)));
  expect(scores).not.toContain('wrong blame');
  expect(scores).not.toContain('not read');
  expect(scores).toContain('right');
});
