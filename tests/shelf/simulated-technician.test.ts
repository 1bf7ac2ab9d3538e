/**
 * For every candidate cause of every symptom: a technician who answers each test by that cause's most likely outcome
 * ends at that cause, or at an end that names it, on every vehicle of the shelf that can have it.
 */
import { describe, expect, test } from 'vitest';
import { caseOf } from '../../src/library/case.ts';
import type { Layout } from '../../src/model/layout.ts';
import { shelf } from './shelf.ts';

/** Where the walk comes to when this is the cause, and the way there. */
function walkTo(symptom: string, cause: string, layout: Layout): { named: boolean; way: string } {
  const { model, tree } = caseOf(shelf, symptom, layout);
  const column = model.causes.findIndex(({ id }) => id === cause);
  const way: string[] = [];
  let at = tree.start;
  for (let steps = 0; steps < 100; steps++) {
    const step = tree.steps[at];
    way.push(at);
    if (!step) return { named: false, way: way.join(' > ') };
    if (step.kind === 'end') return { named: step.causes.includes(cause), way: way.join(' > ') };
    if (step.kind === 'prove') {
      if (step.cause === cause) return { named: true, way: way.join(' > ') };
      at = step.otherwise;
      continue;
    }
    const asked = model.tests.find(({ id }) => id === step.test);
    if (!asked) return { named: false, way: way.join(' > ') };
    const chances = asked.likelihood.map((row) => row[column] ?? 0);
    const outcome = asked.outcomes[chances.indexOf(Math.max(...chances))] ?? '';
    at = step.on[outcome] ?? '';
  }
  return { named: false, way: way.join(' > ') };
}

describe.each([...shelf.records.symptom.values()].map(({ id }) => id))('%s', (symptom) => {
  test('every candidate cause is found by its usual picture', () => {
    const lost = new Set<string>();
    for (const { id: vehicle, data } of shelf.records.vehicle.values()) {
      if (data.layout.power === 'battery electric') continue;
      for (const { id: cause } of caseOf(shelf, symptom, data.layout).model.causes) {
        const { named, way } = walkTo(symptom, cause, data.layout);
        if (!named) lost.add(`${cause} on ${vehicle}: ${way}`);
      }
    }
    expect([...lost]).toEqual([]);
  });
});
