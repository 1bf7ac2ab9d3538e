/**
 * Every tree is at most 1.25 times the best found, or says why: on the two layouts that most of the shelf's vehicles have,
 * since the search takes its time; with HEADERTANK_ALL_LAYOUTS set, on every one.
 */
import { expect, test } from 'vitest';
import { compile } from '../../src/diagnosis/compiled.ts';
import { DEAR, judgeTree } from '../../src/diagnosis/soundness.ts';
import { layoutsOf } from './layouts.ts';
import { shelf } from './shelf.ts';

const LONG = 120_000;
const MOST = process.env.HEADERTANK_ALL_LAYOUTS ? Number.POSITIVE_INFINITY : 2;

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
