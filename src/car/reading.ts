/**
 * What a test of the shelf shows on a simulated car, with the noise of the tool in hand and slips of the eye.
 *
 * Ids of tests and outcomes are the shelf's; nothing is read from there. Where a record leaves a gap between two
 * outcomes (a hose that warms 12 K early), the middle of the gap parts them.
 */

import type { Bench } from './bench.ts';
import { benchOf, type ToolReading } from './bench.ts';
import type { Car, CarLayout } from './car.ts';
import { randomOf } from './random.ts';
import * as contents from './read-contents.ts';
import * as parts from './read-parts.ts';
import * as road from './read-road.ts';
import * as warm from './read-warm.ts';

interface Test {
  readonly outcomes: readonly string[];
  /** Layouts the record is for. */
  readonly layout?: (layout: CarLayout) => boolean;
  readonly read: (bench: Bench) => ToolReading<string>;
}

const electricFan = ({ fan }: CarLayout) => fan !== 'viscous clutch';

export const TESTS = {
  'warm-up-timing': { outcomes: ['on-time', 'slow', 'never', 'too-fast'], read: warm.warmUpTiming },
  'hose-warm-up-outlet-side': {
    outcomes: ['warm-early', 'warm-on-time', 'stays-cold'],
    layout: ({ thermostat }) => thermostat === 'outlet side',
    read: warm.hoseOutletSide,
  },
  'hose-warm-up-inlet-side': {
    outcomes: ['warm-early', 'warm-on-time', 'stays-cold'],
    layout: ({ thermostat }) => thermostat === 'inlet side',
    read: warm.hoseInletSide,
  },
  'cruise-trace': {
    outcomes: ['holds', 'falls-at-speed', 'frost-only', 'steady-low', 'jumps'],
    read: road.cruiseTrace,
  },
  'idle-to-fan-trace': {
    outcomes: ['cycles', 'climbs-no-fan', 'climbs-with-fan', 'never-gets-there'],
    read: warm.idleToFan,
  },
  'road-load-test': { outcomes: ['holds', 'climbs-on-load', 'climbs-at-standstill'], read: road.roadLoad },
  'compare-readings': {
    outcomes: ['all-agree', 'scan-reads-low', 'scan-reads-high', 'gauge-stands-alone'],
    read: warm.compareReadings,
  },
  'cold-soak-comparison': {
    outcomes: ['together', 'coolant-below', 'coolant-above', 'substitute-value'],
    read: warm.coldSoak,
  },
  'heater-hose-pair': {
    outcomes: ['both-hot', 'one-hot', 'both-cool', 'better-when-revved'],
    read: warm.heaterHosePair,
  },
  'fan-behaviour': {
    outcomes: ['as-it-should', 'runs-always', 'never-runs', 'one-stage-missing'],
    read: road.fanBehaviour,
  },
  'blend-door-sweep': {
    outcomes: ['follows', 'does-not-follow', 'one-side-only'],
    layout: ({ heater }) => heater !== 'valve-controlled',
    read: road.blendDoor,
  },
  'heater-valve-movement': {
    outcomes: ['moves-and-flows', 'does-not-move', 'moves-no-flow'],
    layout: ({ heater }) => heater === 'valve-controlled',
    read: road.heaterValve,
  },
  'brake-drag': { outcomes: ['alike', 'undecided', 'one-hot'], read: road.brakeDrag },
  'vent-air-flow': { outcomes: ['strong', 'weak', 'some-speeds-only'], read: road.ventAir },
  'pressure-rise-from-cold': { outcomes: ['with-heat', 'at-once', 'never-builds'], read: warm.pressureRise },
  'hose-squeeze': {
    outcomes: ['springs-back', 'air-comes', 'soft-or-flat', 'hard-cold'],
    read: contents.hoseSqueeze,
  },
  'code-read': {
    outcomes: ['nothing-new', 'too-cold-code', 'sensor-circuit-code', 'actuator-code'],
    read: road.codeRead,
  },
  'pressure-test-cold': {
    outcomes: ['holds', 'drip-outside', 'falls-unseen'],
    read: contents.pressureTestCold,
  },
  'cap-test': { outcomes: ['holds', 'leaks-early', 'vacuum-stuck', 'wrong-stamp'], read: contents.capTest },
  'bubble-watch': { outcomes: ['still', 'stops', 'never-stops'], read: contents.bubbleWatch },
  'level-cold': { outcomes: ['at-mark', 'a-little-low', 'far-down'], read: contents.levelCold },
  'return-flow-watch': { outcomes: ['streams', 'dribbles', 'nothing'], read: contents.returnFlow },
  'combustion-gas-test': {
    outcomes: ['unchanged', 'changes-quickly', 'changes-slowly'],
    read: contents.combustionGas,
  },
  'fill-account-test': { outcomes: ['balanced', 'a-little-short', 'far-short'], read: contents.fillAccount },
  'sensor-resistance': {
    outcomes: ['on-curve', 'too-high', 'too-low', 'open-or-shorted'],
    read: parts.sensorResistance,
  },
  'sensor-unplug': {
    outcomes: ['follows', 'stuck-cold', 'stuck-hot', 'gauge-does-not-follow'],
    read: parts.sensorUnplug,
  },
  'fan-direct-power': { outcomes: ['strong', 'weak', 'dead'], layout: electricFan, read: parts.fanDirect },
  'fan-relay-swap': {
    outcomes: ['cured', 'unchanged', 'runs-without-relay'],
    layout: electricFan,
    read: parts.relaySwap,
  },
  'fan-current': {
    outcomes: ['as-expected', 'too-high', 'too-low', 'starved', 'none'],
    layout: electricFan,
    read: parts.fanCurrent,
  },
  'relay-control-voltage': {
    outcomes: ['as-ordered', 'missing', 'always-there'],
    layout: electricFan,
    read: parts.relayControl,
  },
  'thermostat-inspection': {
    outcomes: ['sound', 'gapes-cold', 'wrong-stamp', 'missing', 'badly-seated'],
    read: parts.thermostatInspection,
  },
  'thermostat-bench-test': {
    outcomes: ['opens-at-stamp', 'opens-early', 'open-when-cold', 'late-or-never'],
    read: parts.thermostatBench,
  },
  'fin-inspection': { outcomes: ['clear', 'clogged', 'rotted'], read: parts.finInspection },
  'refractometer-test': { outcomes: ['as-wanted', 'too-weak', 'too-strong'], read: parts.refractometer },
} as const satisfies Record<string, Test>;

export type TestId = keyof typeof TESTS;
export const TEST_IDS = Object.keys(TESTS) as TestId[];

/** Slips of the eye: this share of readings is noted as any other outcome. A judgement, no source. */
export const SLIP = 0.02;

export interface Reading {
  readonly test: TestId;
  /** What the reader notes. */
  readonly outcome: string;
  /** What the tool showed, by its label with the unit. */
  readonly shows: Readonly<Record<string, number | string>>;
  readonly slipped: boolean;
}

/** Whether the record of a test is for this car. */
export function testFits(id: TestId, { layout }: Car): boolean {
  const test: Test = TESTS[id];
  return test.layout?.(layout) ?? true;
}

/**
 * Reads a test on a car.
 *
 * The same car, seed and test read the same again: repeating a test must not average its noise away.
 * @param car with its fault: see `withFault`
 * @param outside K
 * @param slip share of readings noted wrongly, 0 to 1
 */
export function readingOf(id: TestId, car: Car, seed: number, outside: number, slip = SLIP): Reading {
  const test: Test = TESTS[id];
  const { outcome, shows } = test.read(benchOf(car, seed, id, outside));
  const random = randomOf(seed, `${id} slip`);
  if (!random.chance(slip)) return { test: id, outcome, shows, slipped: false };
  const others = test.outcomes.filter((other) => other !== outcome);
  const noted = others[Math.floor(random.share() * others.length)] ?? outcome;
  return { test: id, outcome: noted, shows, slipped: true };
}
