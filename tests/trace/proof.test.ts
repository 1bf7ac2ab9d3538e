/** The proof run: every milestone the trade wants seen (common practice), against the vehicle's own figures. */
import { describe, expect, test } from 'vitest';
import { judgeTrace } from '../../src/trace/judge-trace.ts';
import {
  fromTrace,
  leftToDo,
  MILESTONES,
  type MilestoneId,
  milestonesFor,
  passes,
  proofSentence,
} from '../../src/trace/proof.ts';
import { finish, readLog } from '../../src/trace/read/read-log.ts';
import { traceVehicleOf } from '../../src/trace/vehicle.ts';
import { type HandPoint, handLog, SOUND_RUN } from './hand-log.ts';
import { sheetWith } from './known-cars.ts';

const FIGURES_88 = {
  'thermostat.opens': '88 °C',
  'running.cruise': '87 to 94 °C',
  'fan.on': '96 °C',
  'fan.off': '92 °C',
} as const;
const INLET = sheetWith(FIGURES_88, { thermostat: 'inlet side', fan: 'electric, one stage' });
const OUTLET = sheetWith(FIGURES_88, { thermostat: 'outlet side', fan: 'electric, one stage' });
const celsius = (kelvin: number | undefined) => (kelvin ?? Number.NaN) - 273.15;

function fromLog(points: readonly HandPoint[], sheet: typeof INLET) {
  const read = finish(readLog(handLog(points, 15)));
  if (!read.ok) throw new Error(read.fault.message);
  const vehicle = traceVehicleOf(sheet);
  return fromTrace(judgeTrace(read.trace, vehicle), vehicle);
}

function verdictOn(id: MilestoneId, answer: number | string | undefined, sheet = INLET) {
  const milestone = milestonesFor(traceVehicleOf(sheet), sheet).find((each) => each.id === id);
  return milestone && passes(milestone, typeof answer === 'number' ? answer + 273.15 : answer);
}

describe('by hand', () => {
  test.each<[MilestoneId, number | string, number | string]>([
    ['hose-cold', 86, 72],
    ['opens', 88, 78],
    ['holds', 90, 76],
    ['hoses-equal', 93, 70],
    ['fan-on', 96, 108],
    ['fan-off', 92, 80],
    ['vents', 60, 40],
    ['gauge', 'middle', 'past'],
    ['leaks', 'none', 'seen'],
    ['level', 'mark', 'topped'],
  ])('%s: %s passes, %s fails, nothing is not done', (id, good, bad) => {
    expect(verdictOn(id, good)).toBe('pass');
    expect(verdictOn(id, bad)).toBe('fail');
    expect(verdictOn(id, undefined)).toBe('not done');
  });

  test('all ten are there; a clutch has no switching points', () => {
    expect(milestonesFor(traceVehicleOf(INLET), INLET).map(({ id }) => id)).toEqual([...MILESTONES]);
    const clutch = sheetWith(FIGURES_88, { thermostat: 'outlet side', fan: 'viscous clutch' });
    const ids = milestonesFor(traceVehicleOf(clutch), clutch).map(({ id }) => id);
    expect(ids).not.toContain('fan-on');
    expect(ids).toContain('leaks');
  });

  test('without an engine nothing is judged by the figures of one, and what the car states itself is', () => {
    const electric = { power: 'battery electric', thermostat: 'none', fan: 'electric, pulse-width' } as const;
    const idsOf = (figures: Parameters<typeof sheetWith>[0]) => {
      const sheet = sheetWith(figures, electric);
      return milestonesFor(traceVehicleOf(sheet), sheet).map(({ id }) => id);
    };
    expect(idsOf({})).toEqual(['gauge', 'leaks', 'level']);
    expect(idsOf({ 'vent.heater': '52 °C' })).toEqual(['vents', 'gauge', 'leaks', 'level']);
  });
});

describe('from the log', () => {
  test('with a second temperature: the hose still cold, and both equal when it stands', () => {
    const seen = fromLog(SOUND_RUN, INLET);
    // 20 °C at 9.2 min and 45 °C at 11 min: warm from 23 °C on, with the coolant at 90.
    expect(celsius(seen['hose-cold'])).toBeCloseTo(90, 0);
    // Within 6 K from 24 min on, at 93 to 94 °C.
    expect(celsius(seen['hoses-equal'])).toBeGreaterThan(92);
    expect(celsius(seen['hoses-equal'])).toBeLessThan(95);
    for (const id of ['hose-cold', 'hoses-equal'] as const)
      expect(verdictOn(id, celsius(seen[id]))).toBe('pass');
  });

  test('a thermostat on the outlet side is felt at the other hose', () => {
    expect(fromLog(SOUND_RUN, OUTLET)['hose-cold']).toBeUndefined();
    expect(fromLog(SOUND_RUN, OUTLET)['hoses-equal']).toBeDefined();
  });

  test('a hose that warms from the beginning fails; one that stays cold is never equal', () => {
    const early = SOUND_RUN.map((each) => ({ ...each, hose: Math.max(15, each.coolant - 12) }));
    const seen = fromLog(early, INLET);
    expect(verdictOn('hose-cold', celsius(seen['hose-cold']))).toBe('fail');
    const cold = SOUND_RUN.map((each) => ({ ...each, hose: 20 }));
    expect(fromLog(cold, INLET)['hoses-equal']).toBeUndefined();
  });

  test('without one nothing is said of hoses, and never of vents, leaks, level', () => {
    const bare = SOUND_RUN.map(({ hose: _hose, ...each }) => each);
    expect(Object.keys(fromLog(bare, INLET)).sort()).toEqual(['fan-off', 'fan-on', 'holds', 'opens']);
  });
});

describe('in a sentence', () => {
  const results = (...passed: ('pass' | 'fail' | 'not done')[]) =>
    passed.map((each, at) => ({ label: at === 0 ? 'Fan starts at' : `Part ${at}`, passed: each }));

  test('a failure is said first; so far in order counts; nothing left, nothing to do', () => {
    expect(proofSentence(results('fail', 'pass'))).toBe('Not passed: fan starts.');
    expect(proofSentence(results('not done', 'pass', 'pass'))).toBe('So far in order: 2 of 3.');
    expect(leftToDo(results('not done', 'pass', 'not done'))).toBe('Still to do: fan starts; part 2.');
    expect(proofSentence(results('not done', 'not done'))).toBe('Nothing entered yet.');
    expect(proofSentence(results('pass', 'pass'))).toBe('Every milestone passes.');
    expect(leftToDo(results('pass', 'pass'))).toBe('');
  });
});
