/** Judges the trees it is given, in a thread of its own; see judge-in-worker.ts. */
import { parentPort, workerData } from 'node:worker_threads';
import { QUICK_BUDGET } from '../../diagnosis/budget.ts';
import { judgeTree } from '../../diagnosis/soundness.ts';
import type { JudgedTree, JudgeTask } from './judge-in-worker.ts';

const trees: readonly JudgeTask[] = workerData;
const answers = trees.map(({ symptom, compiled, tree }): JudgedTree => {
  const judged = judgeTree(compiled, tree, { budget: QUICK_BUDGET });
  if (!judged.ok) throw new Error(`The tree of ${symptom} cannot be judged.`);
  const { report, best, bound, ratio } = judged.judgement;
  return {
    minutes: report.expectedMinutes,
    nineInTen: report.nineInTen,
    proven: report.proven,
    best: best.minutes,
    bound: bound.minutes,
    ratio,
  };
});
parentPort?.postMessage(answers);
