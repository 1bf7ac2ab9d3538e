/**
 * Every tree is at most 1.25 times the best found, or says why: on the two layouts that most of the shelf's vehicles have,
 * since the search takes its time; with HEADERTANK_ALL_LAYOUTS set, on every one.
 */
import { expect, test } from 'vitest';
import { compile } from '../../src/diagnosis/compiled.ts';
import { DEAR, judgeTree } from '../../src/diagnosis/soundness.ts';
import { type Case, caseOf } from '../../src/library/case.ts';
import { shelf } from './shelf.ts';

const LONG = 120_000;
const MOST = process.env.HEADERTANK_ALL_LAYOUTS ? Number.POSITIVE_INFINITY : 2;

/** The complaint on each layout that changes it, with the vehicles that have it, the commonest first. */
function layoutsOf(symptom: string): { made: Case; vehicles: string[] }[] {
  const bySign = new Map<string, { made: Case; vehicles: string[] }>();
  for (const { id, data } of shelf.records.vehicle.values()) {
    if (data.layout.power === 'battery electric') continue;
    const made = caseOf(shelf, symptom, data.layout);
    const sign = JSON.stringify([made.model, made.tree]);
    const known = bySign.get(sign);
    if (known) known.vehicles.push(id);
    else bySign.set(sign, { made, vehicles: [id] });
  }
  return [...bySign.values()].sort((a, b) => b.vehicles.length - a.vehicles.length);
}

test.each([...shelf.records.tree.values()].map(({ id, data }) => ({ id, data })))(
  '$id',
  ({ id, data }) => {
    const dear: string[] = [];
    for (const { made, vehicles } of layoutsOf(data.symptom).slice(0, MOST)) {
      const judged = judgeTree(compile(made.model), made.tree);
      if (!judged.ok) throw new Error(`${id} cannot be walked on ${vehicles.join(', ')}`);
      const { ratio, report, best, bound, findings } = judged.judgement;
      expect(bound.minutes).toBeLessThanOrEqual(best.minutes + 1e-6);
      expect(best.minutes).toBeLessThanOrEqual(report.expectedMinutes + 1e-6);
      // The reason stands on the tree, or at the very step that costs the minutes, as the check has it too.
      const moved = findings.flatMap((each) =>
        each.rule === 'dearer-than-best-found' ? (each.move?.step ?? []) : [],
      );
      const reason = data.because ?? moved.map((step) => data.steps[step]?.because).find(Boolean);
      if (ratio > DEAR && reason === undefined) dear.push(`${vehicles.join(', ')}: ${ratio.toFixed(2)}`);
    }
    expect(dear).toEqual([]);
  },
  LONG,
);
