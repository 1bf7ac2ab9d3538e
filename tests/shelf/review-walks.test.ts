/** The 68 walks of the review through today's trees: none proves a wrong cause, and what was missed is found. */
import { describe, expect, test } from 'vitest';
import { completeRow } from '../../src/diagnosis/likelihood.ts';
import { modelOf } from '../../src/library/case.ts';
import { walkCase } from '../../src/library/case-walk.ts';
import { layoutAllows } from '../../src/model/layout.ts';
import { claimsOf } from '../../src/model/tree.ts';
import { REVIEW_WALKS, type ReviewWalk } from './review-walks.ts';
import { isDemonstration, shelf } from './shelf.ts';

/** The aim of proven means proven. */
const LEAST_LED = 64;

const answersOf = ({ answers, besides = '' }: ReviewWalk) =>
  `${answers} ${besides}`
    .split(' ')
    .filter((each) => each !== '')
    .map((each) => each.split('='));

const walked = (isDemonstration ? REVIEW_WALKS : []).map((car) => ({
  car,
  walk: walkCase(shelf, {
    title: `${car.n}`,
    symptom: car.symptom,
    vehicle: car.vehicle,
    faults: car.cause === 'normal-behaviour' ? [] : [car.cause],
    said: '',
    mechanism: '',
    shows: Object.fromEntries(
      answersOf(car).map(([asked = '', sees = '']) => [asked, { sees, why: 'the review' }]),
    ),
    sources: [],
    reviewed: '2026-11-30',
  }),
}));
const said = walked
  .map(({ car, walk }) => `${car.n} ${car.symptom}, ${car.cause}: ${walk.ending} ${walk.proven ?? ''}`)
  .join('\n');

describe.skipIf(!isDemonstration)('the review', () => {
  test('the review is whole, and its answers are outcomes of today', () => {
    expect(REVIEW_WALKS.map(({ n }) => n)).toEqual(Array.from({ length: 68 }, (_, at) => at + 1));
    expect(REVIEW_WALKS.filter(({ missed }) => missed !== undefined)).toHaveLength(9);
    const strange = REVIEW_WALKS.flatMap((car) =>
      answersOf(car).filter(
        ([asked = '', sees = '']) => shelf.records.test.get(asked)?.data.outcomes[sees] === undefined,
      ),
    );
    expect(strange).toEqual([]);
  });

  test('no walk proves a wrong cause', () => {
    expect(
      walked.filter(({ walk }) => walk.ending === 'wrongly proven').map(({ car }) => car.n),
      said,
    ).toEqual([]);
  });

  test('the cause is proven or first in nearly all, and named in all', () => {
    const led = walked.filter(({ walk }) => walk.ending === 'proven' || walk.ending === 'first');
    expect(led.length, said).toBeGreaterThanOrEqual(LEAST_LED);
    expect(
      walked.filter(({ walk }) => walk.ending === 'missed').map(({ car }) => car.n),
      said,
    ).toEqual([]);
  });
});

/**
 * The ten problems of the review, with what keeps each gone. Also: P3 and P5, belief.test.ts (the order of the answers, one belief) and
 * walk.test.ts in the browser (an answer against a proven cause takes the proof back in heading and list); P4, the walks above; P6, the
 * rule claim-without-way; P7, test-on-wrong-layout, proof-not-on-layout and every-vehicle.test.ts; P10, walks 10, 57 and 61 above and proof-speaks-less.
 */
describe('the ten problems', () => {
  const causesOn = (symptom: string, vehicle: string): string[] => {
    const layout = shelf.records.vehicle.get(vehicle)?.data.layout ?? {};
    return modelOf(shelf.records, symptom, layout).causes.map(({ id }) => id);
  };

  // Both name vehicles of the demonstration.
  test.skipIf(!isDemonstration)(
    'P1: nobody is told to open or fill the loop of a battery-electric car',
    () => {
      const layout = shelf.records.vehicle.get('lindqual-sedge')?.data.layout;
      expect(layout?.power).toBe('battery electric');
      const opened = [
        'coolant-low',
        'trapped-air',
        'bleed-path-not-opened',
        'coolant-spent',
        'mixture-too-weak',
      ];
      const told = [...shelf.records.symptom.values()]
        .filter(({ data }) => layoutAllows(data.layout, layout ?? {}))
        .flatMap(({ id }) => causesOn(id, 'lindqual-sedge').map((cause) => `${id}: ${cause}`))
        .filter((each) => opened.some((cause) => each.endsWith(`: ${cause}`)));
      expect(told).toEqual([]);
    },
  );

  test.each([
    ['fan-direct-power', 'weak', 'fan-motor-dead'],
    ['electric-pump-drive', 'no-voltage', 'electric-pump-dead'],
    ['fan-voltage-drop', 'supply-high', 'fan-wiring-or-earth'],
    ['pump-impeller-flow', 'weak', 'pump-impeller-failed'],
    ['vent-air-flow', 'none', 'cabin-airflow-weak'],
    ['combustion-gas-test', 'changes-slowly', 'head-gasket-combustion-leak'],
    ['heater-valve-movement', 'moves-no-flow', 'heater-valve-stuck-shut'],
    ['auxiliary-heater-check', 'starts-and-stops', 'auxiliary-heater-fault'],
    ['vent-line-blow-through', 'resists', 'vent-line-blocked'],
  ])('P2: %s, %s speaks for %s', (id, outcome, cause) => {
    const asked = shelf.records.test.get(id)?.data;
    const outcomes = Object.keys(asked?.outcomes ?? {});
    const seen = (row: Parameters<typeof completeRow>[1] | undefined) => {
      const filled = completeRow(outcomes, row ?? {});
      return filled.ok ? (filled.distribution[outcomes.indexOf(outcome)] ?? 0) : 0;
    };
    expect(seen(asked?.evidence[cause])).toBeGreaterThan(seen(asked?.otherwise));
  });

  test('P6: what the review read as a claim is said with its answers or not at all', () => {
    const claimed =
      /steals heat|(flow|fan|core)[^.]* (is|are) (right|sound)|the pump turns|bleeds open|air paths are free|circuit is broken/i;
    const bare = [...shelf.records.tree.values()].flatMap(({ id, data }) =>
      Object.values(data.ends).flatMap((end) =>
        [
          end.title ?? '',
          ...claimsOf(end).flatMap(({ text, after }) => (Object.keys(after).length === 0 ? text : [])),
        ]
          .filter((text) => claimed.test(text))
          .map((text) => `${id}: ${text}`),
      ),
    );
    expect(bare).toEqual([]);
  });

  test.skipIf(!isDemonstration)('P7: a cause whose part the vehicle has not is nowhere', () => {
    expect(causesOn('same-after-new-thermostat', 'harrowby-gritstone-30')).not.toContain(
      'ac-pressure-keeps-fan-on',
    );
    expect(causesOn('pushed-out-after-parking', 'fennick-packhorse-23d')).not.toContain('fan-module-fault');
    const inTraffic = causesOn('hot-in-traffic', 'aldermoor-tarn-16');
    for (const cause of ['viscous-clutch-slipping', 'electric-pump-worn', 'condenser-fan-dead'])
      expect(inTraffic).not.toContain(cause);
  });

  test.each([
    ['fan-behaviour', 'ac-only'],
    ['radiator-face-map', 'steep-fall'],
    ['exhaust-look', 'cloud-then-clear'],
    ['level-cold', 'overfull'],
    ['warm-up-timing', 'levels-out-between'],
    ['heater-hose-pair', 'undecided'],
    ['heater-hose-pair', 'engine-not-warm'],
    ['code-read', 'too-cold-code'],
    ['fan-relay-swap', 'not-shown'],
  ])('P8: %s can be answered %s', (id, outcome) => {
    expect(Object.keys(shelf.records.test.get(id)?.data.outcomes ?? {})).toContain(outcome);
  });

  test.each([
    ['hot-under-load', 'brake-drag', 'radiator-face-map'],
    ['reads-hot-engine-is-not', 'compare-readings', 'cold-soak-comparison'],
    ['reads-hot-engine-is-not', 'compare-readings', 'warm-up-timing'],
  ])('P9: %s asks %s before %s', (id, first, later) => {
    const { start = '', steps = {} } = shelf.records.tree.get(id)?.data ?? {};
    const order: string[] = [];
    const open = [start];
    for (const at of open) {
      const step = steps[at];
      if (step === undefined) continue;
      const asked = step.test ?? shelf.records.cause.get(step.prove ?? '')?.data.confirm?.test;
      if (asked !== undefined) order.push(asked);
      for (const to of [...Object.values(step.on ?? {}), step.otherwise])
        if (to !== undefined && !open.includes(to)) open.push(to);
    }
    expect(order).toContain(first);
    if (order.includes(later)) expect(order.indexOf(first)).toBeLessThan(order.indexOf(later));
  });
});
