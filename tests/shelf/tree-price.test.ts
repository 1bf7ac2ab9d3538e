/** Every tree, on every layout among the shelf's vehicles, is at most 1.25 times the best found, or says why. */
import { expect, test } from 'vitest';
import { compile } from '../../src/diagnosis/compiled.ts';
import { DEAR, judgeTree } from '../../src/diagnosis/soundness.ts';
import { caseOf } from '../../src/library/case.ts';
import { shelf } from './shelf.ts';

const LONG = 120_000;

test.each([...shelf.records.tree.values()].map(({ id }) => id))(
  '%s',
  (id) => {
    const { data } = shelf.records.tree.get(id) ?? {};
    if (!data) throw new Error(`No tree ${id}`);
    const seen = new Set<string>();
    const dear: string[] = [];
    for (const { id: vehicle, data: car } of shelf.records.vehicle.values()) {
      if (car.layout.power === 'battery electric') continue;
      const { model, tree } = caseOf(shelf, data.symptom, car.layout);
      const sign = JSON.stringify([model, tree]);
      if (seen.has(sign)) continue;
      seen.add(sign);
      const judged = judgeTree(compile(model), tree);
      if (!judged.ok) throw new Error(`${id} cannot be walked on ${vehicle}`);
      const { ratio, report, best, bound } = judged.judgement;
      expect(bound.minutes).toBeLessThanOrEqual(best.minutes + 1e-6);
      expect(best.minutes).toBeLessThanOrEqual(report.expectedMinutes + 1e-6);
      if (ratio > DEAR && data.because === undefined) dear.push(`${vehicle}: ${ratio.toFixed(2)}`);
    }
    expect(dear).toEqual([]);
  },
  LONG,
);
