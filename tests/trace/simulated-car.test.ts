/** On logs of the simulated car: faults that draw the line of another, faults that a log does not show, and a sound car. */
import { expect, test } from 'vitest';
import type { FaultId } from '../../src/car/faults.ts';
import { SHOWN_BY_LOGS } from '../../src/trace/cleared.ts';
import { type Scored, scored } from './simulated-car.ts';

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

/** Air that has gone or sits in the heater, a litre short, half a radiator: the line is that of a sound car. */
const HIDDEN: readonly FaultId[] = [
  'coolant-low',
  'trapped-air',
  'pump-impeller-failed',
  'radiator-blocked-inside',
  'thermostat-wrong-rating',
];

test.each(HIDDEN)('%s is never passed over in silence', (fault) => {
  const scores = [false, true].flatMap((known) => SEEDS.map((seed) => scored(fault, seed, known).score));
  expect(scores).not.toContain('sound');
});

/** Sound cars are called sound this often with stamp and fan typed, and with nothing known. */
const SOUND: readonly (readonly [string, boolean, number])[] = [
  ['its stamp and fan typed', true, 9],
  ['nothing known of it', false, 2],
];

test.each(SOUND)(
  'a sound car with %s is never blamed, and what clears it says something',
  (_, known, least) => {
    const all: Scored[] = Array.from({ length: 12 }, (_each, at) =>
      scored('normal-behaviour', 700 + at, known),
    );
    const scores = all.map(({ score }) => score);
    expect(scores.filter((score) => score !== 'right' && score !== 'cannot tell')).toEqual([]);
    expect(scores.filter((score) => score === 'right').length).toBeGreaterThanOrEqual(least);
    const called = all.flatMap(({ clears }) => clears ?? []);
    for (const { cleared, causes, lines } of called) {
      expect(cleared + causes).toBe(SHOWN_BY_LOGS.length);
      expect(lines).toBeLessThanOrEqual(4);
    }
    // Half of all causes on average: a verdict that clears nothing is none.
    const mean = called.reduce((sum, { cleared }) => sum + cleared, 0) / called.length;
    expect(mean).toBeGreaterThan(SHOWN_BY_LOGS.length / (known ? 2 : 2.5));
  },
);
