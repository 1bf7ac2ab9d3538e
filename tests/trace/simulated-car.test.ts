/** Faults that draw the line of another: on logs of the simulated car the verdict names the true one among them, or none. */
import { expect, test } from 'vitest';
import type { FaultId } from '../../src/car/faults.ts';
import { scored } from './simulated-car.ts';

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
  const scores = [false, true].flatMap((known) => SEEDS.map((seed) => scored(fault, seed, known).score));
  expect(scores).not.toContain('wrong blame');
  expect(scores).not.toContain('not read');
  expect(scores).toContain('right');
});

test('a sound car is blamed for nothing, and called sound once its stamp and fan are known', () => {
  const seeds = Array.from({ length: 12 }, (_, at) => 720 + at);
  const scores = (known: boolean) => seeds.map((seed) => scored('normal-behaviour', seed, known).score);
  expect(scores(false).filter((each) => each === 'wrong blame')).toEqual([]);
  expect(scores(true).filter((each) => each !== 'right').length).toBeLessThanOrEqual(2);
});

/** What a log never shows while it is mild, or shows only at work: the verdict on the regulation says that it has not cleared it. */
test.each([
  'coolant-low',
  'trapped-air',
  'pump-impeller-failed',
  'radiator-blocked-inside',
  'thermostat-wrong-rating',
] as const)('%s is never passed over in silence', (fault) => {
  const scores = [false, true].flatMap((known) => SEEDS.map((seed) => scored(fault, seed, known).score));
  expect(scores).not.toContain('sound');
});
