/** Tests of the shelf, read on simulated cars. Ids are held against the shelf here, where files may be read. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { type CarLayout, drawCar } from '../../src/car/car.ts';
import { drawSeverity, type FaultId, layoutFor, withFault } from '../../src/car/faults.ts';
import { randomOf } from '../../src/car/random.ts';
import { readingOf, TEST_IDS, TESTS, type TestId, testFits } from '../../src/car/reading.ts';

const MILD = 288.15;

/** Layout a test is for, where half of the drawn cars would not have it. */
const LAYOUTS: Partial<Record<TestId, Partial<CarLayout>>> = {
  'hose-warm-up-outlet-side': { thermostat: 'outlet side' },
  'hose-warm-up-inlet-side': { thermostat: 'inlet side' },
  'heater-valve-movement': { heater: 'valve-controlled' },
  // A viscous clutch comes and goes without a figure.
  'idle-to-fan-trace': { fan: 'electric, one stage', fanSwitchedBy: 'engine controller' },
};

/** How often each outcome is read on so many drawn cars with a fault, no slips. */
function shares(test: TestId, id: FaultId, cars = 24, outside = MILD): Record<string, number> {
  const counts: Record<string, number> = {};
  const layout: Partial<CarLayout> = { kind: 'by-pass closing', ...LAYOUTS[test], ...layoutFor(id) };
  for (let seed = 0; seed < cars; seed++) {
    const car = drawCar(seed, { layout });
    if (!testFits(test, car)) continue;
    const faulty = withFault(car, id, drawSeverity(randomOf(seed, id), id));
    const { outcome } = readingOf(test, faulty, seed, outside, 0);
    counts[outcome] = (counts[outcome] ?? 0) + 1;
  }
  const all = Object.values(counts).reduce((sum, count) => sum + count, 0);
  return Object.fromEntries(Object.entries(counts).map(([outcome, count]) => [outcome, count / all]));
}

test('names tests and outcomes as the shelf does, all of them', () => {
  expect(TEST_IDS.length).toBeGreaterThanOrEqual(54);
  for (const id of TEST_IDS) {
    const record: unknown = parse(readFileSync(`content/tests/${id}.yaml`, 'utf8'));
    const outcomes =
      typeof record === 'object' && record !== null && 'outcomes' in record
        ? Object.keys(record.outcomes ?? {})
        : [];
    // A record may know an outcome that the model cannot show; the model may show none that the record lacks.
    expect(
      TESTS[id].outcomes.filter((outcome) => !outcomes.includes(outcome)),
      id,
    ).toEqual([]);
  }
});

test('reads the same when repeated, and slips now and then', () => {
  const car = drawCar(9);
  expect(readingOf('compare-readings', car, 9, MILD)).toEqual(readingOf('compare-readings', car, 9, MILD));
  const slips = Array.from({ length: 2000 }, (_, seed) =>
    readingOf('fin-inspection', car, seed, MILD),
  ).filter(({ slipped }) => slipped);
  expect(slips.length).toBeGreaterThan(15);
  expect(slips.length).toBeLessThan(80);
});

describe('a sound car', () => {
  const SOUND: Partial<Record<TestId, string>> = {
    'warm-up-timing': 'on-time',
    'hose-warm-up-outlet-side': 'warm-on-time',
    'hose-warm-up-inlet-side': 'warm-on-time',
    'cruise-trace': 'holds',
    'idle-to-fan-trace': 'cycles',
    'road-load-test': 'holds',
    'compare-readings': 'all-agree',
    'cold-soak-comparison': 'together',
    'heater-hose-pair': 'both-hot',
    'fan-behaviour': 'as-it-should',
    'blend-door-sweep': 'follows',
    'heater-valve-movement': 'moves-and-flows',
    'brake-drag': 'alike',
    'vent-air-flow': 'strong',
    'pressure-rise-from-cold': 'with-heat',
    'hose-squeeze': 'springs-back',
    'code-read': 'nothing-new',
    'pressure-test-cold': 'holds',
    'cap-test': 'holds',
    'bubble-watch': 'still',
    'level-cold': 'at-mark',
    'return-flow-watch': 'streams',
    'combustion-gas-test': 'unchanged',
    'fill-account-test': 'balanced',
    'sensor-resistance': 'on-curve',
    'sensor-unplug': 'follows',
    'fan-direct-power': 'strong',
    'fan-relay-swap': 'not-shown',
    'fan-current': 'as-expected',
    'relay-control-voltage': 'as-ordered',
    'thermostat-inspection': 'sound',
    'thermostat-bench-test': 'opens-at-stamp',
    'fin-inspection': 'clear',
    'refractometer-test': 'as-wanted',
  };
  test.each(Object.entries(SOUND))('shows nothing in %s', (id, outcome) => {
    const test = TEST_IDS.find((each) => each === id);
    if (!test) throw new Error(id);
    const found = shares(test, 'normal-behaviour', test === 'cold-soak-comparison' ? 6 : 16);
    expect(found[outcome] ?? 0, JSON.stringify(found)).toBeGreaterThanOrEqual(0.85);
  });
});

describe('a fault that mechanism alone decides', () => {
  test.each([
    ['thermostat-stuck-shut', 'thermostat-bench-test', 'late-or-never'],
    ['thermostat-missing', 'thermostat-inspection', 'missing'],
    ['thermostat-missing', 'hose-warm-up-outlet-side', 'warm-early'],
    ['thermostat-stuck-shut', 'hose-warm-up-outlet-side', 'stays-cold'],
    ['thermostat-stuck-shut', 'warm-up-timing', 'too-fast'],
    ['fan-motor-dead', 'fan-direct-power', 'dead'],
    ['fan-motor-dead', 'fan-behaviour', 'never-runs'],
    ['fan-relay-stuck-on', 'fan-behaviour', 'runs-always'],
    ['fan-relay-stuck-off', 'fan-relay-swap', 'cured'],
    ['sensor-open-circuit', 'cold-soak-comparison', 'substitute-value'],
    ['sensor-open-circuit', 'sensor-resistance', 'open-or-shorted'],
    ['cap-vacuum-valve-stuck', 'cap-test', 'vacuum-stuck'],
    ['cabin-airflow-weak', 'vent-air-flow', 'weak'],
    ['mixture-too-strong', 'refractometer-test', 'too-strong'],
    ['coolant-low', 'level-cold', 'far-down'],
    ['brake-dragging', 'brake-drag', 'one-hot'],
  ] as const)('%s in %s: %s', (id, test, outcome) => {
    const found = shares(test, id, test === 'cold-soak-comparison' ? 4 : 12);
    expect(found[outcome] ?? 0, JSON.stringify(found)).toBeGreaterThanOrEqual(0.8);
  });

  test('is not seen by a test of something else', () => {
    expect(shares('fan-current', 'thermostat-stuck-open')['as-expected']).toBe(1);
    expect(shares('cap-test', 'fan-motor-dead').holds).toBe(1);
  });
});
