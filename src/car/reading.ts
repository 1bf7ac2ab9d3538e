/**
 * What a test of the shelf shows on a simulated car, with the noise of the tool in hand and slips of the eye.
 *
 * Ids of tests and outcomes, and the figures that part these, are the shelf's, written down here; nothing is read from there.
 */

import type { Bench } from './bench.ts';
import { benchOf, type ToolReading } from './bench.ts';
import type { Car, CarLayout } from './car.ts';
import { randomOf } from './random.ts';
import * as circuit from './read-circuit.ts';
import * as contents from './read-contents.ts';
import * as flow from './read-flow.ts';
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
  'warm-up-timing': {
    outcomes: ['on-time', 'slow', 'levels-out-between', 'never', 'too-fast'],
    read: warm.warmUpTiming,
  },
  'hose-warm-up-outlet-side': {
    outcomes: ['warm-early', 'a-little-early', 'warm-on-time', 'stays-cold'],
    layout: ({ thermostat }) => thermostat === 'outlet side',
    read: warm.hoseOutletSide,
  },
  'hose-warm-up-inlet-side': {
    outcomes: ['warm-early', 'a-little-early', 'warm-on-time', 'stays-cold'],
    layout: ({ thermostat }) => thermostat === 'inlet side',
    read: warm.hoseInletSide,
  },
  'cruise-trace': {
    outcomes: ['holds', 'undecided', 'falls-at-speed', 'frost-only', 'steady-low', 'jumps'],
    read: road.cruiseTrace,
  },
  'idle-to-fan-trace': {
    outcomes: ['cycles', 'comes-early', 'comes-late', 'climbs-no-fan', 'climbs-with-fan', 'never-gets-there'],
    read: warm.idleToFan,
  },
  'road-load-test': {
    outcomes: ['holds', 'gains-and-returns', 'climbs-on-load', 'climbs-at-standstill', 'climbs-everywhere'],
    read: road.roadLoad,
  },
  'compare-readings': {
    outcomes: ['all-agree', 'scan-reads-low', 'undecided', 'scan-reads-high', 'gauge-stands-alone'],
    read: warm.compareReadings,
  },
  'cold-soak-comparison': {
    outcomes: ['together', 'coolant-below', 'coolant-above', 'substitute-value'],
    read: warm.coldSoak,
  },
  'heater-hose-pair': {
    outcomes: ['both-hot', 'undecided', 'one-hot', 'both-cool', 'engine-not-warm', 'better-when-revved'],
    read: warm.heaterHosePair,
  },
  'fan-behaviour': {
    outcomes: ['as-it-should', 'ac-only', 'runs-always', 'never-runs', 'one-stage-missing'],
    read: road.fanBehaviour,
  },
  'blend-door-sweep': {
    outcomes: ['follows', 'does-not-follow', 'one-side-only'],
    layout: ({ heater }) => heater !== 'valve-controlled',
    read: road.blendDoor,
  },
  'heater-valve-movement': {
    outcomes: ['moves-and-flows', 'undecided', 'does-not-move', 'moves-no-flow'],
    layout: ({ heater }) => heater === 'valve-controlled',
    read: road.heaterValve,
  },
  'brake-drag': { outcomes: ['alike', 'undecided', 'one-hot'], read: road.brakeDrag },
  'vent-air-flow': { outcomes: ['strong', 'weak', 'some-speeds-only'], read: road.ventAir },
  'pressure-rise-from-cold': {
    outcomes: ['with-heat', 'undecided', 'at-once', 'never-builds'],
    read: warm.pressureRise,
  },
  'hose-squeeze': {
    outcomes: ['springs-back', 'air-comes', 'soft-or-flat', 'drawn-flat', 'flat-when-revved', 'hard-cold'],
    read: contents.hoseSqueeze,
  },
  'code-read': {
    outcomes: ['nothing-new', 'too-cold-code', 'sensor-circuit-code', 'actuator-code'],
    read: road.codeRead,
  },
  'pressure-test-cold': {
    outcomes: ['holds', 'undecided', 'drip-outside', 'falls-unseen'],
    read: contents.pressureTestCold,
  },
  'cap-test': { outcomes: ['holds', 'leaks-early', 'vacuum-stuck', 'wrong-stamp'], read: contents.capTest },
  'bubble-watch': { outcomes: ['still', 'stops', 'undecided', 'never-stops'], read: contents.bubbleWatch },
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
    outcomes: ['cured', 'not-shown', 'unchanged', 'runs-without-relay'],
    layout: electricFan,
    read: parts.relaySwap,
  },
  'fan-current': {
    outcomes: ['as-expected', 'a-little-high', 'too-high', 'too-low', 'starved', 'none'],
    layout: electricFan,
    read: parts.fanCurrent,
  },
  'relay-control-voltage': {
    outcomes: ['as-ordered', 'missing', 'always-there'],
    layout: electricFan,
    read: parts.relayControl,
  },
  'thermostat-inspection': {
    outcomes: [
      'sound',
      'gapes-cold',
      'hair-open',
      'wrong-stamp',
      'stamp-too-high',
      'missing',
      'badly-seated',
    ],
    read: parts.thermostatInspection,
  },
  'thermostat-bench-test': {
    outcomes: ['opens-at-stamp', 'opens-early', 'open-when-cold', 'late-or-never'],
    read: parts.thermostatBench,
  },
  'fin-inspection': {
    outcomes: ['clear', 'undecided', 'clogged', 'rotted', 'cowl-missing'],
    read: parts.finInspection,
  },
  'refractometer-test': { outcomes: ['as-wanted', 'too-weak', 'too-strong'], read: parts.refractometer },
  'radiator-face-map': {
    outcomes: ['even-fall', 'steep-fall', 'cold-patch', 'all-cold', 'hot-all-over'],
    read: flow.faceMap,
  },
  'radiator-outlet-data': {
    outcomes: ['opens-early', 'a-little-early', 'opens-on-time', 'opens-late'],
    read: flow.outletData,
  },
  'pump-impeller-flow': { outcomes: ['strong', 'undecided', 'weak', 'none'], read: flow.impellerFlow },
  'radiator-flow': { outcomes: ['free', 'undecided', 'backs-up'], read: flow.radiatorFlow },
  'heater-back-flush': {
    outcomes: ['free', 'undecided', 'barely-runs', 'dirty-then-free'],
    read: flow.backFlush,
  },
  'vent-line-blow-through': { outcomes: ['free', 'resists', 'blocked'], read: flow.ventLine },
  'bleed-screw-flow': { outcomes: ['coolant', 'air-then-coolant', 'nothing'], read: flow.bleedScrew },
  'belt-check': {
    outcomes: ['sound', 'slips', 'crooked', 'broken'],
    layout: ({ pump }) => pump === 'belt',
    read: circuit.beltCheck,
  },
  'viscous-spin-down': {
    outcomes: ['grips-hot', 'undecided', 'spins-free', 'locked'],
    layout: ({ fan }) => fan === 'viscous clutch',
    read: circuit.viscousSpin,
  },
  'heater-pump-listen': {
    outcomes: ['runs', 'runs-no-flow', 'silent-with-voltage', 'no-voltage'],
    layout: ({ heater }) => heater === 'auxiliary pump',
    read: circuit.heaterPump,
  },
  'electric-pump-drive': {
    outcomes: ['runs-and-flows', 'runs-weak', 'silent-with-voltage', 'no-voltage'],
    layout: ({ pump }) => pump === 'electric',
    read: circuit.electricPump,
  },
  'fan-switch-temperature': {
    outcomes: ['as-stamped', 'closed-when-cold', 'never-closes', 'closes-and-fails-loaded'],
    layout: ({ fanSwitchedBy }) => fanSwitchedBy === 'switch in the radiator',
    read: circuit.switchTemperature,
  },
  'map-thermostat-circuit': {
    outcomes: ['in-order', 'element-faulty', 'always-driven', 'no-supply'],
    layout: ({ kind }) => kind === 'map-controlled',
    read: circuit.mapCircuit,
  },
  'fan-voltage-drop': {
    outcomes: ['within-limits', 'supply-high', 'earth-high', 'no-current'],
    layout: electricFan,
    read: circuit.voltageDrop,
  },
  'fan-connector-heat': {
    outcomes: ['cool', 'warm', 'too-hot-to-hold', 'browned-and-cool'],
    layout: electricFan,
    read: circuit.connectorHeat,
  },
  'fuse-drop-current': {
    outcomes: ['as-expected', 'too-high', 'too-low', 'none', 'fuse-open'],
    layout: electricFan,
    read: circuit.fuseDrop,
  },
  'fan-command-duty': {
    outcomes: ['obeys', 'no-output', 'full-against-order', 'order-lost', 'full-is-ordered', 'not-fed'],
    layout: (layout) => electricFan(layout) && layout.fanSwitchedBy === 'engine controller',
    read: circuit.commandDuty,
  },
  'condenser-fan-fed': {
    outcomes: ['comes-when-asked', 'dead-or-drags', 'good-not-fed', 'none-fitted'],
    layout: ({ fan }) => fan === 'viscous clutch',
    read: circuit.condenserFan,
  },
  'exhaust-look': {
    outcomes: ['clears', 'cloud-then-clear', 'white-stays', 'white-stings', 'dark-or-breathless'],
    read: circuit.exhaustLook,
  },
  'fuel-trim-data': {
    outcomes: ['normal', 'adding-fuel', 'timing-late', 'taking-fuel'],
    read: circuit.fuelTrim,
  },
  'coolant-look': { outcomes: ['clear', 'brown', 'oily', 'gelled'], read: circuit.coolantLook },
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
