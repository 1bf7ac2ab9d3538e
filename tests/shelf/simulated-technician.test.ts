/**
 * For every candidate cause of every symptom: on a car that shows the most likely outcome of each test under that cause, the walk
 * proves the cause or names it, and calls no other one proven; on a vehicle of every layout that the complaint tells apart.
 */
import { describe, expect, test } from 'vitest';
import { caseOf } from '../../src/library/case.ts';
import { walkCase } from '../../src/library/case-walk.ts';
import type { CarCase } from '../../src/model/case.ts';
import { asMostAre } from '../../src/model/layout.ts';
import { layoutsOf } from './layouts.ts';
import { shelf } from './shelf.ts';

/** A car with the usual picture of a cause. */
function usualCar(symptom: string, cause: string, vehicle: string): CarCase {
  const layout = shelf.records.vehicle.get(vehicle)?.data.layout;
  if (!layout) throw new Error(`No vehicle ${vehicle}`);
  const { model } = caseOf(shelf, symptom, asMostAre(layout));
  const column = model.causes.findIndex(({ id }) => id === cause);
  const shows = model.tests.map(({ id, outcomes, likelihood }) => {
    const chances = likelihood.map((row) => row[column] ?? 0);
    return [
      id,
      { sees: outcomes[chances.indexOf(Math.max(...chances))] ?? '', why: 'the usual picture' },
    ] as const;
  });
  return {
    title: `${cause} on ${vehicle}`,
    symptom,
    vehicle,
    faults: [cause],
    said: 'It does it again.',
    mechanism: 'The usual picture.',
    shows: Object.fromEntries(shows),
    sources: ['from memory'],
    reviewed: '2026-11-30',
  };
}

describe.each([...shelf.records.symptom.values()].map(({ id }) => id))('%s', (symptom) => {
  test('every candidate cause is found by its usual picture', () => {
    const lost = new Set<string>();
    for (const { made, vehicles } of layoutsOf(symptom)) {
      const vehicle = vehicles[0] ?? '';
      for (const { id: cause } of made.model.causes) {
        const { ending, proven, asked } = walkCase(shelf, usualCar(symptom, cause, vehicle));
        if (ending === 'missed' || ending === 'wrongly proven')
          lost.add(
            `${cause}: ${ending} ${proven ?? ''} by ${asked.map((each) => `${each.test} ${each.outcome}`).join(', ')}`,
          );
      }
    }
    expect([...lost]).toEqual([]);
  });
});
